import { randomUUID } from 'node:crypto';
import { existsSync, rmSync, statSync } from 'node:fs';
import type { Jobs, ReadBundle } from '../background/job.ts';
import { BUNDLE_ENDING, BUNDLE_LIMITS, BUNDLE_MIME, ENCRYPTED_MIME } from '../bundle/bundle-format.ts';
import { ENCRYPTED_ENDING, isEncrypted } from '../bundle/encryption.ts';
import { BUNDLE_PROBLEMS } from '../bundle/refusal.ts';
import type { CallOutput, ParsedInput } from '../contract/contract.ts';
import type { CallResult } from '../contract/result.ts';
import { say } from '../shell/say.ts';
import { done, type Program, refused } from './program.ts';
import { backUp, unfinishedFile } from './safekeeping.ts';
import { SENTENCES } from './sentences.ts';
import { takeStagedIn } from './staged-imports.ts';

/** Bundles that wait for an answer; of more, the oldest goes. */
const MOST_WAITING = 2;

/** Writes everything into one file, encrypted if a passphrase is given, and hands it to the person. */
export async function exportBundle(
  program: Program,
  { passphrase }: ParsedInput<'bundle.export'>,
): Promise<CallResult<CallOutput<'bundle.export'>>> {
  const { store, shell, version, work, turn, library } = program;
  const at = store.clock();
  const path = unfinishedFile(store);
  const day = new Date(at).toISOString().slice(0, 10);
  const name = `everything-${day}.${BUNDLE_ENDING}`;
  try {
    const order = { file: store.file, to: path, version, at, passphrase };
    const written = await turn.alone(() => work.inWorker('export', { name: 'export', input: order }));
    if (written === 'too-large') {
      rmSync(path, { force: true });
      return refused('too-large', SENTENCES['bundle-too-large']);
    }
    library.exported(athleteIds(store));
    return done(
      await shell.deliver(
        passphrase === null
          ? { name, mime: BUNDLE_MIME, path }
          : { name: `${name}.${ENCRYPTED_ENDING}`, mime: ENCRYPTED_MIME, path },
      ),
    );
  } catch (error) {
    rmSync(path, { force: true });
    throw error;
  }
}

function athleteIds({ db }: Program['store']): string[] {
  return db.prepare<[], string>('SELECT id FROM athletes').pluck().all();
}

type Preview = CallResult<CallOutput<'bundle.preview'>>;

/** Reads a bundle from end to end and says what importing it would do; changes nothing. Asks for a passphrase if it has one. */
export async function previewBundle(
  program: Program,
  { upload }: ParsedInput<'bundle.preview'>,
): Promise<Preview> {
  const path = unfinishedFile(program.store);
  const kind = {
    title: SENTENCES['choose-bundle'],
    extensions: [BUNDLE_ENDING, ENCRYPTED_ENDING],
    maxBytes: BUNDLE_LIMITS.packed,
  };
  const received = await program.shell.receive(kind, { upload, to: path });
  if (received === 'cancelled') return done({ kind: 'cancelled' });
  if (received === 'too-large') {
    return refused('too-large', SENTENCES['too-large'](BUNDLE_LIMITS.packed / 1024 / 1024));
  }
  if (isEncrypted(path)) return done({ kind: 'locked', handle: keepWaiting(program, path), wrong: false });
  return previewFile(program, path);
}

/** Opens an encrypted bundle that waits. A wrong passphrase leaves it waiting for another one. */
export async function unlockBundle(
  program: Program,
  { handle, passphrase }: ParsedInput<'bundle.unlock'>,
): Promise<Preview> {
  const path = waiting(program, handle);
  if (path === null) return refused('not-found', SENTENCES['no-such-bundle']);
  const { store, turn, work } = program;
  const to = unfinishedFile(store);
  const order = { path, to, passphrase, size: statSync(path).size };
  let opened: Jobs['bundle-decrypt']['output'] | null = null;
  try {
    opened = await turn.alone(() => work.inWorker('unlock', { name: 'bundle-decrypt', input: order }));
  } finally {
    if (opened !== 'decrypted') rmSync(to, { force: true });
  }
  if (opened === 'wrong-passphrase') return done({ kind: 'locked', handle, wrong: true });
  if (opened === 'damaged') return bundleRefused({ path: '', message: say(BUNDLE_PROBLEMS.encrypted) });
  const preview = await previewFile(program, to);
  forget(program, handle);
  return preview;
}

async function previewFile(program: Program, path: string): Promise<Preview> {
  const { store, turn, work } = program;
  const order = { file: store.file, copy: unfinishedFile(store), path, at: store.clock() };
  let read: ReadBundle | null = null;
  try {
    read = await turn.alone(() => work.inWorker('read-bundle', { name: 'bundle-preview', input: order }));
  } finally {
    if (read?.kind !== 'read') rmSync(path, { force: true });
  }
  if (read.kind === 'refused') return bundleRefused(read);
  const { madeAt, changes } = read;
  return done({ kind: 'ready', handle: keepWaiting(program, path), madeAt, changes });
}

/**
 * Imports a previewed bundle, after a backup of the present. A worker reads it to its end first, and may be stopped; from then
 * on it is imported in short transactions, and comes to its end whatever happens. Edits go on meanwhile.
 */
export function importBundle(
  program: Program,
  { handle }: ParsedInput<'bundle.import'>,
): Promise<CallResult<CallOutput<'bundle.import'>>> {
  const { store, work, turn } = program;
  return turn.alone(async () => {
    const path = waiting(program, handle);
    if (path === null || isEncrypted(path)) return refused('not-found', SENTENCES['no-such-bundle']);
    const presentKeptAs = await backUp(program, 'before-import');
    const staged = await work.inWorker('import', {
      name: 'bundle-stage',
      input: { folder: store.folder, path },
    });
    if (staged.kind === 'refused') return bundleRefused(staged);
    const changes = await takeStagedIn(program);
    forget(program, handle);
    return done({ changes: changes!, presentKeptAs });
  });
}

function bundleRefused({ path, message }: { path: string; message: string }) {
  return refused('bad-input', SENTENCES['bundle-refused'], [{ path, message }]);
}

function keepWaiting(program: Program, path: string): string {
  const handle = randomUUID();
  program.bundles.set(handle, path);
  const [oldest] = program.bundles.keys();
  if (program.bundles.size > MOST_WAITING && oldest) forget(program, oldest);
  return handle;
}

/** The file of a bundle that waits. An erasure sweeps such files away. */
function waiting({ bundles }: Program, handle: string): string | null {
  const path = bundles.get(handle);
  return path !== undefined && existsSync(path) ? path : null;
}

function forget({ bundles }: Program, handle: string): void {
  const path = bundles.get(handle);
  bundles.delete(handle);
  if (path) rmSync(path, { force: true });
}

/** Removes the files of all bundles that wait. */
export function forgetBundles(program: Program): void {
  for (const handle of [...program.bundles.keys()]) forget(program, handle);
}
