import { chmodSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { errorCode } from '../shell/error-code.ts';
import { makePrivateFolder } from '../shell/private-files.ts';
import { say, words } from '../shell/say.ts';
import { unreadFile } from '../shell/unread-file.ts';
import { addressOf, type Library, type LibraryAddress, openLibrary } from './address.ts';
import type { LibraryOptions } from './arguments.ts';
import { readAudit } from './audit.ts';
import { backUpLibrary } from './backup.ts';
import {
  initLibrary,
  invite,
  PERSON_ROLES,
  type PersonRole,
  putInGroup,
  revokePerson,
  statusOf,
} from './club.ts';
import { keepPort, keptPort, startLocalServer } from './local-server.ts';
import { problemForServer, problemOfStart } from './problem.ts';
import { restoreLibrary } from './restore.ts';
import { ADDRESS, libraryUsage } from './usage.ts';

type Print = (line: string) => void;

/** Carries out a command; gives the exit code. */
export async function runCommand(command: string, options: LibraryOptions, print: Print): Promise<number> {
  if (command === 'local') {
    return local(options, print).catch((error: unknown) => {
      for (const line of problemOfStart(error)) print(line);
      return 1;
    });
  }
  const work = Object.hasOwn(COMMANDS, command) ? COMMANDS[command] : undefined;
  const address = addressIn(options);
  if (typeof address === 'string') {
    print(address);
    return 2;
  }
  if (!work || !address) {
    print(
      work
        ? `${say('library-cli.needs-address', { address: ADDRESS })}\n\n${libraryUsage()}`
        : libraryUsage(),
    );
    return command === 'help' ? 0 : 2;
  }
  const sql = openLibrary(address);
  try {
    return await work(sql, { options, address, print });
  } catch (error) {
    for (const line of failureLines(error, { options, address })) print(line);
    return 1;
  } finally {
    await sql.end({ timeout: 1 });
  }
}

/** Why a command failed: a file that cannot be read or written, or what the server says. */
function failureLines(
  error: unknown,
  { options: { to }, address }: Pick<Run, 'options' | 'address'>,
): readonly string[] {
  const { path } = error as NodeJS.ErrnoException;
  if (path === undefined) return problemForServer(error, address);
  if (to === undefined) return [unreadFile(path, error)];
  const code = errorCode(error);
  if (/^(ENOSPC|EDQUOT)/.test(code)) return [say('problem.file-disk-full')];
  return [say('problem.file-failed', { detail: `${to}: ${code}` })];
}

/** Where the library is; a sentence if the file of its password or of its certificate cannot be read; null if it is nowhere. */
function addressIn({ at = '' }: LibraryOptions): LibraryAddress | string | null {
  try {
    // A password on the command line is seen by everybody on this machine: a file holds it as well.
    return addressOf(at.startsWith('@') ? readFileSync(at.slice(1), 'utf8').trim() : at);
  } catch (error) {
    return unreadFile(String((error as NodeJS.ErrnoException).path), error);
  }
}

interface Run {
  readonly options: LibraryOptions;
  readonly address: LibraryAddress;
  readonly print: Print;
}

const COMMANDS: Readonly<Record<string, (sql: Library, run: Run) => Promise<number>>> = {
  async init(sql, { options, print }) {
    const { from, to } = await initLibrary(sql, options.club ?? 'Club');
    print(say(from === to ? 'library-cli.up-to-date' : 'library-cli.now-at', { version: to }));
    return 0;
  },
  async invite(sql, { options, address, print }) {
    const role = PERSON_ROLES.find((one) => one === options.role);
    if (!role || !options.name) {
      print(say('library-cli.invite-needs', { roles: words().row(PERSON_ROLES) }));
      return 2;
    }
    const host = options.host ?? address.host;
    const { code } = await invite(
      sql,
      { ...address, host },
      { name: options.name, role, groups: groupsOf(role, options.group) },
    );
    print(`${say('library-cli.code', { name: options.name })}\n\n${code}`);
    return 0;
  },
  async group(sql, { options, print }) {
    const [group] = options.group ?? [];
    if (!group) return lacking(print);
    await putInGroup(sql, group, options.athlete ?? []);
    print(say('library-cli.grouped', { count: options.athlete?.length ?? 0, group }));
    return 0;
  },
  async revoke(sql, { options, print }) {
    const { name } = options;
    if (!name) return lacking(print);
    const count = await revokePerson(sql, name);
    print(count === 0 ? say('library-cli.nobody', { name }) : say('library-cli.revoked', { name, count }));
    return count === 0 ? 1 : 0;
  },
  async audit(sql, { options, print }) {
    const rows = await readAudit(sql, options.athlete?.[0] ?? null, options.minors ? 'minors' : 'all');
    if (options.json) print(JSON.stringify(rows));
    else
      for (const { at, person, what, athletes } of rows)
        print(
          `${at.toISOString().slice(0, 16).replace('T', ' ')}  ${person}  ${what}  ${athletes.join(' ')}`,
        );
    return 0;
  },
  async restore(sql, { options, print }) {
    if (!options.from) return lacking(print);
    print(say('library-cli.restored', { count: await restoreLibrary(sql, options.from) }));
    return 0;
  },
  async status(sql, { options, print }) {
    const status = await statusOf(sql);
    if (options.json) print(JSON.stringify(status));
    else for (const line of statusLines(status)) print(line);
    return 0;
  },
  async backup(sql, { options, print }) {
    if (!options.to) return lacking(print);
    const rows = await backUpLibrary(sql, options.to);
    print(say('library-cli.backed-up', { count: rows, file: options.to }));
    return 0;
  },
};

/** An option is missing: what each command needs. */
function lacking(print: Print): number {
  print(libraryUsage());
  return 2;
}

function groupsOf(role: PersonRole, groups: readonly string[] | undefined): readonly string[] {
  if (groups && groups.length > 0) return groups;
  return role === 'coach' || role === 'viewer' ? ['Everyone'] : [];
}

function statusLines(status: Awaited<ReturnType<typeof statusOf>>): string[] {
  const when = (at: Date | null) => at?.toISOString().slice(0, 16).replace('T', ' ') ?? '–';
  const counts = Object.entries({ ...status.records, revision: status.revisions });
  const held = words().row(
    counts.map(([kind, count]) => say('library.shares.kind', { kind: `${kind}s`, count })),
  );
  return [
    say('library-cli.status', { club: status.club, version: status.version, held }),
    ...status.laptops.map(({ person, role, lastContact, accepted }) => {
      const values = { person, role, when: when(lastContact) };
      return `  ${say(accepted ? 'library-cli.laptop' : 'library-cli.laptop.invited', values)}`;
    }),
    ...status.notCalledSince.map(
      ({ person, lastContact, tombstones }) =>
        `  ! ${say('library-cli.laptop.behind', { person, when: when(lastContact), count: tombstones })}`,
    ),
  ];
}

/** Runs until it is told to end. */
async function local({ folder = 'library-to-try', port }: LibraryOptions, print: Print): Promise<number> {
  const place = resolve(folder);
  makePrivateFolder(place);
  // As root the server runs as a user of its own, who has to get through.
  if (process.getuid?.() === 0) chmodSync(place, 0o711);
  const wanted = port === undefined ? keptPort(place) : Number(port);
  const server = await startLocalServer(resolve(place, 'data'), wanted === undefined ? {} : { port: wanted });
  keepPort(place, server.address.port);
  const sql = openLibrary(server.address);
  await initLibrary(sql, 'Club');
  await sql.end();
  print(say('library-cli.runs', { address: server.url }));
  print(`npm run library -- invite --at ${server.url} --name NAME --role head-coach`);
  await new Promise<void>((done) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => done());
  });
  await server.stop();
  return 0;
}
