import { hostname } from 'node:os';
import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { type LibraryAddress, openLibrary } from '../../../app/library/address.ts';
import { invite } from '../../../app/library/club.ts';
import { runCommand } from '../../../app/library/commands.ts';
import { accept, readCode } from '../../../app/library/invitation.ts';
import { problemOf } from '../../../app/library/problem.ts';
import { say } from '../../../app/shell/say.ts';
import { athletes } from '../../../app/store/roster.ts';
import { callOnce } from '../../soak/library-laptop.ts';
import { type ShakyNetwork, shakyNetwork } from '../../soak/shaky-network.ts';
import { inventedAthlete } from '../invented.ts';
import { temporaryFile, temporaryStore } from '../temporary.ts';
import { type Authority, newAuthority, speakTls } from './certificates.ts';
import { type Club, startClub } from './club.ts';

/** By a name that is not among this machine's own, its server counts as one elsewhere. */
const HOST = hostname();

let club: Club;
let authority: Authority;
let way: ShakyNetwork;
beforeAll(async () => {
  club = await startClub();
  authority = newAuthority('Authority of an invented club');
});
beforeEach(async () => {
  way = await shakyNetwork(club.server.address.port, '0.0.0.0');
});
afterEach(() => way.close());

/** What the server presents is as good as taken over when a new connection meets it. */
async function present(host: string, by = authority, days?: number): Promise<void> {
  await speakTls(club, by.certificateFor(host, days));
  await expect.poll(() => club.owner`SHOW ssl`).toEqual([{ ssl: 'on' }]);
}

async function elsewhere(more: Partial<LibraryAddress> = {}): Promise<LibraryAddress> {
  const guest = { name: `Guest ${Math.random()}`, role: 'coach', groups: ['Everyone'] } as const;
  const { address } = await invite(club.owner, club.server.address, guest);
  return { ...address, host: HOST, port: way.port, ...more };
}

/** What the page is told, and why. */
async function refusalOf(address: LibraryAddress): Promise<string> {
  const sql = openLibrary(address);
  try {
    await sql`SELECT 1`;
    return 'answered';
  } catch (error) {
    return `${problemOf(error)}: ${(error as { code?: string }).code}`;
  } finally {
    await sql.end({ timeout: 0 });
  }
}

describe('a library elsewhere, whose certificate the club has signed itself', () => {
  it('is spoken to by TLS alone: invitation, joining and sharing, with nothing in plain sight', async () => {
    await present(HOST);
    const guest = { name: 'Ann', role: 'head-coach' } as const;
    const owner = { ...club.server.address, host: HOST, port: way.port, ca: authority.ca };
    await expect.poll(() => refusalOf(owner)).toBe('answered');
    const { code } = await invite(club.owner, owner, guest);
    // The code carries the authority's certificate: nobody has to copy a file.
    const own = await accept(readCode(code)!);
    const sql = club.as(own);
    const [tls] = await sql`SELECT ssl, version FROM pg_stat_ssl WHERE pid = pg_backend_pid()`;
    expect(tls).toMatchObject({ ssl: true, version: expect.stringMatching(/^TLSv1\.[23]$/) });
    const store = temporaryStore();
    athletes.save(store, inventedAthlete('Secretly Invented'));
    expect(await callOnce(store, own)).toMatchObject({ sent: 1 });
    for (const word of [own.login, 'Secretly', 'kneelwright.']) expect(way.said()).not.toContain(word);
  });

  it.each([
    [
      'whose authority is not known here',
      async () => present(HOST),
      () => ({}),
      'UNABLE_TO_VERIFY_LEAF_SIGNATURE',
    ],
    [
      'that another authority has signed',
      async () => present(HOST, newAuthority('Somebody else')),
      () => ({ ca: authority.ca }),
      'UNABLE_TO_VERIFY_LEAF_SIGNATURE',
    ],
    [
      'that has expired',
      async () => present(HOST, authority, -1),
      () => ({ ca: authority.ca }),
      'CERT_HAS_EXPIRED',
    ],
    [
      'that is another host’s',
      async () => present('library.example.org'),
      () => ({ ca: authority.ca }),
      'ERR_TLS_CERT_ALTNAME_INVALID',
    ],
  ] as const)('is refused with a certificate %s, before a login is sent', async (_, before, more, code) => {
    await before();
    const address = await elsewhere(more());
    await expect.poll(() => refusalOf(address)).toBe(`not-secure: ${code}`);
    expect(way.met()).toBeGreaterThan(0);
    expect(way.said()).not.toContain(address.login);
    // A volunteer's command says the same as the page, then which certificate it is.
    const said: string[] = [];
    const at = `postgres://${address.login}:${address.password}@${HOST}:${way.port}/postgres`;
    const file = temporaryFile(Buffer.from(authority.ca));
    await runCommand('status', { at: 'ca' in address ? `${at}?sslrootcert=${file}` : at }, (line) =>
      said.push(line),
    );
    expect(said).toEqual([
      say('library.problem', { problem: 'not_secure' }),
      expect.stringMatching(/certificate/),
    ]);
    // The page says it in a sentence, and nothing was kept.
    expect(say('library.problem', { problem: 'not_secure' })).toMatch(
      /certificate is not valid; nothing was sent/,
    );
  });
});
