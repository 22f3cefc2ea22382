import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readAudit } from '../../../app/library/audit.ts';
import { invite } from '../../../app/library/club.ts';
import { codeOf } from '../../../app/library/invitation.ts';
import { keepLogin, readLogin } from '../../../app/library/login-file.ts';
import { memberText } from '../../../app/library/problem.ts';
import { type ShakyNetwork, shakyNetwork } from '../../soak/shaky-network.ts';
import { inventedAthlete, inventedFit } from '../invented.ts';
import { throughLoopback } from '../shells/through-loopback.ts';
import { value, type WayIn } from '../shells/way-in.ts';
import { temporaryFolder } from '../temporary.ts';
import { type Club, startClub } from './club.ts';

let club: Club;
const ways: WayIn[] = [];
const networks: ShakyNetwork[] = [];
beforeAll(async () => {
  club = await startClub();
});
afterAll(async () => {
  for (const way of [...ways, ...networks]) await way.close();
});

async function program(): Promise<WayIn & { home: string; folder: string }> {
  const folder = temporaryFolder();
  const way = await throughLoopback(folder);
  ways.push(way);
  return Object.assign(way, { home: folder, folder: value(await way.call('program.state', {})).dataFolder });
}

async function invitation(name: string, role: 'head-coach' | 'coach'): Promise<string> {
  const guest = { name, role, groups: role === 'coach' ? ['Everyone'] : [] };
  return (await invite(club.owner, club.server.address, guest)).code;
}

/** A way to the club's server on which programs do not hear of others' news until it is let go on. */
async function deafWay() {
  const network = await shakyNetwork(club.server.address.port);
  networks.push(network);
  const hear = network.hold('listen "kneelwright"');
  return { address: { ...club.server.address, port: network.port }, hear };
}

describe('a program that joins a library', () => {
  it('shows what it would share, shares, hears of others at once, and leaves', async () => {
    const [a, b] = [await program(), await program()];
    const saved = value(await a.call('athletes.save', { athlete: inventedAthlete('Vera Invented') }));
    const code = await invitation('Ann', 'head-coach');
    expect(value(await a.call('library.preview', { code }))).toMatchObject({
      kind: 'ready',
      role: 'head-coach',
      shares: { athletes: 1, fits: 0 },
    });
    // Nothing was sent before the person said so.
    expect(await club.owner`SELECT FROM kneelwright.records`).toHaveLength(0);
    expect(value(await a.call('library.join', { code }))).toMatchObject({
      joined: { club: 'Invented Canoe Club', person: 'Ann' },
      waiting: 0,
      problem: null,
    });
    expect(value(await b.call('library.preview', { code }))).toEqual({ kind: 'used' });
    value(await b.call('library.join', { code: await invitation('Bea', 'coach') }));
    expect(value(await b.call('athletes.open', { id: saved.id })).athlete.name).toBe('Vera Invented');

    // Bea's program hears of it without being asked.
    const fit = value(await a.call('fits.create', { fit: inventedFit({ name: 'From Ann' }) }));
    value(await a.call('library.call', {}));
    await expect.poll(async () => value(await b.call('fits.list', {}))).toHaveLength(1);

    // What is open at Bea's waits, and Ann sees that it is open.
    const presentAtAnn = async () => value(await a.call('library.state', {})).present;
    value(await b.call('library.open', { fitId: fit.id }));
    await expect.poll(presentAtAnn).toEqual([{ fitId: fit.id, name: 'Bea' }]);
    value(await a.call('drafts.save', { id: fit.id, fit: { ...fit.fit, notes: 'new' } }));
    value(await a.call('library.call', {}));
    value(await b.call('library.call', {}));
    expect(value(await b.call('library.state', {})).held).toEqual([fit.id]);
    expect(value(await b.call('fits.open', { id: fit.id })).fit.notes).toBe('');
    value(await b.call('library.open', { fitId: null }));
    await expect.poll(async () => value(await b.call('fits.open', { id: fit.id })).fit.notes).toBe('new');
    await expect.poll(presentAtAnn).toEqual([]);

    expect(readdirSync(b.folder)).toContain('library.db');
    expect(value(await b.call('library.leave', {})).joined).toBeNull();
    expect(readdirSync(b.folder).filter((name) => name.startsWith('library'))).toEqual([]);
    expect(value(await b.call('fits.list', {}))).toHaveLength(1);
  });

  it('is told what others sent after its first call and before the server told it of news', async () => {
    const [a, b] = [await program(), await program()];
    value(await a.call('library.join', { code: await invitation('Bo', 'head-coach') }));
    const way = await deafWay();
    const guest = { name: 'Deb', role: 'coach', groups: ['Everyone'] } as const;
    const { code } = await invite(club.owner, way.address, guest);
    value(await b.call('library.join', { code }));
    const { id } = value(await a.call('athletes.save', { athlete: inventedAthlete('Unheard Invented') }));
    value(await a.call('library.call', {}));
    const there = async () => value(await b.call('athletes.list', {})).map((athlete) => athlete.id);
    expect(await there()).not.toContain(id);
    way.hear();
    await expect.poll(there).toContain(id);
  });

  it('leaves and removes what came from others; own entries stay, and what came comes again as new', async () => {
    const [a, b] = [await program(), await program()];
    const athlete = inventedAthlete('Came Invented');
    const came = value(await a.call('athletes.save', { athlete }));
    const fit = inventedFit({ name: 'Came', athlete: came.athlete });
    const made = value(await a.call('fits.create', { fit }));
    value(await a.call('revisions.save', { fitId: made.id, fit, name: 'one', reason: '' }));
    value(await a.call('library.join', { code: await invitation('Dee', 'head-coach') }));
    const own = value(await b.call('athletes.save', { athlete: inventedAthlete('Own Invented') }));
    value(await b.call('library.join', { code: await invitation('Eve', 'coach') }));
    expect(value(await b.call('fits.open', { id: made.id })).revisions).toHaveLength(1);
    value(await b.call('library.leave', { remove: true }));
    const left = value(await b.call('athletes.list', {})).map(({ id }) => id);
    expect(left).toEqual([own.id]);
    expect(value(await b.call('fits.list', {}))).toEqual([]);
    // It went from here only, and no erasure stands against its coming again.
    value(await b.call('library.join', { code: await invitation('Eve', 'coach') }));
    expect(value(await b.call('athletes.open', { id: came.id })).athlete.name).toBe('Came Invented');
    value(await a.call('library.call', {}));
    expect(value(await a.call('athletes.open', { id: came.id })).athlete.name).toBe('Came Invented');
  });

  it('lets the head coach say who is in which group, and tells the audit what went into files', async () => {
    const [a, b] = [await program(), await program()];
    const saved = value(await a.call('athletes.save', { athlete: inventedAthlete('Grouped Invented') }));
    value(await a.call('library.join', { code: await invitation('Fay', 'head-coach') }));
    value(await b.call('library.join', { code: await invitation('Gus', 'coach') }));
    const { groups } = value(await a.call('library.makeGroup', { name: 'Juniors' }));
    const juniors = groups.find(({ name }) => name === 'Juniors')!;
    const change = { groupId: juniors.id, athleteId: saved.id, isIn: true };
    const changed = value(await a.call('library.setInGroup', change)).groups;
    expect(changed.find(({ id }) => id === juniors.id)).toMatchObject({ athletes: [saved.id] });
    expect(value(await b.call('library.groups', {}))).toEqual({ groups: [] });
    value(await b.call('bundle.export', {}));
    value(await b.call('library.call', {}));
    const exports = (await readAudit(club.owner, saved.id)).filter(({ what }) => what === 'export');
    expect(exports.map(({ person }) => person)).toEqual(['Gus']);
  });

  it('tells of an athlete who left the coach’s groups and is kept for changes, until the coach removes her', async () => {
    const [a, b] = [await program(), await program()];
    const [left, kept] = await Promise.all(
      ['Leaves Invented', 'Kept Invented'].map(async (name) =>
        value(await a.call('athletes.save', { athlete: inventedAthlete(name) })),
      ),
    );
    value(await a.call('library.join', { code: await invitation('Hal', 'head-coach') }));
    const { groups } = value(await a.call('library.makeGroup', { name: 'Sprinters' }));
    const groupId = groups.find(({ name }) => name === 'Sprinters')!.id;
    const setIn = (athleteId: string, isIn: boolean) =>
      a.call('library.setInGroup', { groupId, athleteId, isIn });
    for (const { id } of [left!, kept!]) value(await setIn(id, true));
    const guest = { name: 'Ivy', role: 'coach', groups: ['Sprinters'] } as const;
    // Her program does not hear that the athletes leave, and so does not send her change before both have.
    const { code } = await invite(club.owner, (await deafWay()).address, guest);
    value(await b.call('library.join', { code }));
    value(await b.call('athletes.save', { athlete: { ...kept!.athlete, massKg: 71 } }));
    for (const { id } of [left!, kept!]) value(await setIn(id, false));
    const called = value(await b.call('library.call', {}));
    expect(called.kept).toEqual([{ id: kept!.id, name: 'Kept Invented' }]);
    const here = async () => value(await b.call('athletes.list', {})).map(({ id }) => id);
    expect(await here()).toEqual([kept!.id]);
    expect(value(await b.call('library.discard', { athleteId: kept!.id })).kept).toEqual([]);
    expect(await here()).toEqual([]);
    value(await a.call('library.call', {}));
    expect(value(await a.call('athletes.open', { id: kept!.id })).athlete.massKg).not.toBe(71);
  });

  it('goes on as ever without the server, and says so', async () => {
    const a = await program();
    value(await a.call('library.join', { code: await invitation('Cal', 'coach') }));
    const address = readLogin(a.folder, undefined)!;
    expect(statSync(join(a.folder, 'library-login.json')).mode & 0o077).toBe(0);
    keepLogin(a.folder, { ...address, port: 1 }, undefined);
    await a.close();
    const away = await throughLoopback(a.home);
    ways.splice(ways.indexOf(a), 1, away);
    value(await away.call('athletes.save', { athlete: inventedAthlete('Alone') }));
    expect(value(await away.call('library.call', {}))).toMatchObject({ problem: 'away', waiting: 1 });
    // What cannot be done without the server says that it is away, not that an invitation is refused.
    const refusal = { ok: false, error: { message: memberText('away') } };
    expect(await away.call('library.makeGroup', { name: 'Juniors' })).toMatchObject(refusal);
    expect(
      await (await program()).call('library.join', { code: codeOf({ ...address, port: 1 }) }),
    ).toMatchObject(refusal);
  });

  it('keeps its password encrypted where the system can', () => {
    const folder = temporaryFolder();
    const turned = (bytes: Uint8Array) => bytes.map((byte) => byte ^ 0x5a);
    const secrets = {
      seal: (text: string) => turned(Buffer.from(text)),
      open: (sealed: Uint8Array) => Buffer.from(turned(sealed)).toString(),
    };
    keepLogin(folder, { ...club.server.address, password: 'not in plain sight' }, secrets);
    expect(readFileSync(join(folder, 'library-login.json'), 'utf8')).not.toContain('plain sight');
    expect(readLogin(folder, secrets)).toMatchObject({ password: 'not in plain sight' });
    expect(readLogin(folder, undefined)).toBeNull();
    expect(existsSync(join(folder, 'library.db'))).toBe(false);
  });
});
