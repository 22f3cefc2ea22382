import { beforeAll, describe, expect, it } from 'vitest';
import { putInGroup, statusOf } from '../../../app/library/club.ts';
import { listConflicts } from '../../../app/store/conflicts.ts';
import { eraseEverywhere } from '../../../app/store/erase-everywhere.ts';
import { createFit, openFit, saveDraft } from '../../../app/store/fits.ts';
import { addPhoto, listPhotos, openPhoto, removePhoto } from '../../../app/store/photos.ts';
import { openRevision, saveRevision } from '../../../app/store/revisions.ts';
import { athletes, boats } from '../../../app/store/roster.ts';
import { saveTrial } from '../../../app/store/trials.ts';
import { trialSchema } from '../../../core/trial/observation.ts';
import { callOnce } from '../../soak/library-laptop.ts';
import { contentOf } from '../exchange.ts';
import { inventedAthlete, inventedBoat, inventedFit, inventedPicture } from '../invented.ts';
import { temporaryStore } from '../temporary.ts';
import { type Club, startClub } from './club.ts';

let club: Club;
beforeAll(async () => {
  club = await startClub();
});

describe('two coaches of one club', () => {
  it('have the same after each has called, and a field that both changed waits for a person', async () => {
    const [a, b] = [temporaryStore(), temporaryStore()];
    const [ann, bea] = [
      await club.member('Ann', 'head-coach'),
      await club.member('Bea', 'coach', ['Everyone']),
    ];
    const { id } = athletes.save(a, inventedAthlete('Vera Invented'));
    const boat = boats.save(a, inventedBoat());
    const photo = addPhoto(a, { boatId: boat.id, caption: 'from the bow', bytes: inventedPicture() });
    if (typeof photo === 'string') throw new Error(photo);
    const fit = createFit(a, inventedFit({ athlete: inventedAthlete('Vera Invented', { id }) }));
    const saved = saveRevision(a, { fitId: fit.id, fit: fit.fit, name: 'first', reason: 'knee hurts' });
    if (typeof saved === 'string') throw new Error(saved);
    saveTrial(a, {
      revisionId: saved.id,
      trial: trialSchema.parse({ seat: 0, heldOn: '2026-03-04', observations: [], notes: 'steady' }),
    });
    expect(await callOnce(a, ann)).toMatchObject({
      person: 'Ann',
      role: 'head-coach',
      club: 'Invented Canoe Club',
    });
    await callOnce(b, bea);
    expect(contentOf(b)).toEqual(contentOf(a));
    expect(openPhoto(b, photo.id)?.bytes.equals(inventedPicture())).toBe(true);
    expect(openRevision(b, saved.id)).toEqual(openRevision(a, saved.id));
    // Nothing is left to be sent or fetched.
    expect(await callOnce(a, ann)).toMatchObject({ fetched: 0, sent: 0 });
    expect(await callOnce(b, bea)).toMatchObject({ fetched: 0, sent: 0 });

    athletes.save(a, { ...athletes.get(a, id)!.athlete, id, massKg: 62 });
    athletes.save(b, { ...athletes.get(b, id)!.athlete, id, massKg: 64, statureM: 1.7 });
    removePhoto(b, photo.id);
    for (let round = 0; round < 2; round++) {
      await callOnce(a, ann);
      await callOnce(b, bea);
    }
    await callOnce(a, ann);
    expect(contentOf(b)).toEqual(contentOf(a));
    expect(athletes.get(a, id)?.athlete.statureM).toBe(1.7);
    expect(listPhotos(a, boat.id)).toEqual([]);
    const values = listConflicts(a)
      .find(({ path }) => path === 'massKg')
      ?.values.map(({ value }) => value);
    expect(values?.sort()).toEqual(['62', '64']);
  });

  it('go on where a cut call ended, and a fit that is open waits until it is closed', async () => {
    const [a, b] = [temporaryStore(), temporaryStore()];
    const [ann, bea] = [
      await club.member('Ann', 'head-coach'),
      await club.member('Bea', 'coach', ['Everyone']),
    ];
    const fit = createFit(a, inventedFit({ name: 'Open elsewhere' }));
    await callOnce(a, ann);
    await callOnce(b, bea);
    saveDraft(a, { id: fit.id, fit: { ...fit.fit, notes: 'new' } });
    await callOnce(a, ann);
    await callOnce(b, bea, { isHeld: (id) => id === fit.id });
    expect(openFit(b, fit.id)).toMatchObject({ fit: { notes: '' } });
    await callOnce(b, bea);
    expect(openFit(b, fit.id)).toMatchObject({ fit: { notes: 'new' } });
    const broken = callOnce(b, { ...bea, port: 1 });
    await expect(broken).rejects.toThrow(/ECONNREFUSED/);
  });

  it('lose a person who is erased: from the server at once, from each laptop when it calls', async () => {
    const [a, b] = [temporaryStore(), temporaryStore()];
    const [ann, bea] = [
      await club.member('Ann', 'head-coach'),
      await club.member('Dora', 'coach', ['Everyone']),
    ];
    const { id } = athletes.save(a, inventedAthlete('Quirina Goesaway'));
    const fit = createFit(a, inventedFit({ athlete: inventedAthlete('Quirina Goesaway', { id }) }));
    saveRevision(a, { fitId: fit.id, fit: fit.fit, name: 'x', reason: 'Quirina asked' });
    await callOnce(a, ann);
    await callOnce(b, bea);
    expect(athletes.get(b, id)).not.toBeNull();
    eraseEverywhere(a, { id, name: 'Quirina Goesaway' });
    await callOnce(a, ann);
    const { notCalledSince } = await statusOf(club.owner);
    expect(notCalledSince.map(({ person }) => person)).toContain('Dora');
    expect(await tracesOf(club, [id, 'Quirina', 'Goesaway'])).toEqual([]);
    // The other laptop has changed that person meanwhile: it stays erased.
    athletes.save(b, { ...athletes.get(b, id)!.athlete, id, massKg: 66 });
    await callOnce(b, bea);
    expect(athletes.get(b, id)).toBeNull();
    expect(openFit(b, fit.id)).toBe('none');
    expect(await tracesOf(club, [id, 'Quirina', 'Goesaway'])).toEqual([]);
    expect((await statusOf(club.owner)).notCalledSince.map(({ person }) => person)).not.toContain('Dora');
  });
});

describe('a coach of one group', () => {
  it('has the group’s athletes only, and one who comes into it with everything from before', async () => {
    const [head, laptop] = [temporaryStore(), temporaryStore()];
    const [ann, cal] = [
      await club.member('Ann', 'head-coach'),
      await club.member('Cal', 'coach', ['Juniors']),
    ];
    const { id } = athletes.save(head, inventedAthlete('Junior Invented'));
    const fit = createFit(head, inventedFit({ athlete: inventedAthlete('Junior Invented', { id }) }));
    const saved = saveRevision(head, { fitId: fit.id, fit: fit.fit, name: 'first', reason: '' });
    if (typeof saved === 'string') throw new Error(saved);
    await callOnce(head, ann);
    await callOnce(laptop, cal);
    expect([athletes.get(laptop, id), openFit(laptop, fit.id)]).toEqual([null, 'none']);
    await putInGroup(club.owner, 'Juniors', [id]);
    await callOnce(laptop, cal);
    expect(athletes.get(laptop, id)?.athlete.name).toBe('Junior Invented');
    expect(openRevision(laptop, saved.id)).toEqual(openRevision(head, saved.id));
  });
});

/** Rows of the library in which one of these words stands, as text. */
async function tracesOf({ owner }: Club, words: readonly string[]): Promise<string[]> {
  const tables = await owner<{ name: string }[]>`
    SELECT tablename AS name FROM pg_tables WHERE schemaname = 'kneelwright'`;
  const found: string[] = [];
  for (const { name } of tables) {
    for (const word of words) {
      const rows = await owner.unsafe(
        `SELECT t::text AS text FROM kneelwright.${name} AS t WHERE strpos(lower(t::text), lower($1)) > 0`,
        [word],
      );
      found.push(...rows.map(({ text }) => `${name}: ${text}`));
    }
  }
  return found;
}
