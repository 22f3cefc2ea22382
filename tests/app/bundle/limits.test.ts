import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { BUNDLE_LIMITS } from '../../../app/bundle/bundle-format.ts';
import { BundleTooLarge } from '../../../app/bundle/pack.ts';
import { packedBytes } from '../../../app/bundle/packed.ts';
import { bundleItems } from '../../../app/bundle/read-bundle.ts';
import { unpackBundle } from '../../../app/bundle/unpack.ts';
import { eraseEverywhere } from '../../../app/store/erase-everywhere.ts';
import { createFit, saveDraft } from '../../../app/store/fits.ts';
import { mergeIn } from '../../../app/store/merge.ts';
import { addPhoto, openPhoto } from '../../../app/store/photos.ts';
import { readIncoming } from '../../../app/store/read-incoming.ts';
import { saveRevision } from '../../../app/store/revisions.ts';
import { athletes, boats } from '../../../app/store/roster.ts';
import type { Store } from '../../../app/store/store.ts';
import { saveTrial } from '../../../app/store/trials.ts';
import type { Athlete } from '../../../core/document/athlete-schema.ts';
import { trialSchema } from '../../../core/trial/observation.ts';
import { bundleOf, type Sizes } from '../exchange.ts';
import { inventedAthlete, inventedBoat, inventedFit } from '../invented.ts';
import { temporaryStore } from '../temporary.ts';

/** A fit with so many revisions, as many trials of the first of them, and a draft; gives the first revision's athlete. */
function longHistory(
  store: Store,
  revisions: number,
  athlete: Athlete = inventedAthlete('Somebody'),
): string {
  const { id } = createFit(store, inventedFit({ athlete }));
  for (let i = 0; i < revisions; i++) {
    const fit = inventedFit({ athlete, padAftM: 0.1 + i / 1000 });
    const saved = saveRevision(store, { fitId: id, fit, name: `${i}`, reason: 'because' });
    if (typeof saved === 'string') throw new Error(saved);
    const trial = trialSchema.parse({ seat: 0, heldOn: '2026-03-04', observations: [], notes: `trial ${i}` });
    const kept = saveTrial(store, { revisionId: saved.id, trial });
    if (typeof kept === 'string') throw new Error(kept);
  }
  saveDraft(store, { id, fit: inventedFit({ athlete, padAftM: 0.3 }) });
  return id;
}

/** Files so small that what is long goes on in others, and the limits as they are. */
const SMALL = { limits: BUNDLE_LIMITS, part: 20_000 };

describe('a bundle of what is long', () => {
  it('goes on in further files, each far below the limit, and comes in as it was', () => {
    const from = temporaryStore();
    for (let i = 0; i < 40; i++) athletes.save(from, inventedAthlete(`Athlete ${i}`));
    const id = longHistory(from, 30);
    const bytes = bundleOf(from, SMALL);
    const files = unzipSync(bytes);
    const parts = Object.keys(files).filter((name) => name.startsWith(`fits/${id}`));
    expect(parts.length).toBeGreaterThan(2);
    expect(Object.keys(files)).toContain('athletes-2.json');
    for (const [name, content] of Object.entries(files))
      if (name !== 'bundle.json') expect(content.length, name).toBeLessThan(4 * SMALL.part);
    const into = temporaryStore();
    const counts = mergeIn(into, bundleItems(packedBytes(bytes)));
    expect(counts).toMatchObject({
      athletes: { added: 40 },
      fits: { added: 1 },
      revisions: { added: 30 },
      trials: { added: 30 },
    });
    expect(readIncoming(into.db).items).toEqual(readIncoming(from.db).items);
    expect(mergeIn(into, bundleItems(packedBytes(bytes)))).toMatchObject({
      revisions: { added: 0, same: 30 },
    });
  });

  it('is of the older format while nothing goes on in a further file, so that older programs read it', () => {
    const from = temporaryStore();
    longHistory(from, 4);
    const formatOf = (sizes?: Sizes) =>
      JSON.parse(strFromU8(unzipSync(bundleOf(from, sizes))['bundle.json']!)).format;
    expect(formatOf()).toBe('kneelwright-bundle/2');
    expect(formatOf({ ...SMALL, part: 5000 })).toBe('kneelwright-bundle/3');
  });

  it('brings nobody back who was erased, by none of its files', () => {
    const [from, into] = [temporaryStore(), temporaryStore()];
    const { athlete } = athletes.save(from, inventedAthlete('Quirina Goesaway'));
    longHistory(from, 30, athlete);
    const bytes = bundleOf(from, SMALL);
    mergeIn(into, bundleItems(packedBytes(bytes)));
    eraseEverywhere(into, { id: athlete.id!, name: athlete.name });
    mergeIn(into, bundleItems(packedBytes(bytes)));
    const kept = JSON.stringify(readIncoming(into.db).items);
    expect(kept).not.toContain('Quirina');
    expect(kept).not.toContain(athlete.id);
  });
});

describe('what is exported and what is imported', () => {
  it('end at the same size, for one file, for all of them, for their number and as packed', () => {
    const store = temporaryStore();
    longHistory(store, 6);
    // The hour of making stands in the file, and packs to a byte more or less.
    const stopped = { ...store, clock: () => Date.UTC(2026, 2, 4) };
    const whole = bundleOf(stopped);
    const sizes = Object.values(unzipSync(whole)).map(({ length }) => length);
    const just = {
      packed: whole.length,
      file: Math.max(...sizes),
      unpacked: sizes.reduce((a, b) => a + b),
      files: sizes.length,
    };
    const read = (limits: typeof just) => [...unpackBundle(packedBytes(whole), limits)].length;
    const write = (limits: typeof just) => bundleOf(stopped, { limits, part: SMALL.part * 100 }).length;
    expect([read(just), write(just)]).toEqual([sizes.length, whole.length]);
    for (const name of Object.keys(just) as (keyof typeof just)[]) {
      const less = { ...just, [name]: just[name] - 1 };
      expect(() => read(less), name).toThrow(/too large|[tT]oo many/);
      expect(() => write(less), name).toThrow(BundleTooLarge);
    }
  });

  it('agree on a picture, whatever stands in it: marks of a zip are no marks there', () => {
    const [from, into] = [temporaryStore(), temporaryStore()];
    const boat = boats.save(from, inventedBoat());
    const bytes = Buffer.alloc(50_000, 'x');
    bytes.set([0xff, 0xd8, 0xff, 0xe0]);
    for (const [i, mark] of ['PK\x01\x02', 'PK\x03\x04', 'PK\x05\x06', 'PK\x07\x08'].entries())
      bytes.write(mark, 9000 * (i + 1), 'latin1');
    const photo = addPhoto(from, { boatId: boat.id, caption: 'marked', bytes });
    if (typeof photo === 'string') throw new Error(photo);
    mergeIn(into, bundleItems(packedBytes(bundleOf(from))));
    expect(openPhoto(into, photo.id)?.bytes.equals(bytes)).toBe(true);
  });

  it('agree on rows that no longer read, however long they are', () => {
    const store = temporaryStore();
    store.db
      .prepare("INSERT INTO quarantine VALUES ('fits', 'x', 'p', ?, '2026-03-02T09:00:00.000Z')")
      .run('é'.repeat(5 * 1024 * 1024));
    expect([...bundleItems(packedBytes(bundleOf(store)))]).toEqual([]);
  });
});

describe('a damaged bundle', () => {
  it('is called damaged, and never one that a newer program made', () => {
    const whole = bundleOf(temporaryStore());
    const contents = Buffer.from(whole).lastIndexOf('bundle.json', whole.length - 200);
    for (let at = Math.max(0, contents - 60); at < whole.length; at++) {
      for (let bit = 0; bit < 8; bit++) {
        const turned = Uint8Array.from(whole);
        turned[at]! ^= 1 << bit;
        const said = refusalOf(turned);
        expect(said, `byte ${at}, bit ${bit}`).not.toContain('newer');
      }
    }
  });
});

function refusalOf(bytes: Uint8Array): string {
  try {
    for (const _ of bundleItems(packedBytes(bytes)));
    return '';
  } catch (error) {
    return (error as Error).message;
  }
}
