import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Library } from '../../../app/library/address.ts';
import { readAudit } from '../../../app/library/audit.ts';
import { backUpLibrary } from '../../../app/library/backup.ts';
import { invite, putInGroup, revokePerson, statusOf } from '../../../app/library/club.ts';
import { runCommand } from '../../../app/library/commands.ts';
import { accept } from '../../../app/library/invitation.ts';
import { keepPort, keptPort } from '../../../app/library/local-server.ts';
import { restoreLibrary } from '../../../app/library/restore.ts';
import { say } from '../../../app/shell/say.ts';
import { createFit, saveDraft } from '../../../app/store/fits.ts';
import { addPhoto } from '../../../app/store/photos.ts';
import { saveRevision } from '../../../app/store/revisions.ts';
import { athletes, boats } from '../../../app/store/roster.ts';
import { callOnce } from '../../soak/library-laptop.ts';
import { contentOf } from '../exchange.ts';
import { inventedAthlete, inventedBoat, inventedFit, inventedPicture } from '../invented.ts';
import { temporaryFolder, temporaryStore } from '../temporary.ts';
import { type Club, startClub } from './club.ts';

let club: Club;
beforeAll(async () => {
  club = await startClub();
});

/** A head coach's laptop with an athlete, a boat with a picture of her, and a fit with a revision, shared. */
async function shared(name: string) {
  const store = temporaryStore();
  const login = await club.member(`Head of ${name}`, 'head-coach');
  const { athlete } = athletes.save(store, inventedAthlete(name));
  const boat = boats.save(store, inventedBoat());
  addPhoto(store, { boatId: boat.id, caption: 'bow', bytes: inventedPicture(), athleteId: athlete.id! });
  const fit = createFit(store, inventedFit({ athlete }));
  const saved = saveRevision(store, { fitId: fit.id, fit: fit.fit, name: 'one', reason: 'tight shin' });
  if (typeof saved === 'string') throw new Error(saved);
  await callOnce(store, login);
  return { store, login, athleteId: athlete.id!, fit };
}

async function readersOf(athleteId: string): Promise<string[]> {
  const rows = await readAudit(club.owner, athleteId);
  return rows.filter(({ what }) => what === 'read').map(({ person }) => person);
}

describe('the audit', () => {
  it.each([
    [
      'fields',
      (sql: Library, id: string) => sql`SELECT value FROM fields WHERE kind = 'athlete' AND id = ${id}`,
    ],
    ['words', (sql: Library) => sql`SELECT reason FROM revision_words`],
    ['copies in revisions', (sql: Library) => sql`SELECT value FROM revision_athletes`],
    ['pictures', (sql: Library) => sql`SELECT bytes FROM photographs`],
  ] as const)('is written by the database itself when %s are read past the program', async (what, ask) => {
    const { athleteId } = await shared(`Athlete read by ${what}`);
    const login = await club.member(`Reader of ${what}`, 'viewer', ['Everyone']);
    expect(await readersOf(athleteId)).not.toContain(`Reader of ${what}`);
    expect((await ask(club.as(login), athleteId)).length).toBeGreaterThan(0);
    expect(await readersOf(athleteId)).toContain(`Reader of ${what}`);
  });

  it('says who was a minor at the reading; an age that is not known counts as a minor’s', async () => {
    const { store, login, athleteId } = await shared('Unknown Age');
    const year = new Date().getUTCFullYear();
    const born = (bornOn: string) => athletes.save(store, inventedAthlete(`Born ${bornOn}`, { bornOn })).id;
    const [young, grown] = [born(`${year - 17}-01-01`), born(`${year - 19}-01-01`)];
    await callOnce(store, login);
    const reader = club.as(await club.member('Reads All Ages', 'viewer', ['Everyone']));
    await reader`SELECT value FROM fields WHERE kind = 'athlete' AND id = ANY (${[athleteId, young, grown]}::uuid[])`;
    await reader`INSERT INTO audit (what, athletes) VALUES ('export', ${[young, grown]}::uuid[])`;
    const minors = (await readAudit(club.owner, null, 'minors')).filter(
      ({ person }) => person === 'Reads All Ages',
    );
    expect(minors.find(({ what }) => what === 'export')).toMatchObject({ minors: [young] });
    const read = minors.flatMap(({ what, athletes: whom }) => (what === 'read' ? whom : []));
    expect(read.sort()).toEqual([athleteId, young].sort());
    // Nobody can say otherwise, and growing up changes no entry.
    await expect(
      reader`INSERT INTO audit (what, athletes, minors) VALUES ('export', ${[young]}::uuid[], '{}')`,
    ).resolves.toBeDefined();
    await club.owner`UPDATE kneelwright.fields SET value = '"1990-01-01"' WHERE kind = 'athlete' AND path = 'bornOn'`;
    const later = await readAudit(club.owner, young, 'minors');
    expect(later.filter(({ person }) => person === 'Reads All Ages')).toHaveLength(3);
  });

  it('names nobody who has read nothing: who may not see the athlete, and who asked for somebody else', async () => {
    const { athleteId } = await shared('Not Read');
    const apart = club.as(await club.member('Apart', 'coach', ['Seniors']));
    expect(await apart`SELECT value FROM fields WHERE id = ${athleteId}`).toHaveLength(0);
    const curious = club.as(await club.member('Curious', 'viewer', ['Everyone']));
    await curious`SELECT value FROM fields WHERE id = ${(await shared('Somebody Else')).athleteId}`;
    const readers = await readersOf(athleteId);
    expect(readers).not.toContain('Apart');
    expect(readers).not.toContain('Curious');
  });

  it('cannot be kept from being written, but by taking the reading back, which the server’s own log still says', async () => {
    const { athleteId } = await shared('Read Only');
    const sql = club.as(await club.member('Sly', 'viewer', ['Everyone']));
    const readOnly = sql.begin('READ ONLY', (tx) => tx`SELECT value FROM fields WHERE id = ${athleteId}`);
    await expect(readOnly).rejects.toThrow(/read-only transaction/);
    await expect(sql`INSERT INTO audit (what, athletes) VALUES ('read', '{}')`).rejects.toThrow(/row-level/);
    await expect(sql`DELETE FROM audit`).rejects.toThrow(/permission denied/);
    await expect(sql`SELECT noted('{}'::uuid[]) FROM audit FOR UPDATE`).rejects.toThrow(/permission denied/);
  });
});

describe('a person whose rights are taken back', () => {
  it('reads nothing from then on, over a connection that is open neither, and cannot connect again', async () => {
    const { athleteId } = await shared('Guarded Invented');
    const login = await club.member('Leaving Coach', 'coach', ['Everyone']);
    const open = club.as(login);
    expect((await open`SELECT FROM fields WHERE id = ${athleteId}`).length).toBeGreaterThan(0);
    expect(await revokePerson(club.owner, 'Leaving Coach')).toBe(1);
    for (const table of ['fields', 'records', 'revisions', 'kneelwright.fields'])
      await expect(open`SELECT FROM ${open(table)}`).rejects.toThrow(/does not exist|permission denied/);
    await expect(callOnce(temporaryStore(), login)).rejects.toThrow(/password authentication failed/);
    expect((await statusOf(club.owner)).laptops.map(({ person }) => person)).not.toContain('Leaving Coach');
    expect(await revokePerson(club.owner, 'Nobody At All')).toBe(0);
  });
});

describe('groups', () => {
  it('are seen and changed by the head coach alone', async () => {
    const { login, athleteId } = await shared('Grouped Invented');
    const head = club.as(login);
    const coach = await club.member('Group Coach', 'coach', ['Sprint']);
    await head`SELECT make_group('Masters')`;
    const groups = await head<{ id: string; name: string; people: { name: string }[]; athletes: string[] }[]>`
      SELECT * FROM list_groups()`;
    expect(groups.map(({ name }) => name)).toEqual(expect.arrayContaining(['Everyone', 'Masters', 'Sprint']));
    const sprint = groups.find(({ name }) => name === 'Sprint')!;
    expect(sprint).toMatchObject({ people: [{ name: 'Group Coach' }], athletes: [] });
    const laptop = temporaryStore();
    await callOnce(laptop, coach);
    expect(athletes.get(laptop, athleteId)).toBeNull();
    await head`SELECT set_in_group(${sprint.id}::uuid, ${athleteId}::uuid, true)`;
    await callOnce(laptop, coach);
    expect(athletes.get(laptop, athleteId)).not.toBeNull();
    await head`SELECT set_in_group(${sprint.id}::uuid, ${athleteId}::uuid, false)`;
    expect(await club.as(coach)`SELECT FROM fields WHERE id = ${athleteId}`).toHaveLength(0);
    const asCoach = club.as(coach);
    await expect(asCoach`SELECT * FROM list_groups()`).rejects.toThrow(/only the head coach/);
    await expect(asCoach`SELECT make_group('Mine')`).rejects.toThrow(/only the head coach/);
    const take = asCoach`SELECT set_in_group(${sprint.id}::uuid, ${athleteId}::uuid, true)`;
    await expect(take).rejects.toThrow(/only the head coach/);
  });
});

describe('a server to try', () => {
  it('starts again at the port by which laptops know it', () => {
    const folder = temporaryFolder();
    expect(keptPort(folder)).toBeUndefined();
    keepPort(folder, 54321);
    expect(keptPort(folder)).toBe(54321);
  });
});

describe('a backup of a library', () => {
  it('restores everything into an empty database; laptops then bring what came after it', async () => {
    const { store, login, athleteId, fit } = await shared('Kept Invented');
    await putInGroup(club.owner, 'Kept', [athleteId]);
    const file = join(temporaryFolder(), 'library.backup');
    const rows = await backUpLibrary(club.owner, file);
    // Shared after the backup: the restored library does not know it.
    saveDraft(store, { id: fit.id, fit: { ...fit.fit, notes: 'after the backup' } });
    await callOnce(store, login);

    await club.owner`CREATE DATABASE restored`;
    const restored = { ...club.server.address, database: 'restored' };
    const owner = club.as(restored);
    expect(await restoreLibrary(owner, file)).toBe(rows);
    const counts = (sql: Library) => sql`
      SELECT (SELECT count(*)::int FROM kneelwright.records) AS records, (SELECT count(*)::int FROM kneelwright.revisions) AS revisions,
        (SELECT count(*)::int FROM kneelwright.photographs) AS photographs, (SELECT count(*)::int FROM kneelwright.group_athletes) AS grouped`;
    expect([...(await counts(owner))]).toEqual([...(await counts(club.owner))]);
    // The same login opens it: the server is the same one. The laptop notices that it is another library.
    expect(await callOnce(store, { ...login, database: 'restored' })).toMatchObject({
      sent: expect.any(Number),
    });
    const { address } = await invite(owner, restored, { name: 'New Laptop', role: 'head-coach' });
    const laptop = temporaryStore();
    await callOnce(laptop, await accept(address));
    expect(contentOf(laptop).fields).toMatchObject(contentOf(store).fields);
    expect(JSON.stringify(contentOf(laptop))).toContain('after the backup');
    await expect(restoreLibrary(owner, file)).rejects.toThrow(say('library-cli.not-empty'));
  });

  it('that cannot be written to its end leaves nothing behind', async () => {
    const folder = temporaryFolder();
    const lost = { begin: () => Promise.reject(new Error('the connection is lost')) } as unknown as Library;
    await expect(backUpLibrary(lost, join(folder, 'library.backup'))).rejects.toThrow('lost');
    expect(readdirSync(folder)).toEqual([]);
    const said: string[] = [];
    const to = join(folder, 'none', 'library.backup');
    expect(await runCommand('backup', { at: club.server.url, to }, (line) => said.push(line))).toBe(1);
    expect(said).toEqual([say('problem.file-failed', { detail: `${to}: ENOENT` })]);
  });

  it('that is cut off or damaged is refused, and nothing is left of it', async () => {
    const file = join(temporaryFolder(), 'library.backup');
    await backUpLibrary(club.owner, file);
    await club.owner`CREATE DATABASE cut`;
    const owner = club.as({ ...club.server.address, database: 'cut' });
    const whole = readFileSync(file, 'utf8');
    for (const text of [whole.slice(0, whole.length / 2), whole.split('\n').slice(3).join('\n')]) {
      writeFileSync(file, text);
      await expect(restoreLibrary(owner, file)).rejects.toThrow(say('bundle.damaged'));
    }
    expect(await owner`SELECT FROM pg_namespace WHERE nspname = 'kneelwright'`).toHaveLength(0);
  });
});
