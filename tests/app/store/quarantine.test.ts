import { describe, expect, it } from 'vitest';
import { createFit, listFits, openFit, saveDraft } from '../../../app/store/fits.ts';
import { listQuarantine } from '../../../app/store/quarantine.ts';
import { saveRevision } from '../../../app/store/revisions.ts';
import { athletes, boats } from '../../../app/store/roster.ts';
import { inventedAthlete, inventedBoat, inventedFit } from '../invented.ts';
import { temporaryStore } from '../temporary.ts';

const page = { archived: false, search: '', limit: 200, offset: 0 };

describe('a row that does not parse', () => {
  it('is set aside with what it held, and the rest of the list goes on', () => {
    const store = temporaryStore();
    const bad = athletes.save(store, inventedAthlete('Bad Row'));
    const good = athletes.save(store, inventedAthlete('Good Row'));
    store.db
      .prepare(`UPDATE athletes SET athlete = '{"name":"Bad Row","massKg":"heavy"}' WHERE id = ?`)
      .run(bad.id);
    expect(athletes.list(store, page).map(({ id }) => id)).toEqual([good.id]);
    expect(athletes.list(store, page)).toHaveLength(1);
    expect(listQuarantine(store)).toMatchObject([{ table: 'athletes', rowId: bad.id }]);
    const raw = store.db.prepare('SELECT raw FROM quarantine').pluck().get();
    expect(raw).toBe('{"name":"Bad Row","massKg":"heavy"}');
  });

  it('goes off the list when it is written afresh', () => {
    const store = temporaryStore();
    const { id } = boats.save(store, inventedBoat());
    store.db.prepare("UPDATE boats SET boat = '[]' WHERE id = ?").run(id);
    expect(boats.get(store, id)).toBe(null);
    boats.save(store, { ...inventedBoat(), id });
    expect(listQuarantine(store)).toEqual([]);
    expect(boats.get(store, id)).toMatchObject({ id });
  });

  it('as a draft gives way to the newest revision that reads', () => {
    const store = temporaryStore();
    const { id } = createFit(store, inventedFit());
    saveRevision(store, { fitId: id, fit: inventedFit({ padAftM: 0.12 }), name: 'one', reason: '' });
    saveDraft(store, { id, fit: inventedFit({ padAftM: 0.3 }) });
    store.db.prepare("UPDATE drafts SET fit = '{}'").run();
    expect(openFit(store, id)).toMatchObject({
      draftSavedAt: null,
      fit: { seats: [{ kneePad: { aftM: 0.12 } }] },
    });
    expect(listQuarantine(store)).toMatchObject([{ table: 'drafts', rowId: id }]);
  });

  it('as all there is of a fit says so, and does not lose the fit from the list', () => {
    const store = temporaryStore();
    const { id } = createFit(store, inventedFit());
    store.db.prepare("UPDATE drafts SET fit = '7'").run();
    expect(openFit(store, id)).toBe('damaged');
    expect(listFits(store, page)).toHaveLength(1);
  });
});
