import { closeSync, fsyncSync, openSync, writeSync } from 'node:fs';
import { bundleLength, writeBundle } from '../bundle/write-bundle.ts';
import type { JobHooks, Jobs } from './job.ts';
import { withSnapshot } from './snapshot.ts';

/** Writes everything into a file that nobody else may read, piece by piece; gives its size, bytes. */
export function exportEverything(
  { file, to, version, at }: Jobs['export']['input'],
  hooks: JobHooks,
): Jobs['export']['output'] {
  return withSnapshot(file, (db) => {
    const out = openSync(to, 'w', 0o600);
    let bytes = 0;
    const write = (chunk: Uint8Array) => {
      for (let done = 0; done < chunk.length; ) done += writeSync(out, chunk, done);
      bytes += chunk.length;
    };
    try {
      const source = { db, clock: () => at };
      const of = bundleLength(source);
      let done = 0;
      for (const _ of writeBundle(source, version, write)) {
        hooks.goOn();
        done += 1;
        hooks.progress(done, of);
      }
      fsyncSync(out);
    } finally {
      closeSync(out);
    }
    return bytes;
  });
}
