import { describe, expect, it } from 'vitest';
import { askedOnce, decideConflict, listConflicts } from '../../../app/store/conflicts.ts';
import { createFit, listFits, openFit, saveDraft, setFitArchived } from '../../../app/store/fits.ts';
import type { Incoming } from '../../../app/store/incoming.ts';
import { listMeasurings, removeMeasuring, saveMeasuring } from '../../../app/store/measurings.ts';
import { mergeIn } from '../../../app/store/merge.ts';
import { addPhoto, describePhoto, listPhotos, removePhoto } from '../../../app/store/photos.ts';
import { readIncoming } from '../../../app/store/read-incoming.ts';
import { listRevisions, saveRevision } from '../../../app/store/revisions.ts';
import { athletes, boats } from '../../../app/store/roster.ts';
import type { Store } from '../../../app/store/store.ts';
import type { Athlete } from '../../../core/document/athlete-schema.ts';
import { revisionMark } from '../../../core/document/revision-mark.ts';
import { bring, contentOf, meet } from '../exchange.ts';
import { inventedAthlete, inventedBoat, inventedFit, inventedPicture } from '../invented.ts';
import { steppingClock, temporaryStore } from '../temporary.ts';

const DAY = 86_400_000;
const START = Date.UTC(2026, 2, 2, 9);
const page = { archived: false, search: '', limit: 200, offset: 0 };
const KNEE = { joint: 'kneelingKneeFlexion', maxDeg: 120, reason: 'old sprain' } as const;

/** Two laptops that both have what `made` makes; the second one's clock is off by `ahead`. */
function twoLaptops<T>(made: (store: Store) => T, ahead = 0): [Store, Store, T] {
  const a = temporaryStore(undefined, steppingClock(START));
  const b = temporaryStore(undefined, steppingClock(START + ahead));
  const what = made(a);
  bring(b, a);
  return [a, b, what];
}

function change(store: Store, id: string, to: Partial<Athlete>): void {
  athletes.save(store, { ...athletes.get(store, id)!.athlete, ...to });
}

const anAthlete = (store: Store) => athletes.save(store, inventedAthlete()).id;
const athleteOn = (store: Store, id: string) => athletes.get(store, id)!.athlete;

describe('two laptops that exchange files', () => {
  it('decide a field that two pages of one changed, on either, and both have the decision', () => {
    const [a, b, id] = twoLaptops(anAthlete);
    const opened = athleteOn(a, id);
    change(a, id, { massKg: 50 });
    meet(a, b);
    athletes.save(a, { ...opened, massKg: 52 }, opened);
    meet(a, b);
    expect(contentOf(b)).toEqual(contentOf(a));
    const asked = askedOnce(listConflicts(b)).map(({ path, values }) => [
      path,
      values.map(({ value }) => value),
    ]);
    expect(asked).toEqual([['massKg', ['52', '50']]]);
    for (const { kind, path } of listConflicts(b)) decideConflict(b, { kind, id, path, value: '50' });
    meet(a, b);
    for (const store of [a, b]) {
      expect(listConflicts(store)).toEqual([]);
      expect(athleteOn(store, id).massKg).toBe(50);
    }
  });

  it('ask too where a page was open while the other laptop’s value came in', () => {
    const [a, b, id] = twoLaptops(anAthlete);
    const opened = athleteOn(a, id);
    change(b, id, { massKg: 50 });
    bring(a, b);
    athletes.save(a, { ...opened, massKg: 52 }, opened);
    meet(a, b);
    expect(contentOf(b)).toEqual(contentOf(a));
    for (const store of [a, b]) {
      const [asked] = listConflicts(store).filter(({ path }) => path === 'massKg');
      expect(asked!.values.map(({ value }) => value)).toEqual(['52', '50']);
    }
  });

  it('keep a limit that one adds and a mass that the other changes', () => {
    const [a, b, id] = twoLaptops(anAthlete);
    change(a, id, { limits: [KNEE] });
    change(b, id, { massKg: 55 });
    bring(b, a);
    bring(a, b);
    for (const store of [a, b]) expect(athleteOn(store, id)).toMatchObject({ massKg: 55, limits: [KNEE] });
    expect(listConflicts(a)).toEqual([]);
  });

  it.each([DAY, -DAY, 4000 * DAY])(
    'never let a clock that is off by %d ms bring back a stale mass',
    (ahead) => {
      const [a, b, id] = twoLaptops(
        (store) => athletes.save(store, inventedAthlete('Stale', { massKg: 50 })).id,
        ahead,
      );
      change(b, id, { side: 'right' });
      change(a, id, { massKg: 61 });
      meet(a, b);
      for (const store of [a, b]) expect(athleteOn(store, id)).toMatchObject({ massKg: 61, side: 'right' });
      expect(listConflicts(b)).toEqual([]);
    },
  );

  it('show a value that both changed, once, side by side; a decision on one holds on the other', () => {
    const [a, b, id] = twoLaptops(anAthlete);
    change(a, id, { massKg: 50 });
    change(b, id, { massKg: 52 });
    meet(a, b);
    const [asked] = listConflicts(a).filter(({ path }) => path === 'massKg');
    expect(asked!.values.map(({ value }) => value).sort()).toEqual(['50', '52']);
    for (const { kind, path } of listConflicts(a)) {
      expect(decideConflict(a, { kind, id, path, value: '50' })).toBe('decided');
    }
    bring(b, a);
    expect(listConflicts(b)).toEqual([]);
    expect(athleteOn(b, id).massKg).toBe(50);
    meet(a, b);
    expect(listConflicts(a)).toEqual([]);
    expect(decideConflict(a, { kind: 'athlete', id, path: 'massKg', value: '52' })).toBe('none');
  });

  it('count a question once that the athlete and the day of a measuring both ask', () => {
    const measured = { measuredOn: '2026-02-03' };
    const [a, b, id] = twoLaptops((store) => athletes.save(store, inventedAthlete('Weighed', measured)).id);
    change(a, id, { massKg: 58 });
    change(b, id, { massKg: 64 });
    const counts = bring(b, a);
    expect(listConflicts(b)).toHaveLength(2);
    expect(askedOnce(listConflicts(b))).toHaveLength(1);
    expect(counts.athletes.conflicts).toBe(1);
  });

  it('keep every limit of a month of 240 edits, exchanged now and then in both directions', () => {
    const [a, b, ids] = twoLaptops(
      (store) => Array.from({ length: 6 }, (_, i) => athletes.save(store, inventedAthlete(`No ${i}`)).id),
      DAY,
    );
    const joints = [
      'trunkForward',
      'frontKneeFlexion',
      'rearAnklePlantarflexion',
      'frontHipFlexion',
      'trunkSideways',
      'kneelingHipExtension',
      'frontAnkleDorsiflexion',
    ] as const;
    const written: [string, string][] = [];
    for (let edit = 0; edit < 240; edit++) {
      const store = edit % 3 === 0 ? b : a;
      const id = ids[(edit * 7) % ids.length]!;
      if (edit % 6 === 0) {
        const joint = joints[(edit / 6) % joints.length]!;
        const limits = athleteOn(store, id).limits.filter((limit) => limit.joint !== joint);
        change(store, id, {
          limits: [...limits, { joint, maxDeg: 10 + (edit % 90), reason: `edit ${edit}` }],
        });
        written.push([id, joint]);
      } else if (store === a) change(store, id, { massKg: 40 + (edit % 50) });
      else change(store, id, { statureM: 1.5 + (edit % 40) / 100 });
      if (edit % 17 === 0) bring(edit % 2 ? a : b, edit % 2 ? b : a);
    }
    meet(a, b);
    expect(contentOf(b)).toEqual(contentOf(a));
    const lost = written.filter(
      ([id, joint]) => !athleteOn(a, id).limits.some((limit) => limit.joint === joint),
    );
    expect(written).toHaveLength(40);
    expect(lost).toEqual([]);
    expect(listConflicts(a).filter(({ path }) => !path.startsWith('limits'))).toEqual([]);
  });

  it('take archiving over, and taking it back', () => {
    const [a, b, { id, fitId }] = twoLaptops((store) => ({
      id: anAthlete(store),
      fitId: createFit(store, inventedFit()).id,
    }));
    athletes.setArchived(a, id, true);
    setFitArchived(a, fitId, true);
    change(b, id, { massKg: 44 });
    meet(a, b);
    for (const store of [a, b]) {
      expect(athletes.list(store, page)).toEqual([]);
      expect(listFits(store, page)).toEqual([]);
      expect(athletes.get(store, id)).toMatchObject({ archived: true, athlete: { massKg: 44 } });
    }
    athletes.setArchived(b, id, false);
    meet(a, b);
    expect(athletes.list(a, page)).toHaveLength(1);
  });

  it('take captions over, and removals: a photograph that was removed does not come back', () => {
    const [a, b, photos] = twoLaptops((store) => {
      const { id: boatId } = boats.save(store, inventedBoat());
      const add = (caption: string) => addPhoto(store, { boatId, caption, bytes: inventedPicture() });
      const made = [add('bow'), add('stern')].map((photo) => (photo as { id: string }).id);
      return { boatId, ids: made as [string, string] };
    });
    const [bow, stern] = photos.ids;
    describePhoto(a, bow, 'bow, port side');
    removePhoto(b, stern);
    meet(a, b);
    for (const store of [a, b])
      expect(listPhotos(store, photos.boatId).map(({ caption }) => caption)).toEqual(['bow, port side']);
    bring(b, a);
    expect(listPhotos(b, photos.boatId)).toHaveLength(1);
  });

  it('ask when one removes a photograph and the other writes under it', () => {
    const [a, b, { boatId, id }] = twoLaptops((store) => {
      const boat = boats.save(store, inventedBoat()).id;
      const photo = addPhoto(store, { boatId: boat, caption: 'as it was', bytes: inventedPicture() });
      return { boatId: boat, id: (photo as { id: string }).id };
    });
    removePhoto(a, id);
    describePhoto(b, id, 'do not remove');
    meet(a, b);
    for (const store of [a, b]) {
      expect(listPhotos(store, boatId)).toHaveLength(1);
      expect(listConflicts(store)).toMatchObject([{ kind: 'photo', id, path: 'caption' }]);
    }
    decideConflict(a, { kind: 'photo', id, path: 'caption', value: null });
    meet(a, b);
    for (const store of [a, b]) expect(listPhotos(store, boatId)).toEqual([]);
  });

  it('go on asking for words of a photograph that both have removed, until somebody decides', () => {
    const [a, b, { boatId, id }] = twoLaptops((store) => {
      const boat = boats.save(store, inventedBoat()).id;
      const photo = addPhoto(store, { boatId: boat, caption: 'as it was', bytes: inventedPicture() });
      return { boatId: boat, id: (photo as { id: string }).id };
    });
    describePhoto(a, id, 'by one');
    describePhoto(b, id, 'by the other');
    meet(a, b);
    for (const store of [a, b]) removePhoto(store, id);
    // A file of its own brings a store nothing new, and neither side has the picture any more.
    bring(a, a);
    meet(a, b);
    for (const store of [a, b]) {
      expect(listPhotos(store, boatId)).toEqual([]);
      const [asked] = listConflicts(store);
      const waiting = asked?.values.map(({ value }) => value) ?? [];
      expect(waiting).toContain(null);
      expect(waiting.some((value) => value === '"by one"' || value === '"by the other"')).toBe(true);
    }
    const field = { kind: 'photo', id, path: 'caption' } as const;
    const words = listConflicts(a)[0]!.values.find(({ value }) => value !== null)!.value;
    expect(decideConflict(a, { ...field, value: words })).toBe('unsound');
    expect(decideConflict(a, { ...field, value: null })).toBe('decided');
    meet(a, b);
    for (const store of [a, b]) expect(listConflicts(store)).toEqual([]);
  });

  it('take the removal of an old measuring over', () => {
    const [a, b, id] = twoLaptops((store) => {
      const made = anAthlete(store);
      saveMeasuring(store, made, { takenOn: '2024-04-01', statureM: 1.5, massKg: null, tape: {} });
      return made;
    });
    removeMeasuring(a, id, '2024-04-01');
    saveMeasuring(b, id, { takenOn: '2023-04-01', statureM: 1.4, massKg: 40, tape: {} });
    meet(a, b);
    for (const store of [a, b])
      expect(listMeasurings(store, id).map(({ takenOn }) => takenOn)).toEqual(['2023-04-01', '2026-03-02']);
  });

  it('make no revision of a draft, and know their revisions by one mark', () => {
    const [a, b, id] = twoLaptops((store) => {
      const fit = createFit(store, inventedFit());
      saveRevision(store, { fitId: fit.id, fit: inventedFit(), name: 'first', reason: '' });
      return fit.id;
    });
    for (let day = 0; day < 10; day++) {
      saveDraft(a, { id, fit: inventedFit({ padAftM: 0.1 + day / 100 }) });
      if (day % 3 === 0)
        saveRevision(b, {
          fitId: id,
          fit: inventedFit({ padAftM: 0.2 + day / 100 }),
          name: `b ${day}`,
          reason: '',
        });
      meet(a, b);
    }
    const named = (store: Store) =>
      listRevisions(store, id)
        .map(({ id, name }) => [revisionMark(id), name])
        .sort();
    expect(named(a)).toEqual(named(b));
    expect(named(a)).toHaveLength(5);
    expect(new Set(named(a).map(([mark]) => mark)).size).toBe(5);
    expect(openFit(a, id)).toMatchObject({ fit: (openFit(b, id) as { fit: object }).fit });
  });
});

describe('a file of a program that kept no versions', () => {
  /** A bundle as it was before versions: the same items without them. */
  const older = (store: Store) => {
    const without = ({ versions: _, ...item }: Record<string, unknown>) => item;
    return readIncoming(store.db).items.map(({ kind, item }) => {
      const bare = without(item as unknown as Record<string, unknown>);
      const trials =
        'trials' in bare ? { trials: (bare.trials as Record<string, unknown>[]).map(without) } : {};
      return { kind, item: { ...bare, ...trials } };
    }) as unknown as Incoming[];
  };

  it('asks where it differs, once, and loses nothing', () => {
    const [a, b, id] = twoLaptops(anAthlete);
    change(a, id, { limits: [KNEE] });
    change(b, id, { massKg: 55 });
    const file = older(b);
    expect(mergeIn(a, file).athletes.conflicts).toBeGreaterThan(0);
    expect(athleteOn(a, id).limits).toEqual([KNEE]);
    const asked = listConflicts(a).find(({ path }) => path === 'massKg')!;
    expect(asked.values.map(({ value }) => value).sort()).toEqual(['55', '61']);
    for (const { kind, path, values } of listConflicts(a)) {
      decideConflict(a, { kind, id, path, value: values[0]!.value });
    }
    expect(mergeIn(a, file).athletes.conflicts).toBe(0);
    expect(listConflicts(a)).toEqual([]);
  });

  it('is followed by its revisions: the side that has the other’s state among them is the newer one', () => {
    const [a, b, id] = twoLaptops((store) => {
      const fit = createFit(store, inventedFit());
      saveRevision(store, { fitId: fit.id, fit: inventedFit(), name: 'first', reason: '' });
      return fit.id;
    });
    const before = older(a);
    saveRevision(b, { fitId: id, fit: inventedFit({ padAftM: 0.2 }), name: 'second', reason: '' });
    expect(mergeIn(b, before).fits).toMatchObject({ conflicts: 0, updated: 0 });
    expect(mergeIn(a, older(b)).fits).toMatchObject({ conflicts: 0, updated: 1 });
    expect(openFit(a, id)).toMatchObject({ fit: inventedFit({ padAftM: 0.2 }), draftSavedAt: null });
  });
});
