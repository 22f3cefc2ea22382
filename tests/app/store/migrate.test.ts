import { copyFileSync, existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { findThings } from '../../../app/store/find-things.ts';
import { listFits, openFit } from '../../../app/store/fits.ts';
import { listMeasurings } from '../../../app/store/measurings.ts';
import { migrate, STORE_VERSION, storeVersion } from '../../../app/store/migrate.ts';
import { MIGRATIONS } from '../../../app/store/migrations/index.ts';
import { closeStore, STORE_FILE } from '../../../app/store/open-store.ts';
import { listPhotos } from '../../../app/store/photos.ts';
import { listQuarantine } from '../../../app/store/quarantine.ts';
import { openRevision } from '../../../app/store/revisions.ts';
import { athletes, boats, paddles } from '../../../app/store/roster.ts';
import type { Store } from '../../../app/store/store.ts';
import { fitsOfAthlete, timelineOf } from '../../../app/store/timeline.ts';
import { listTrials } from '../../../app/store/trials.ts';
import { temporaryFolder, temporaryStore } from '../temporary.ts';

const page = { archived: false, search: '', limit: 200, offset: 0 };
const versions = Array.from({ length: STORE_VERSION }, (_, i) => i + 1);
const schemaOf = ({ db }: Store) =>
  db.prepare('SELECT type, name, sql FROM sqlite_schema ORDER BY type, name').all();

/** The store version from which trials are kept. */
const TRIALS_SINCE = 2;

/** The store version from which measurings and photographs are kept. */
const MEASURINGS_SINCE = 3;

/** The store version from which the club's paddles are kept. */
const PADDLES_SINCE = 4;

/** A store opened from the fixture that a program of that version left. */
function opened(version: number): Store {
  const fixture = join(import.meta.dirname, 'fixtures', `store-v${version}.db`);
  expect(
    existsSync(fixture),
    `${fixture} is missing: run make-fixture.ts on the program of that version`,
  ).toBe(true);
  const folder = temporaryFolder();
  copyFileSync(fixture, join(folder, STORE_FILE));
  return temporaryStore(folder);
}

describe.each(versions)('a store of version %i', (version) => {
  it('opens with everything in it, upgraded to the schema of today', () => {
    const store = opened(version);
    expect(storeVersion(store.db)).toBe(STORE_VERSION);
    expect(schemaOf(store)).toEqual(schemaOf(temporaryStore()));
    expect(athletes.list(store, page).map(({ athlete }) => athlete.name)).toEqual(['Žofie Łęcka']);
    expect(athletes.list(store, { ...page, archived: true })).toHaveLength(1);
    expect(boats.list(store, page).map(({ boat }) => boat.name)).toEqual(['Grey Heron']);
    const [summary] = listFits(store, page);
    expect(summary).toMatchObject({ name: 'Kept through the years', revisions: 2, hasDraft: true });
    const fit = openFit(store, summary!.id);
    if (typeof fit === 'string') throw new Error(fit);
    expect(fit.fit.seats[0]?.kneePad.aftM).toBe(0.15);
    for (const [i, { id }] of fit.revisions.entries()) {
      expect(openRevision(store, id)).toMatchObject({
        fit: { seats: [{ kneePad: { aftM: [0.12, 0.1][i] } }] },
      });
    }
    const found = findThings(store, { text: 'a REASON', limit: 9 });
    expect(found.map(({ kind, number }) => [kind, number])).toEqual([
      ['revision', 2],
      ['revision', 1],
    ]);
    const kept = athletes.list(store, page)[0]!.id;
    expect(fitsOfAthlete(store, kept).map(({ id }) => id)).toEqual([summary!.id]);
    expect(timelineOf(store, kept).filter(({ kind }) => kind === 'revision')).toHaveLength(2);
    const trials = listTrials(store, summary!.id);
    expect(trials.map(({ trial }) => trial.notes)).toEqual(version < TRIALS_SINCE ? [] : ['in the wind']);
    const measured = listMeasurings(store, kept).map(({ takenOn, statureM }) => [takenOn, statureM]);
    const present = ['2026-03-02', 1.68];
    expect(measured).toEqual(version < MEASURINGS_SINCE ? [present] : [['2025-09-01', 1.66], present]);
    const [heron] = boats.list(store, page);
    const captions = listPhotos(store, heron!.id).map(({ caption }) => caption);
    expect(captions).toEqual(version < MEASURINGS_SINCE ? [] : ['Port side']);
    const stock = paddles.list(store, page).map(({ paddle }) => paddle.name);
    expect(stock).toEqual(version < PADDLES_SINCE ? [] : ['Reed']);
    expect(listQuarantine(store)).toEqual([]);
  });
});

describe('words that were written before they were looked for', () => {
  it('are found after the upgrade: the reason of a limit', () => {
    const folder = temporaryFolder();
    const file = join(folder, STORE_FILE);
    copyFileSync(join(import.meta.dirname, 'fixtures', 'store-v4.db'), file);
    const before = new Database(file);
    const limits = JSON.stringify([{ joint: 'trunkForward', maxDeg: 20, reason: 'Bandscheibe, Öhringen' }]);
    before.prepare("UPDATE athletes SET athlete = json_set(athlete, '$.limits', json(?))").run(limits);
    before.close();
    const found = findThings(temporaryStore(folder), { text: 'OHRINGEN bandscheibe', limit: 9 });
    expect(found.map(({ kind }) => kind)).toContain('athlete');
  });
});

describe('a migration', () => {
  const next = [...MIGRATIONS, 'CREATE TABLE later_things (id TEXT PRIMARY KEY) STRICT'];

  it('is preceded by a copy of the store as it was', () => {
    const store = opened(STORE_VERSION);
    const copy = migrate(store, next);
    expect(storeVersion(store.db)).toBe(STORE_VERSION + 1);
    const before = new Database(copy!, { readonly: true });
    expect(storeVersion(before)).toBe(STORE_VERSION);
    expect(before.prepare('SELECT count(*) FROM revisions').pluck().get()).toBe(2);
    before.close();
  });

  it('that fails half-way leaves the store at the last version that worked, and the copy', () => {
    const store = opened(STORE_VERSION);
    const before = schemaOf(store);
    const broken = [...next, 'CREATE TABLE half (id TEXT) STRICT; INSERT INTO nowhere VALUES (1)'];
    expect(() => migrate(store, broken)).toThrow('no such table: nowhere');
    expect(storeVersion(store.db)).toBe(STORE_VERSION + 1);
    expect(
      schemaOf(store).filter((row) => !before.some((b) => JSON.stringify(b) === JSON.stringify(row))),
    ).toMatchObject([{ name: 'sqlite_autoindex_later_things_1' }, { name: 'later_things' }]);
    expect(readdirSync(join(store.folder, 'before-upgrade'))).toHaveLength(1);
    closeStore(store);
  });

  it('of an empty store needs no copy, and a store of today none at all', () => {
    expect(migrate(temporaryStore())).toBe(null);
    const folder = temporaryFolder();
    temporaryStore(folder);
    expect(existsSync(join(folder, 'before-upgrade'))).toBe(false);
  });
});
