import { describe, expect, it } from 'vitest';
import { takeBackup } from '../../../app/store/backups.ts';
import { eraseEverywhere } from '../../../app/store/erase-everywhere.ts';
import { listMeasurings, removeMeasuring, saveMeasuring } from '../../../app/store/measurings.ts';
import { mergeIn } from '../../../app/store/merge.ts';
import { listQuarantine } from '../../../app/store/quarantine.ts';
import { readIncoming } from '../../../app/store/read-incoming.ts';
import { restoreBackup } from '../../../app/store/restore.ts';
import { athletes } from '../../../app/store/roster.ts';
import type { Store } from '../../../app/store/store.ts';
import { inventedAthlete } from '../invented.ts';
import { steppingClock, temporaryStore } from '../temporary.ts';

const LATER = Date.UTC(2026, 5, 1);
const days = (store: Store, id: string) => listMeasurings(store, id).map(({ takenOn }) => takenOn);
const statures = (store: Store, id: string) => listMeasurings(store, id).map(({ statureM }) => statureM);
const grown = (id: string, measuredOn: string, statureM: number) =>
  inventedAthlete('Grows', { id, measuredOn, statureM });

describe('an athlete’s measurings', () => {
  it('gain an entry with each new day of measuring, and keep the earlier ones', () => {
    const store = temporaryStore();
    const { id } = athletes.save(
      store,
      inventedAthlete('Grows', { measuredOn: '2026-01-10', statureM: 1.6 }),
    );
    athletes.save(store, grown(id, '2026-05-01', 1.63));
    athletes.save(store, grown(id, '2026-05-01', 1.64));
    expect(days(store, id)).toEqual(['2026-01-10', '2026-05-01']);
    expect(statures(store, id)).toEqual([1.6, 1.64]);
    expect(listMeasurings(store, id)[1]).toEqual({
      takenOn: '2026-05-01',
      statureM: 1.64,
      massKg: 61,
      tape: {},
    });
  });

  it('are of the day of keeping where no day of measuring is said', () => {
    const store = temporaryStore();
    const { id } = athletes.save(store, inventedAthlete());
    expect(days(store, id)).toEqual(['2026-03-02']);
  });

  it('take in an earlier day, and let it go again', () => {
    const store = temporaryStore();
    const { id } = athletes.save(store, inventedAthlete());
    saveMeasuring(store, id, { takenOn: '2024-04-01', statureM: 1.5, massKg: null, tape: {} });
    expect(statures(store, id)).toEqual([1.5, 1.68]);
    expect(removeMeasuring(store, id, '2024-04-01')).toBe(true);
    expect(removeMeasuring(store, id, '2024-04-01')).toBe(false);
    expect(statures(store, id)).toEqual([1.68]);
  });

  it('that no longer read are set aside, and the others listed', () => {
    const store = temporaryStore();
    const { id } = athletes.save(store, inventedAthlete());
    saveMeasuring(store, id, { takenOn: '2024-04-01', statureM: 1.5, massKg: null, tape: {} });
    store.db.exec(`UPDATE measurings SET measuring = '{"statureM": 17}' WHERE taken_on = '2024-04-01'`);
    expect(days(store, id)).toEqual(['2026-03-02']);
    expect(listQuarantine(store)).toMatchObject([{ table: 'measurings', rowId: `${id} 2024-04-01` }]);
    saveMeasuring(store, id, { takenOn: '2024-04-01', statureM: 1.51, massKg: null, tape: {} });
    expect(listQuarantine(store)).toEqual([]);
  });

  it('of two stores come together field by field, the edit that knew of the other staying', () => {
    const here = temporaryStore();
    const { id } = athletes.save(here, inventedAthlete('Grows', { measuredOn: '2026-01-10', statureM: 1.6 }));
    const there = temporaryStore(undefined, steppingClock(LATER));
    mergeIn(there, readIncoming(here.db).items);
    athletes.save(there, grown(id, '2026-01-10', 1.61));
    saveMeasuring(there, id, { takenOn: '2025-01-01', statureM: 1.55, massKg: null, tape: {} });
    saveMeasuring(here, id, { takenOn: '2024-01-01', statureM: 1.5, massKg: null, tape: {} });
    const there2 = readIncoming(there.db).items;
    expect(mergeIn(here, there2).athletes).toMatchObject({ updated: 1 });
    expect(statures(here, id)).toEqual([1.5, 1.55, 1.61]);
    expect(mergeIn(here, there2).athletes).toMatchObject({ keptNewer: 1, updated: 0 });
    expect(mergeIn(there, readIncoming(here.db).items).athletes).toMatchObject({ updated: 1 });
    expect(statures(there, id)).toEqual([1.5, 1.55, 1.61]);
  });

  it('come back from a backup whole, and one by one where only they are missing', async () => {
    const store = temporaryStore();
    const { id } = athletes.save(store, inventedAthlete());
    saveMeasuring(store, id, { takenOn: '2024-04-01', statureM: 1.5, massKg: null, tape: {} });
    const backup = await takeBackup(store, 'asked');
    removeMeasuring(store, id, '2024-04-01');
    expect(restoreBackup(store, { name: backup.name, how: 'bring-back' })).toBe('restored');
    expect(statures(store, id)).toEqual([1.5, 1.68]);
    removeMeasuring(store, id, '2024-04-01');
    expect(restoreBackup(store, { name: backup.name, how: 'replace' })).toBe('restored');
    expect(statures(store, id)).toEqual([1.5, 1.68]);
  });

  it('go with an athlete who is erased, unreadable ones too, and nobody else’s', () => {
    const store = temporaryStore();
    const other = athletes.save(store, inventedAthlete('Stays'));
    const { id } = athletes.save(store, inventedAthlete('Goes'));
    saveMeasuring(store, id, { takenOn: '2024-04-01', statureM: 1.5, massKg: null, tape: {} });
    store.db.exec(`UPDATE measurings SET measuring = '{}' WHERE taken_on = '2024-04-01'`);
    expect(days(store, id)).toHaveLength(1);
    expect(eraseEverywhere(store, { id, name: 'Goes' })).toMatchObject({ measurings: 2 });
    expect(days(store, id)).toEqual([]);
    expect(listQuarantine(store)).toEqual([]);
    expect(days(store, other.id)).toHaveLength(1);
  });
});
