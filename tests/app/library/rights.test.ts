import { beforeAll, describe, expect, it } from 'vitest';
import type { Library } from '../../../app/library/address.ts';
import { putInGroup } from '../../../app/library/club.ts';
import { isSetting } from '../../../app/library/push-revisions.ts';
import { createFit, openFit } from '../../../app/store/fits.ts';
import { addPhoto } from '../../../app/store/photos.ts';
import { openRevision, saveRevision } from '../../../app/store/revisions.ts';
import { athletes, boats } from '../../../app/store/roster.ts';
import type { Store } from '../../../app/store/store.ts';
import { saveTrial } from '../../../app/store/trials.ts';
import { trialSchema } from '../../../core/trial/observation.ts';
import { callOnce } from '../../soak/library-laptop.ts';
import { inventedAthlete, inventedBoat, inventedFit, inventedPicture } from '../invented.ts';
import { temporaryStore } from '../temporary.ts';
import { type Club, startClub } from './club.ts';

/** Stands in the body, the words and the picture of an athlete whom not everybody may see. */
const MARKS = { name: 'Sisiutl Marked', mass: '61.37', words: 'tingling shin' };

let club: Club;
let head: Store;
let logins: Record<'head' | 'own' | 'other' | 'builder' | 'viewer', Awaited<ReturnType<Club['member']>>>;
let ids: { athlete: string; fit: string; revision: string };
beforeAll(async () => {
  club = await startClub();
  head = temporaryStore();
  logins = {
    head: await club.member('Head', 'head-coach'),
    own: await club.member('Own', 'coach', ['Juniors']),
    other: await club.member('Other', 'coach', ['Seniors']),
    builder: await club.member('Builder', 'boatbuilder'),
    viewer: await club.member('Viewer', 'viewer', ['Juniors']),
  };
  const { id } = athletes.save(head, inventedAthlete(MARKS.name, { massKg: 61.37 }));
  const boat = boats.save(head, inventedBoat());
  addPhoto(head, { boatId: boat.id, caption: 'of her', bytes: inventedPicture(), athleteId: id });
  const fit = createFit(head, {
    ...inventedFit({ name: 'Settings', athlete: inventedAthlete(MARKS.name, { id, massKg: 61.37 }) }),
    notes: MARKS.words,
  });
  const saved = saveRevision(head, { fitId: fit.id, fit: fit.fit, name: 'one', reason: MARKS.words });
  if (typeof saved === 'string') throw new Error(saved);
  saveTrial(head, {
    revisionId: saved.id,
    trial: trialSchema.parse({ seat: 0, heldOn: '2026-03-04', observations: [], notes: MARKS.words }),
  });
  await callOnce(head, logins.head);
  await putInGroup(club.owner, 'Juniors', [id]);
  ids = { athlete: id, fit: fit.id, revision: saved.id };
});

/** Everything that a login can read, by whatever question, as one text. */
async function readable(sql: Library): Promise<string> {
  const tables = await sql<{ name: string }[]>`
    SELECT relname AS name FROM pg_class JOIN pg_namespace ON pg_namespace.oid = relnamespace
    WHERE nspname = 'kneelwright' AND relkind IN ('r', 'v')`;
  const texts: string[] = [];
  for (const { name } of tables) {
    try {
      const rows = await sql.unsafe(`SELECT t::text AS text FROM kneelwright.${name} AS t`);
      texts.push(...rows.map(({ text }) => text));
    } catch (error) {
      expect((error as { code: string }).code, name).toBe('42501');
    }
  }
  return texts.join('\n');
}

describe('whoever asks the database itself, past the program', () => {
  it.each(['head', 'own', 'viewer'] as const)('%s reads the athlete, having her in a group', async (who) => {
    const text = await readable(club.as(logins[who]));
    for (const mark of Object.values(MARKS)) expect(text).toContain(mark);
  });

  it.each(['other', 'builder'] as const)('%s reads no name of a body, no figure, no word', async (who) => {
    const sql = club.as(logins[who]);
    const text = await readable(sql);
    for (const mark of Object.values(MARKS)) expect(text).not.toContain(mark);
    expect(text).not.toContain(`fit,${who === 'other' ? ids.fit : ids.athlete}`);
    expect(await sql`SELECT * FROM photographs`).toHaveLength(0);
  });

  it('a boatbuilder reads the settings', async () => {
    expect(await readable(club.as(logins.builder))).toContain('seats/0/kneePad/aftM');
  });

  it.each(['viewer', 'builder'] as const)('%s changes nothing of a fit', async (who) => {
    const sql = club.as(logins[who]);
    const changed = await sql`UPDATE fields SET value = '9' WHERE kind = 'fit'`;
    expect(changed.count).toBe(0);
    const add = sql`INSERT INTO fields (kind, id, path, value) VALUES ('fit', ${ids.fit}, 'heelDeg2', '1')`;
    await expect(add).rejects.toThrow(/row-level security/);
    for (const insert of [
      sql`INSERT INTO records (kind, id, created_at, changed_at, base_seen, base_writes)
        VALUES ('fit', gen_random_uuid(), '', '', '{}', '[]')`,
      sql`INSERT INTO revisions (id, fit_id, number, saved_at, settings) VALUES (gen_random_uuid(), ${ids.fit}, 2, '', '{}')`,
      sql`INSERT INTO revision_words (revision_id, name, reason, answers, private) VALUES (${ids.revision}, '', '', '[]', '{}')`,
      sql`INSERT INTO revision_athletes (revision_id, path, value) VALUES (${ids.revision}, 'seats/1/athlete', 'null')`,
    ])
      await expect(insert).rejects.toThrow(/row-level security/);
    await expect(sql`SELECT erase('s', 'd')`).rejects.toThrow(/may not erase/);
  });

  it('a viewer adds no boat and no picture', async () => {
    const sql = club.as(logins.viewer);
    const boat = sql`INSERT INTO records (kind, id, created_at, changed_at, base_seen, base_writes)
      VALUES ('boat', gen_random_uuid(), '', '', '{}', '[]')`;
    await expect(boat).rejects.toThrow(/row-level security/);
    const picture = sql`INSERT INTO photographs (hash, bytes) VALUES (encode(sha256('a'), 'hex'), 'a')`;
    await expect(picture).rejects.toThrow(/row-level security/);
  });

  it.each(['head', 'own', 'other', 'builder', 'viewer'] as const)('%s changes no revision', async (who) => {
    const sql = club.as(logins[who]);
    await expect(sql`UPDATE revisions SET number = 7`).rejects.toThrow(/permission denied/);
    await expect(sql`DELETE FROM revisions`).rejects.toThrow(/permission denied/);
    await expect(sql`UPDATE revision_athletes SET value = 'null'`).rejects.toThrow(/permission denied/);
    await expect(sql`DELETE FROM fields`).rejects.toThrow(/permission denied/);
    await expect(sql`UPDATE people SET role = 'head-coach'`).rejects.toThrow(/permission denied/);
    await expect(sql`SELECT purge(${ids.athlete})`).rejects.toThrow(/permission denied/);
    await expect(sql`UPDATE audit SET athletes = '{}'`).rejects.toThrow(/permission denied/);
  });

  it('another coach cannot write into a record that he may not see', async () => {
    const sql = club.as(logins.other);
    const changed = await sql`UPDATE fields SET value = '9' WHERE kind = 'athlete' AND id = ${ids.athlete}`;
    expect(changed.count).toBe(0);
    const take = sql`INSERT INTO records (kind, id, created_at, changed_at, base_seen, base_writes)
      VALUES ('athlete', ${ids.athlete}, '', '', '{}', '[]') ON CONFLICT (kind, id) DO UPDATE SET made_by = NULL`;
    await expect(take).rejects.toThrow(/row-level security/);
    const [audit] = await sql`SELECT count(*)::int AS rows FROM audit`;
    expect(audit).toEqual({ rows: 0 });
  });
});

describe('the laptop of a boatbuilder', () => {
  it('holds the settings with an empty seat, and never sends the empty seat back', async () => {
    const laptop = temporaryStore();
    await callOnce(laptop, logins.builder);
    expect(openFit(laptop, ids.fit)).toMatchObject({
      fit: { name: 'Settings', notes: '', seats: [{ athlete: null, kneePad: { aftM: 0.1 } }] },
    });
    expect(openRevision(laptop, ids.revision)).toMatchObject({ fit: { seats: [{ athlete: null }] } });
    boats.save(laptop, inventedBoat('Built here'));
    expect(await callOnce(laptop, logins.builder)).toMatchObject({ sent: 1 });
    await callOnce(head, logins.head);
    expect(openFit(head, ids.fit)).toMatchObject({ fit: { seats: [{ athlete: { name: MARKS.name } }] } });
  });
});

describe('what the audit says', () => {
  it('is who fetched whose data', async () => {
    const laptop = temporaryStore();
    await callOnce(laptop, logins.viewer);
    const rows = await club.owner`
      SELECT what FROM kneelwright.audit WHERE login = ${logins.viewer.login} AND ${ids.athlete}::uuid = ANY (athletes)`;
    expect([...rows]).toEqual([{ what: 'read' }]);
  });
});

describe('what counts as a setting', () => {
  it('is the same here and in the database', async () => {
    const paths = await club.owner<{ path: string; setting: boolean }[]>`
      SELECT path, kneelwright.is_setting('fit', path) AS setting FROM (
        SELECT path FROM kneelwright.fields WHERE kind = 'fit'
        UNION SELECT unnest(ARRAY['seats/0/bands/thigh', 'seats/1/pins/trunkPitchDeg', 'seats/0/stroke/ratePerMin', 'notes'])
      ) AS some_paths`;
    expect(paths.length).toBeGreaterThan(10);
    for (const { path, setting } of paths) expect([path, isSetting(path)]).toEqual([path, setting]);
  });
});
