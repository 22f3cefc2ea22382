import { WorkCancelled } from '../background/job.ts';
import { type CallName, contract } from '../contract/contract.ts';
import type { CallError, CallResult } from '../contract/result.ts';
import { problemsOf } from '../problems/problem-sentences.ts';
import { errorCode } from '../shell/error-code.ts';
import { faultForLog } from '../shell/log-file.ts';
import { oddText } from '../shell/plain-text.ts';
import { bringsErased } from './brings-erased.ts';
import { missing, type Program, refused } from './program.ts';
import { SENTENCES } from './sentences.ts';
import { services } from './services.ts';

/**
 * Carries out one call of the contract, whichever shell it came through. Never throws: an unknown name, a malformed
 * input, a failing disk and a fault of the program's own are all typed refusals.
 */
export async function dispatch(
  program: Program,
  name: unknown,
  input: unknown,
): Promise<CallResult<unknown>> {
  if (!isCallName(name)) return refused('unknown-call', SENTENCES['unknown-call'](nameText(name)));
  const { input: wanted, output: promised } = contract[name];
  const parsed = wanted.safeParse(input);
  if (!parsed.success) {
    return refused('bad-input', SENTENCES['bad-input'], problemsOf(parsed.error, wanted, input));
  }
  const odd = oddText(parsed.data);
  if (odd) return refused('bad-input', SENTENCES['bad-input'], [odd]);
  try {
    if (!PASSES_LOCK.has(name)) {
      if (!ONLY_READS.has(name)) await program.writeLock.free();
      program.store.safeguard.look();
    }
    if (bringsErased(program, name, parsed.data)) return missing('athlete');
    // The table's type ties each name to its own input; a union of names loses that tie, hence the one cast.
    const service = services[name] as (program: Program, input: unknown) => CallResult<unknown>;
    const answer = await service(program, parsed.data);
    // Nothing is said to be kept before it is in the journal too.
    program.store.safeguard.looked();
    if (!answer.ok) return answer;
    const checked = promised.safeParse(answer.value);
    if (checked.success) return { ok: true, value: checked.data };
    return ownFault(program, name, checked.error);
  } catch (error) {
    return failure(program, name, error);
  }
}

/** Calls that take the lock themselves, write nothing, or touch no row. All others but those that only read wait while it is held. */
const PASSES_LOCK: ReadonlySet<CallName> = new Set<CallName>([
  'program.quit',
  'display.read',
  'display.keep',
  'athletes.previewErase',
  'athletes.erase',
  'athletes.import',
  'backups.list',
  'backups.take',
  'backups.restore',
  'bundle.export',
  'bundle.preview',
  'bundle.unlock',
  'bundle.import',
  'library.state',
  'library.preview',
  'library.join',
  'library.call',
  'library.leave',
  'library.discard',
  'library.groups',
  'library.makeGroup',
  'library.setInGroup',
  'library.open',
  'work.progress',
  'work.cancel',
]);

/** Calls that change nothing: they see the store as it was before what is under way, or as it is after that. */
const ONLY_READS: ReadonlySet<CallName> = new Set<CallName>([
  'program.state',
  'athletes.list',
  'athletes.open',
  'athletes.entries',
  'athletes.erased',
  'athletes.timeline',
  'revisions.list',
  'athletes.fits',
  'measurings.list',
  'boats.list',
  'boats.open',
  'boats.fits',
  'boats.sections',
  'boats.stock',
  'photos.list',
  'photos.ofAthlete',
  'photos.open',
  'paddles.list',
  'paddles.open',
  'fits.list',
  'fits.open',
  'revisions.open',
  'trials.list',
  'things.find',
  'conflicts.list',
]);

function isCallName(name: unknown): name is CallName {
  return typeof name === 'string' && Object.hasOwn(contract, name);
}

function nameText(name: unknown): string {
  return typeof name === 'string' ? name.slice(0, 60) : typeof name;
}

/** What the file system and SQLite say when a write fails, as the page is told it. */
const failures = (): readonly (readonly [RegExp, CallError['code'], string])[] => [
  [/^STORE_REPLACED/, 'damaged', SENTENCES['store-replaced']],
  [/^(ENOSPC|EDQUOT|SQLITE_FULL)/, 'disk-full', SENTENCES['disk-full']],
  [/^(EACCES|EPERM|EROFS|SQLITE_READONLY|SQLITE_PERM)/, 'read-only', SENTENCES['read-only']],
  [/^(EIO|EFBIG|SQLITE_(IOERR|CANTOPEN))/, 'damaged', SENTENCES['disk-error']],
  [/^SQLITE_(CORRUPT|NOTADB)/, 'damaged', SENTENCES['store-damaged']],
  [/^SQLITE_(BUSY|LOCKED)/, 'conflict', SENTENCES['store-busy']],
  [/^(ENOENT|ENOTDIR|EISDIR|ENAMETOOLONG)/, 'not-found', SENTENCES['place-gone']],
];

/** What went wrong, as the page is told it. */
export function failure(program: Program, name: string, error: unknown): CallResult<never> {
  if (error instanceof WorkCancelled) return refused('cancelled', SENTENCES.cancelled);
  const code = errorCode(error);
  const known = failures().find(([pattern]) => pattern.test(code));
  if (known) return refused(known[1], known[2]);
  return ownFault(program, name, error);
}

/** The person gets a sentence; where it happened goes to the program's own log. */
function ownFault({ log }: Program, name: string, error: unknown): CallResult<never> {
  log.write(`call ${name}: ${faultForLog(error)}`);
  return refused('internal', SENTENCES.internal);
}
