import { beforeAll, describe, expect, it } from 'vitest';
import { putInGroup } from '../../../app/library/club.ts';
import { listConflicts } from '../../../app/store/conflicts.ts';
import { createFit, openFit, saveDraft } from '../../../app/store/fits.ts';
import { athletes } from '../../../app/store/roster.ts';
import { callOnce } from '../../soak/library-laptop.ts';
import { inventedAthlete, inventedBoat, inventedFit } from '../invented.ts';
import { temporaryStore } from '../temporary.ts';
import { type Club, startClub } from './club.ts';

let club: Club;
beforeAll(async () => {
  club = await startClub();
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
