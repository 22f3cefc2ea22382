import { encrypted } from '../bundle/encryption.ts';
import { type BundleSource, bundleLength, writeBundle } from '../bundle/write-bundle.ts';
import type { JobHooks, Jobs } from './job.ts';
import { withSnapshot } from './snapshot.ts';
import { writePrivateFile } from './write-file.ts';

/** Writes everything into a file that nobody else may read, piece by piece; gives its size, bytes. */
export function exportEverything(
  { file, to, version, at, passphrase }: Jobs['export']['input'],
  hooks: JobHooks,
): Promise<Jobs['export']['output']> {
  return withSnapshot(file, (db) => {
    const pieces = piecesOf({ db, clock: () => at }, version, hooks);
    return writePrivateFile(to, passphrase === null ? pieces : encrypted(pieces, passphrase));
  });
}

function* piecesOf(source: BundleSource, version: string, hooks: JobHooks): Generator<Uint8Array> {
  const of = bundleLength(source);
  const ready: Uint8Array[] = [];
  let done = 0;
  for (const _ of writeBundle(source, version, (piece) => ready.push(piece))) {
    hooks.goOn();
    done += 1;
    hooks.progress(done, of);
    yield* ready.splice(0);
  }
  yield* ready;
}
