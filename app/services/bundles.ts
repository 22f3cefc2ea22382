import { randomUUID } from 'node:crypto';
import { rmSync } from 'node:fs';
import { BUNDLE_ENDING, BUNDLE_LIMITS, BUNDLE_MIME } from '../bundle/bundle-format.ts';
import { type BundleContents, bundleItems } from '../bundle/read-bundle.ts';
import { BundleRefused } from '../bundle/refusal.ts';
import type { CallOutput, ParsedInput } from '../contract/contract.ts';
import type { CallResult } from '../contract/result.ts';
import { eraseErased } from '../store/erase-everywhere.ts';
import type { Incoming } from '../store/incoming.ts';
import { mergeSteps } from '../store/merge.ts';
import type { MergeCounts } from '../store/merge-counts.ts';
import { done, type Program, refused } from './program.ts';
import { backUp, unfinishedFile } from './safekeeping.ts';
import { SENTENCES } from './sentences.ts';

/** Bundles that wait for a decision; more are not held in memory, the oldest goes. */
const MOST_WAITING = 2;

/** Writes everything into one file and hands it to the person. */
export async function exportBundle(program: Program): Promise<CallResult<CallOutput<'bundle.export'>>> {
  const { store, shell, version, work, turn } = program;
  const at = store.clock();
  const path = unfinishedFile(store);
  const day = new Date(at).toISOString().slice(0, 10);
  try {
    const order = { file: store.file, to: path, version, at };
    const bytes = await turn.alone(() => work.inWorker('export', 'export', order));
    if (bytes > BUNDLE_LIMITS.packed) {
      rmSync(path);
      return refused('too-large', SENTENCES['bundle-too-large']);
    }
    return done(await shell.deliver({ name: `everything-${day}.${BUNDLE_ENDING}`, mime: BUNDLE_MIME, path }));
  } catch (error) {
    rmSync(path, { force: true });
    throw error;
  }
}

/** Reads a bundle from end to end and says what taking it in would do; changes nothing. */
export async function previewBundle(
  program: Program,
  { upload }: ParsedInput<'bundle.preview'>,
): Promise<CallResult<CallOutput<'bundle.preview'>>> {
  const kind = {
    title: SENTENCES['choose-bundle'],
    extensions: [BUNDLE_ENDING],
    maxBytes: BUNDLE_LIMITS.packed,
  };
  const received = await program.shell.receive(kind, upload);
  if (received.kind === 'cancelled') return done({ kind: 'cancelled' });
  if (received.kind === 'too-large') {
    return refused('too-large', SENTENCES['too-large'](BUNDLE_LIMITS.packed / 1024 / 1024));
  }
  const { bytes } = received.file;
  const taken = await takeIn(program, bytes, 'take-back');
  if (!taken.ok) return taken;
  const handle = randomUUID();
  program.bundles.set(handle, bytes);
  const [oldest] = program.bundles.keys();
  if (program.bundles.size > MOST_WAITING && oldest) program.bundles.delete(oldest);
  return done({ kind: 'ready', handle, madeAt: taken.value.contents.madeAt, changes: taken.value.changes });
}

/** Takes a previewed bundle in, after a backup of the present. */
export async function importBundle(
  program: Program,
  { handle }: ParsedInput<'bundle.import'>,
): Promise<CallResult<CallOutput<'bundle.import'>>> {
  const bytes = program.bundles.get(handle);
  if (!bytes) return refused('not-found', SENTENCES['no-such-bundle']);
  const presentKeptAs = await program.writeLock.alone(() => backUp(program, 'before-import'));
  const taken = await takeIn(program, bytes, 'keep');
  if (!taken.ok) return taken;
  program.bundles.delete(handle);
  // Whoever was erased elsewhere goes here too, and from every copy: that of the present as well.
  await program.turn.alone(() => program.writeLock.alone(async () => eraseErased(program.store)));
  return done({ changes: taken.value.changes, presentKeptAs });
}

interface TakenIn {
  readonly contents: BundleContents;
  readonly changes: MergeCounts;
}

/** One transaction over many turns of the event loop; the writeLock keeps every other call out of it meanwhile. */
function takeIn(
  { store, writeLock, turn, work }: Program,
  bytes: Uint8Array,
  end: 'keep' | 'take-back',
): Promise<CallResult<TakenIn>> {
  const takenAlone = async (): Promise<CallResult<TakenIn>> => {
    store.db.exec('BEGIN IMMEDIATE');
    try {
      const items = listening(bundleItems(bytes));
      const changes = await work.run({ what: 'read-bundle', of: 0 }, mergeSteps(store, items));
      store.db.exec(end === 'keep' ? 'COMMIT' : 'ROLLBACK');
      return done({ contents: items.returned(), changes });
    } catch (error) {
      if (store.db.inTransaction) store.db.exec('ROLLBACK');
      if (!(error instanceof BundleRefused)) throw error;
      const problem = { path: error.path, message: error.message };
      return refused('bad-input', SENTENCES['bundle-refused'], [problem]);
    }
  };
  return turn.alone(() => writeLock.alone(takenAlone));
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
