import { describe, expect, it } from 'vitest';
import {
  createFit,
  discardDraft,
  listFits,
  openFit,
  saveDraft,
  setFitArchived,
} from '../../../app/store/fits.ts';
import { closeStore } from '../../../app/store/open-store.ts';
import { openRevision, saveRevision } from '../../../app/store/revisions.ts';
import { inventedFit } from '../invented.ts';
import { temporaryFolder, temporaryStore } from '../temporary.ts';

const page = { archived: false, search: '', limit: 200, offset: 0 };

describe('a fit in the store', () => {
  it('is found as left after the store is opened again: draft, revisions and all', () => {
    const folder = temporaryFolder();
    const store = temporaryStore(folder);
    const { id } = createFit(store, inventedFit());
    const first = saveRevision(store, {
      fitId: id,
      fit: inventedFit(),
      name: 'As measured',
      reason: 'new athlete',
    });
    const moved = inventedFit({ padAftM: 0.13 });
    saveDraft(store, { id, fit: moved });
    closeStore(store);

    const again = temporaryStore(folder);
    const opened = openFit(again, id);
    expect(opened).toMatchObject({ id, fit: moved, revisions: [first] });
    expect(listFits(again, page)).toMatchObject([
      { id, hasDraft: true, revisions: 1, boatName: 'Grey Heron' },
    ]);
  });

  it('keeps every revision as it was, numbered without a gap', () => {
    const store = temporaryStore();
    const { id } = createFit(store, inventedFit());
    const places = [0.1, 0.12, 0.14];
    const saved = places.map((padAftM) => {
      const fit = inventedFit({ padAftM });
      return saveRevision(store, { fitId: id, fit, name: `pad ${padAftM}`, reason: '' });
    });
    expect(saved.map((r) => typeof r !== 'string' && r.number)).toEqual([1, 2, 3]);
    for (const [i, revision] of saved.entries()) {
      if (typeof revision === 'string') throw new Error('not saved');
      const opened = openRevision(store, revision.id);
      expect(opened).toMatchObject({ fit: { seats: [{ kneePad: { aftM: places[i] } }] } });
    }
  });

  it('never lets a revision be changed or deleted, whoever asks', () => {
    const store = temporaryStore();
    const { id } = createFit(store, inventedFit());
    saveRevision(store, { fitId: id, fit: inventedFit(), name: 'kept', reason: '' });
    expect(() => store.db.exec("UPDATE revisions SET name = 'other'")).toThrow('never changed');
    expect(() => store.db.exec('DELETE FROM revisions')).toThrow('never deleted');
  });

  it('does not write a stale window over a newer draft', () => {
    const store = temporaryStore();
    const { id, draftSavedAt } = createFit(store, inventedFit());
    const first = saveDraft(store, { id, fit: inventedFit({ padAftM: 0.2 }), basedOn: draftSavedAt });
    expect(first).toHaveProperty('savedAt');
    expect(saveDraft(store, { id, fit: inventedFit({ padAftM: 0.3 }), basedOn: draftSavedAt })).toBe(
      'conflict',
    );
    expect(openFit(store, id)).toMatchObject({ fit: { seats: [{ kneePad: { aftM: 0.2 } }] } });
  });

  it('does not let a stale window drop a newer draft by saving a revision', () => {
    const store = temporaryStore();
    const { id, draftSavedAt } = createFit(store, inventedFit());
    const newer = saveDraft(store, { id, fit: inventedFit({ padAftM: 0.2 }) });
    const stale = { fitId: id, fit: inventedFit({ padAftM: 0.3 }), name: 'stale', reason: '' };
    expect(saveRevision(store, { ...stale, basedOn: draftSavedAt })).toBe('conflict');
    expect(openFit(store, id)).toMatchObject({ fit: { seats: [{ kneePad: { aftM: 0.2 } }] }, revisions: [] });
    if (typeof newer === 'string') throw new Error(newer);
    expect(saveRevision(store, { ...stale, basedOn: newer.savedAt })).toMatchObject({ number: 1 });
  });

  it('gives two drafts in the same millisecond two instants', () => {
    const store = temporaryStore(undefined, () => Date.UTC(2026, 2, 2, 9));
    const { id, draftSavedAt } = createFit(store, inventedFit());
    const next = saveDraft(store, { id, fit: inventedFit() });
    expect(next).toEqual({ savedAt: new Date(Date.parse(draftSavedAt!) + 1).toISOString() });
  });

  it('goes back to its newest revision when the draft is discarded, and keeps a draft that is all there is', () => {
    const store = temporaryStore();
    const { id } = createFit(store, inventedFit());
    expect(discardDraft(store, id)).toBe('only-draft');
    saveRevision(store, { fitId: id, fit: inventedFit({ padAftM: 0.11 }), name: 'one', reason: '' });
    saveDraft(store, { id, fit: inventedFit({ padAftM: 0.3, name: 'Renamed' }) });
    expect(discardDraft(store, id)).toMatchObject({
      draftSavedAt: null,
      fit: { seats: [{ kneePad: { aftM: 0.11 } }] },
    });
    expect(listFits(store, page)).toMatchObject([{ name: 'First try', hasDraft: false }]);
  });

  it('is found by any part of its athlete, boat or name, accents or not, and set aside and brought back', () => {
    const store = temporaryStore();
    const { id } = createFit(store, inventedFit());
    createFit(store, inventedFit({ name: 'Empty', athlete: null }));
    const search = (text: string) => listFits(store, { ...page, search: text }).map((fit) => fit.id);
    expect(search('zofie lecka')).toEqual([id]);
    expect(search('HERON')).toHaveLength(2);
    expect(search('100%')).toEqual([]);
    expect(search('_')).toEqual([]);
    setFitArchived(store, id, true);
    expect(search('zofie')).toEqual([]);
    expect(listFits(store, { ...page, archived: true })).toMatchObject([{ id, archived: true }]);
    expect(setFitArchived(store, id, false)).toMatchObject({ id, archived: false });
    expect(search('zofie')).toEqual([id]);
  });
});
