import { BUNDLE_LIMITS } from '../bundle/bundle-format.ts';
import { encrypted } from '../bundle/encryption.ts';
import { BundleTooLarge } from '../bundle/pack.ts';
import { type BundleSource, bundleLength, writeBundle } from '../bundle/write-bundle.ts';
import type { JobHooks, Jobs } from './job.ts';
import { withSnapshot } from './snapshot.ts';
import { writePrivateFile } from './write-file.ts';

/** Writes everything into a file that nobody else may read, piece by piece. */
export async function exportEverything(
  { file, to, version, at, passphrase }: Jobs['export']['input'],
  hooks: JobHooks,
): Promise<Jobs['export']['output']> {
  try {
    const bytes = await withSnapshot(file, (db) => {
      const pieces = piecesOf({ db, clock: () => at }, version, hooks);
      return writePrivateFile(to, passphrase === null ? pieces : encrypted(pieces, passphrase));
    });
    return bytes > BUNDLE_LIMITS.packed ? 'too-large' : 'written';
  } catch (error) {
    // The encryption passes on what was thrown inside it.
    if (error instanceof BundleTooLarge) return 'too-large';
    throw error;
  }
}

function* piecesOf(source: BundleSource, version: string, hooks: JobHooks): Generator<Uint8Array> {
  const of = bundleLength(source);
  const ready: Uint8Array[] = [];
  let done = 0;
  for (const _ of writeBundle(source, { version }, (piece) => ready.push(piece))) {
    hooks.goOn();
    done += 1;
    hooks.progress(done, of);
    yield* ready.splice(0);
  }
  yield* ready;
}
