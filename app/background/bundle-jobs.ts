import { statSync } from 'node:fs';
import { CannotDecrypt, decrypted, WrongPassphrase } from '../bundle/encryption.ts';
import { type Packed, packedFile, slicesOfFile } from '../bundle/packed.ts';
import { type BundleContents, bundleItems } from '../bundle/read-bundle.ts';
import { BundleRefused } from '../bundle/refusal.ts';
import type { Incoming } from '../store/incoming.ts';
import { mergeSteps } from '../store/merge.ts';
import { stageImport } from '../store/staged-import.ts';
import { atomically, type Store } from '../store/store.ts';
import { inCopy } from './copy-of-store.ts';
import type { JobHooks, Jobs, ReadBundle } from './job.ts';
import { writePrivateFile } from './write-file.ts';

/** Says what importing a bundle would do, by doing it in a copy. */
export function previewInCopy(
  { file, copy, path, at }: Jobs['bundle-preview']['input'],
  hooks: JobHooks,
): ReadBundle {
  return inCopy({ file, copy, at }, hooks, (store) => merged(store, path, hooks));
}

/** Reads a bundle to its end, and writes it down as an import that is to be made: all of it or nothing. */
export function stageBundle(
  { folder, path }: Jobs['bundle-stage']['input'],
  hooks: JobHooks,
): Jobs['bundle-stage']['output'] {
  const packed = opened(path, hooks);
  const whole = function* () {
    for (const item of bundleItems(packed)) {
      hooks.goOn();
      yield item;
    }
  };
  try {
    stageImport(folder, whole());
    return { kind: 'staged' };
  } catch (error) {
    return refusal(error);
  } finally {
    packed.close();
  }
}

/** Decrypts a file into another one, piece by piece. */
export async function decryptBundle(
  { path, to, passphrase, size }: Jobs['bundle-decrypt']['input'],
  hooks: JobHooks,
): Promise<Jobs['bundle-decrypt']['output']> {
  const told = (bytes: number) => {
    hooks.goOn();
    hooks.progress(percent(bytes, size), 100);
  };
  try {
    await writePrivateFile(to, decrypted(slicesOfFile(path, told), passphrase));
    return 'decrypted';
  } catch (error) {
    if (error instanceof WrongPassphrase) return 'wrong-passphrase';
    if (error instanceof CannotDecrypt) return 'damaged';
    throw error;
  }
}

function merged(store: Store, path: string, hooks: JobHooks): ReadBundle {
  const packed = opened(path, hooks);
  try {
    return atomically(store, () => {
      const items = listening(bundleItems(packed));
      for (const steps = mergeSteps(store, items); ; ) {
        const step = steps.next();
        hooks.goOn();
        if (step.done) return { kind: 'read', madeAt: items.returned().madeAt, changes: step.value };
      }
    });
  } catch (error) {
    return refusal(error);
  } finally {
    packed.close();
  }
}

/** A file as a bundle; how far it has been read is reported. */
function opened(path: string, hooks: JobHooks): Packed {
  const size = statSync(path).size;
  return packedFile(path, (bytes) => hooks.progress(percent(bytes, size), 100));
}

function refusal(error: unknown): Extract<ReadBundle, { kind: 'refused' }> {
  if (!(error instanceof BundleRefused)) throw error;
  return { kind: 'refused', path: error.path, message: error.message };
}

function percent(bytes: number, of: number): number {
  return Math.floor((100 * bytes) / Math.max(1, of));
}

/** An iterable that keeps what its generator returned at its end. */
function listening(items: Generator<Incoming, BundleContents>) {
  let contents: BundleContents | null = null;
  return {
    *[Symbol.iterator]() {
      contents = yield* items;
    },
    returned(): BundleContents {
      if (!contents) throw new Error('the bundle has not been read to its end');
      return contents;
    },
  };
}
