import { beforeAll, describe, expect, it } from 'vitest';
import { putInGroup } from '../../../app/library/club.ts';
import { takeBackup } from '../../../app/store/backups.ts';
import { listConflicts } from '../../../app/store/conflicts.ts';
import { createFit, openFit, saveDraft } from '../../../app/store/fits.ts';
import { saveRevision } from '../../../app/store/revisions.ts';
import { athletes } from '../../../app/store/roster.ts';
import type { Store } from '../../../app/store/store.ts';
import { callOnce } from '../../soak/library-laptop.ts';
import { inventedAthlete, inventedBoat, inventedFit } from '../invented.ts';
import { filesWith } from '../store/marked-person.ts';
import { temporaryStore } from '../temporary.ts';
import { type Club, startClub } from './club.ts';

let club: Club;
beforeAll(async () => {
  club = await startClub();
});

/** A head coach's laptop and that of a coach, who has fetched one athlete of a pair, and that athlete's own fit. */
async function pairOfTwo(group: string, crewName: string) {
  const [head, laptop] = [temporaryStore(), temporaryStore()];
  const ann = await club.member(`Head of ${group}`, 'head-coach');
  const cal = await club.member(`Coach of ${group}`, 'coach', [group]);
  const [mine, other] = ['Zuleika Leaves', 'Stays Invented'].map(
    (name) => athletes.save(head, inventedAthlete(name)).athlete,
  );
  const single = inventedFit({ athlete: mine!, name: 'Alone' });
  const seat = single.seats[0]!;
  const crew = createFit(head, {
    ...single,
    name: crewName,
    boat: inventedBoat('Pair', { seats: [{ stationM: 0.5 }, { stationM: -0.5 }] }),
    seats: [
      { ...seat, athlete: mine! },
      { ...seat, athlete: other! },
    ],
  });
  saveRevision(head, { fitId: crew.id, fit: crew.fit, name: 'one', reason: '' });
  const alone = createFit(head, single);
  await callOnce(head, ann);
  await putInGroup(club.owner, group, [mine!.id!, other!.id!]);
  await callOnce(laptop, cal);
  return { head, laptop, ann, cal, mine: mine!.id!, other: other!.id!, crew: crew.id, alone: alone.id };
}

const takeOut = (group: string, athlete: string) => club.owner`DELETE FROM kneelwright.group_athletes
  WHERE athlete_id = ${athlete} AND group_id = (SELECT id FROM kneelwright.groups WHERE name = ${group})`;
const seatsOf = (store: Store, id: string) => {
  const opened = openFit(store, id);
  return typeof opened === 'string' ? opened : opened.fit.seats.map(({ athlete }) => athlete?.name ?? null);
};

describe('an athlete who leaves a coach’s group', () => {
  it('leaves the laptop at the next call, its backups too; the crew stays with an empty seat; both come back with the right', async () => {
    const of = await pairOfTwo('Leavers', 'Crew of leavers');
    const { head, laptop, cal, mine, crew } = of;
    await takeBackup(laptop, 'asked');
    expect(seatsOf(laptop, crew)).toEqual(['Zuleika Leaves', 'Stays Invented']);
    await takeOut('Leavers', mine);
    expect(await callOnce(laptop, cal)).toMatchObject({ kept: [] });
    expect(athletes.get(laptop, mine)).toBeNull();
    expect(openFit(laptop, of.alone)).toBe('none');
    expect(seatsOf(laptop, crew)).toEqual([null, 'Stays Invented']);
    expect(filesWith(laptop.folder, 'Zuleika')).toEqual([]);
    // Nothing of it travelled, and a second call brings nothing back.
    await callOnce(laptop, cal);
    await callOnce(head, of.ann);
    expect(seatsOf(head, crew)).toEqual(['Zuleika Leaves', 'Stays Invented']);
    expect(athletes.get(head, mine)).not.toBeNull();
    await putInGroup(club.owner, 'Leavers', [mine]);
    await callOnce(laptop, cal);
    expect(athletes.get(laptop, mine)?.athlete.name).toBe('Zuleika Leaves');
    expect(seatsOf(laptop, crew)).toEqual(['Zuleika Leaves', 'Stays Invented']);
    expect(openFit(laptop, crew)).toMatchObject({ revisions: [{ name: 'one' }] });
    expect(seatsOf(laptop, of.alone)).toEqual(['Zuleika Leaves']);
    expect(listConflicts(laptop)).toEqual([]);
  });

  it('stays as long as changes made there could not be sent, which is told; everything else is still sent', async () => {
    const of = await pairOfTwo('Keepers', 'Crew of keepers');
    const { laptop, cal, mine, other, head } = of;
    athletes.save(laptop, { ...athletes.get(laptop, mine)!.athlete, massKg: 77 });
    athletes.save(laptop, { ...athletes.get(laptop, other)!.athlete, massKg: 66 });
    await takeOut('Keepers', mine);
    expect(await callOnce(laptop, cal)).toMatchObject({ kept: [mine], sent: 1 });
    expect(athletes.get(laptop, mine)?.athlete.massKg).toBe(77);
    await callOnce(head, of.ann);
    expect(athletes.get(head, other)?.athlete.massKg).toBe(66);
    expect(athletes.get(head, mine)?.athlete.massKg).not.toBe(77);
  });

  it('stays as long as the fit is open', async () => {
    const of = await pairOfTwo('Openers', 'Crew of openers');
    await takeOut('Openers', of.mine);
    await callOnce(of.laptop, of.cal, { isHeld: (id) => id === of.crew });
    expect(athletes.get(of.laptop, of.mine)).not.toBeNull();
    await callOnce(of.laptop, of.cal);
    expect(athletes.get(of.laptop, of.mine)).toBeNull();
  });
});

describe('a crew of which a coach may see one athlete', () => {
  it('comes with the other seat empty; an edit sends no empty seat back; the athlete comes with the right to see', async () => {
    const [head, laptop] = [temporaryStore(), temporaryStore()];
    const [ann, cal] = [
      await club.member('Ann', 'head-coach'),
      await club.member('Cal', 'coach', ['Juniors']),
    ];
    const [mine, other] = ['Mine Invented', 'Other Invented'].map(
      (name) => athletes.save(head, inventedAthlete(name)).athlete,
    );
    const single = inventedFit();
    const seat = single.seats[0]!;
    const crew = {
      ...single,
      boat: inventedBoat('Pair', { seats: [{ stationM: 0.5 }, { stationM: -0.5 }] }),
      seats: [
        { ...seat, athlete: mine! },
        { ...seat, athlete: other! },
      ],
    };
    const { id } = createFit(head, crew);
    await callOnce(head, ann);
    await putInGroup(club.owner, 'Juniors', [mine!.id!]);
    await callOnce(laptop, cal);
    const seen = openFit(laptop, id);
    if (typeof seen === 'string') throw new Error(seen);
    expect(seen.fit.seats.map(({ athlete }) => athlete?.name ?? null)).toEqual(['Mine Invented', null]);
    saveDraft(laptop, { id, fit: { ...seen.fit, notes: 'from Cal' } });
    expect(await callOnce(laptop, cal)).toMatchObject({ sent: 1 });
    await callOnce(head, ann);
    expect(openFit(head, id)).toMatchObject({
      fit: {
        notes: 'from Cal',
        seats: [{ athlete: { name: 'Mine Invented' } }, { athlete: { name: 'Other Invented' } }],
      },
    });
    await putInGroup(club.owner, 'Juniors', [other!.id!]);
    await callOnce(laptop, cal);
    expect(openFit(laptop, id)).toMatchObject({
      fit: { seats: [{}, { athlete: { name: 'Other Invented' } }] },
    });
    expect(listConflicts(laptop)).toEqual([]);
  });
});
