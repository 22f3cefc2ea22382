import { errorCode } from '../shell/error-code.ts';
import { say } from '../shell/say.ts';
import { unreadFile } from '../shell/unread-file.ts';
import type { LibraryAddress } from './address.ts';
import { WrittenByLaterProgram } from './read-server.ts';

type Problem = 'away' | 'gone' | 'not-secure' | 'later-program' | 'failed';

/** What the driver and the server say when a call fails, as the page is told it. */
export function problemOf(error: unknown): Problem {
  const code = errorCode(error);
  if (error instanceof WrittenByLaterProgram) return 'later-program';
  if (/^(28|42501|3D000)/.test(code)) return 'gone';
  if (/CERT|SIGNATURE|TLS|SSL|ALTNAME|EPROTO/.test(code)) return 'not-secure';
  if (
    /^(08|57P|53|ECONN|ERR_SOCKET|EHOST|ENET|ENOTFOUND|EAI_|ETIMEDOUT|EPIPE|CONNECT|CONNECTION_)/.test(code)
  )
    return 'away';
  return 'failed';
}

/** A problem as a member of the club reads it. */
export function memberText(problem: Problem | 'used'): string {
  return say('library.problem', { problem: problem.replaceAll('-', '_') });
}

/** The same for whoever runs the server: what failed and what to do, then the driver's own words; those alone where nothing is known of it. */
export function problemForServer(
  error: unknown,
  { host, port, database }: Pick<LibraryAddress, 'host' | 'port' | 'database'>,
): readonly string[] {
  const detail = detailOf(error);
  const problem = problemOf(error);
  if (problem === 'not-secure') return [memberText(problem), detail];
  const at = `${host}:${port}`;
  // A server without TLS ends the connection: the driver has no code of its own for that.
  const code = /secure TLS/.test(detail) ? 'tls' : problem === 'away' ? problem : errorCode(error);
  const [, kind] = SERVER_PROBLEMS.find(([codes]) => codes.test(code)) ?? [];
  return kind ? [say('library-cli.problem', { problem: kind, at, database }), detail] : [detail];
}

/** A server on this machine that does not start: a folder that cannot be used, or what its program says, if anything. */
export function problemOfStart(error: unknown): readonly string[] {
  const { path } = Object(error) as { path?: string };
  if (path !== undefined) return [unreadFile(path, error)];
  return [say('library-cli.problem', { problem: 'start', at: '', database: '' }), detailOf(error)].filter(
    Boolean,
  );
}

/** The driver's words. Of a server that is silent it says only an address, which it does not know where a socket is ours. */
function detailOf(error: unknown): string {
  const code = errorCode(error);
  if (code === 'CONNECT_TIMEOUT') return code;
  return (Object(error) as { message?: string }).message || code;
}

/** By SQLSTATE (PostgreSQL, appendix A). */
const SERVER_PROBLEMS = [
  [/^away$/, 'away'],
  [/^tls$/, 'tls'],
  [/^28/, 'login'],
  [/^3D000/, 'database'],
  [/^42501/, 'rights'],
  [/^(42P01|3F000)/, 'empty'],
  [/^22P02/, 'identifier'],
] as const;
