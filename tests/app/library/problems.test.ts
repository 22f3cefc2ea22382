import { execFile } from 'node:child_process';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { beforeAll, describe, expect, it } from 'vitest';
import type { LibraryOptions } from '../../../app/library/arguments.ts';
import { readAudit } from '../../../app/library/audit.ts';
import { runCommand } from '../../../app/library/commands.ts';
import { problemForServer } from '../../../app/library/problem.ts';
import { libraryUsage } from '../../../app/library/usage.ts';
import { say } from '../../../app/shell/say.ts';
import { shakyNetwork } from '../../soak/shaky-network.ts';
import { temporaryFolder } from '../temporary.ts';
import { type Club, startClub } from './club.ts';

const ROOT = join(import.meta.dirname, '../../..');

const NARROW_UMASK = ['--import', 'data:text/javascript,process.umask(0o077)'];

let club: Club;
beforeAll(async () => {
  club = await startClub();
});

/** What a command prints, line by line, and its exit code. */
async function told(command: string, options: LibraryOptions): Promise<readonly [number, string[]]> {
  const said: string[] = [];
  return [await runCommand(command, options, (line) => said.push(line)), said];
}

interface Place {
  readonly login?: string;
  readonly password?: string;
  readonly host?: string;
  readonly port?: number;
  readonly database?: string;
}

const full = (place: Place) => ({
  login: 'postgres',
  password: 'only-on-this-machine',
  host: '127.0.0.1',
  port: club.server.address.port,
  database: 'postgres',
  ...place,
});

function at(place: Place): string {
  const { login, password, host, port, database } = full(place);
  return `postgres://${login}:${password}@${host}:${port}/${database}`;
}

function sentenceOf(problem: string, place: Place): string {
  const { host, port, database } = full(place);
  return say('library-cli.problem', { problem, at: `${host}:${port}`, database });
}

describe('a volunteer’s command that fails', () => {
  it.each([
    ['no server is at the address', { port: 1 }, 'away', /ECONNREFUSED/],
    // Where no name server answers, the driver stops waiting for one.
    ['there is no such host', { host: 'none.invalid' }, 'away', /ENOTFOUND|EAI_|CONNECT_TIMEOUT/],
    ['the password is wrong', { password: 'wrong' }, 'login', /password authentication failed/],
    ['nobody has this login', { login: 'nobody' }, 'login', /password authentication failed/],
    ['there is no such database', { database: 'elsewhere' }, 'database', /does not exist/],
    ['the database has no library', { database: 'template1' }, 'empty', /does not exist/],
  ] as const)(
    'because %s says so and what to do, then what the driver says',
    async (_, place, problem, detail) => {
      expect(await told('status', { at: at(place) })).toEqual([
        1,
        [sentenceOf(problem, place), expect.stringMatching(detail)],
      ]);
    },
  );

  it('because the login has no right to do it', async () => {
    const { login, password } = await club.member('Only a Coach', 'coach');
    expect(await told('invite', { at: at({ login, password }), name: 'Somebody', role: 'coach' })).toEqual([
      1,
      [sentenceOf('rights', {}), expect.stringMatching(/permission denied/)],
    ]);
  });

  it('because a server elsewhere offers no TLS', async () => {
    // By a name that is not among this machine's own, the same server counts as one elsewhere.
    const way = await shakyNetwork(club.server.address.port, '0.0.0.0');
    const place = { host: hostname(), port: way.port };
    expect(await told('status', { at: at(place) })).toEqual([
      1,
      [sentenceOf('tls', place), expect.stringMatching(/TLS/)],
    ]);
    await way.close();
  });

  it('because the server is silent', () => {
    const error = Object.assign(new Error('write CONNECT_TIMEOUT undefined:undefined'), {
      code: 'CONNECT_TIMEOUT',
    });
    expect(problemForServer(error, full({}))).toEqual([sentenceOf('away', {}), 'CONNECT_TIMEOUT']);
  });

  it('because an identifier is none', async () => {
    const [, [sentence]] = await told('audit', { at: at({}), athlete: ['Ann'] });
    expect(sentence).toBe(sentenceOf('identifier', {}));
  });

  it.each(['group', 'revoke', 'backup', 'restore'])(
    'because %s lacks an option says what each needs',
    async (command) => {
      expect(await told(command, { at: at({}) })).toEqual([2, [libraryUsage()]]);
    },
  );

  it('because a server to try cannot start ends with 1 and says what to change', async () => {
    const port = String(club.server.address.port);
    // The server's own user still reads what the command makes for it.
    const run = promisify(execFile)(
      'node',
      [...NARROW_UMASK, 'app/library/cli.ts', 'local', '--folder', temporaryFolder(), '--port', port],
      { cwd: ROOT },
    );
    await expect(run).rejects.toMatchObject({
      code: 1,
      stdout: `${sentenceOf('start', {})}\n`,
    });
    const [code, [sentence]] = await told('local', { folder: join(ROOT, 'package.json', 'x') });
    expect([code, sentence]).toEqual([1, expect.stringContaining(say('evaluate.why.missing'))]);
  });
});

it('the audit is read to its beginning', async () => {
  await club.owner`INSERT INTO kneelwright.audit (what, athletes) SELECT 'export', '{}' FROM generate_series(1, 10001)`;
  expect((await readAudit(club.owner, null)).length).toBeGreaterThan(10_000);
});
