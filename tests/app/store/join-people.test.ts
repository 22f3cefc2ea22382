import { describe, expect, it } from 'vitest';
import { createFit } from '../../../app/store/fits.ts';
import { entriesOfPerson, joinEntries, takeApart } from '../../../app/store/join-people.ts';
import { listMeasurings, saveMeasuring } from '../../../app/store/measurings.ts';
import { saveRevision } from '../../../app/store/revisions.ts';
import { athletes } from '../../../app/store/roster.ts';
import type { Store } from '../../../app/store/store.ts';
import { fitsOfAthlete, timelineOf } from '../../../app/store/timeline.ts';
import { contentOf, meet } from '../exchange.ts';
import { inventedAthlete, inventedFit } from '../invented.ts';
import { temporaryStore } from '../temporary.ts';

const page = { archived: false, search: '', limit: 200, offset: 0 };
const names = (store: Store) => athletes.list(store, page).map(({ athlete }) => athlete.name);

/** The same girl entered twice, each entry with a fit, a revision and an old measuring. */
function twice(store: Store): [string, string] {
  return ['Zofie', 'Žofie L.'].map((name, i) => {
    const { id, athlete } = athletes.save(store, inventedAthlete(name));
    const fit = createFit(store, inventedFit({ name: `of ${name}`, athlete }));
    saveRevision(store, { fitId: fit.id, fit: inventedFit({ athlete }), name: `by ${name}`, reason: '' });
    saveMeasuring(store, id, {
      takenOn: `202${i + 3}-04-01`,
      statureM: 1.5 + i / 10,
      massKg: null,
      tape: {},
    });
    return id;
  }) as [string, string];
}

describe('two entries of one person', () => {
  it('are shown as one when joined, and are what they were when taken apart', () => {
    const store = temporaryStore();
    const [one, two] = twice(store);
    const before = contentOf(store);
    expect(joinEntries(store, { id: two, into: one })).toBe('joined');
    expect(names(store)).toEqual(['Zofie']);
    expect(fitsOfAthlete(store, one)).toHaveLength(2);
    expect(timelineOf(store, one)).toHaveLength(2);
    expect(listMeasurings(store, one).map(({ takenOn }) => takenOn)).toEqual([
      '2023-04-01',
      '2024-04-01',
      '2026-03-02',
    ]);
    expect(entriesOfPerson(store, one)).toEqual({
      joinedInto: null,
      joined: [{ id: two, name: 'Žofie L.' }],
    });
    expect(entriesOfPerson(store, two).joinedInto).toEqual({ id: one, name: 'Zofie' });
    expect(takeApart(store, two)).toBe(true);
    expect(contentOf(store)).toEqual(before);
    expect(names(store)).toHaveLength(2);
  });

  it('are joined once, not in a circle, and not with somebody who is not there', () => {
    const store = temporaryStore();
    const [one, two] = twice(store);
    joinEntries(store, { id: two, into: one });
    expect(joinEntries(store, { id: one, into: two })).toBe('circle');
    expect(joinEntries(store, { id: one, into: one })).toBe('circle');
    expect(joinEntries(store, { id: one, into: crypto.randomUUID() })).toBe('none');
  });

  it('are joined on the other computer too, one of them being listed even when each joined them its own way', () => {
    const [a, b] = [temporaryStore(), temporaryStore()];
    const [one, two] = twice(a);
    meet(a, b);
    joinEntries(a, { id: two, into: one });
    joinEntries(b, { id: one, into: two });
    meet(a, b);
    for (const store of [a, b]) {
      expect(names(store)).toHaveLength(1);
      const [listed] = athletes.list(store, page);
      expect(listed!.id).toBe([one, two].sort()[0]);
      expect(fitsOfAthlete(store, listed!.id)).toHaveLength(2);
    }
    takeApart(a, one);
    takeApart(a, two);
    meet(a, b);
    expect(names(b)).toHaveLength(2);
  });
});
