import { createHash } from 'node:crypto';
import { strFromU8, strToU8, unzipSync, type Zippable, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { BUNDLE_FORMAT, BUNDLE_LIMITS } from '../../../app/bundle/bundle-format.ts';
import { packedBytes } from '../../../app/bundle/packed.ts';
import { bundleItems } from '../../../app/bundle/read-bundle.ts';
import { unpackBundle } from '../../../app/bundle/unpack.ts';
import { createFit, saveDraft } from '../../../app/store/fits.ts';
import type { Incoming, IncomingFit } from '../../../app/store/incoming.ts';
import { listMeasurings, saveMeasuring } from '../../../app/store/measurings.ts';
import { mergeIn } from '../../../app/store/merge.ts';
import { addPhoto, listPhotos, openPhoto } from '../../../app/store/photos.ts';
import { readIncoming } from '../../../app/store/read-incoming.ts';
import { saveRevision } from '../../../app/store/revisions.ts';
import { athletes, boats, paddles } from '../../../app/store/roster.ts';
import type { Store } from '../../../app/store/store.ts';
import { saveTrial } from '../../../app/store/trials.ts';
import { trialSchema } from '../../../core/trial/observation.ts';
import { bundleOf } from '../exchange.ts';
import { inventedAthlete, inventedBoat, inventedFit, inventedPaddle, inventedPicture } from '../invented.ts';
import { temporaryStore } from '../temporary.ts';

const page = { archived: false, search: '', limit: 200, offset: 0 };

function filledStore(): Store {
  const store = temporaryStore();
  athletes.save(store, inventedAthlete('Þóra Ýrsdóttir'));
  boats.save(store, inventedBoat());
  paddles.save(store, inventedPaddle());
  for (let i = 0; i < 3; i++) {
    const { id } = createFit(store, inventedFit({ name: `Fit ${i}` }));
    const revision = saveRevision(store, {
      fitId: id,
      fit: inventedFit({ name: `Fit ${i}` }),
      name: 'one',
      reason: 'because',
    });
    if (typeof revision === 'string') throw new Error(revision);
    const observation = { kind: 'boat', sign: 'kneeLifts', strength: 2 } as const;
    const trial = trialSchema.parse({ seat: 0, heldOn: '2026-03-04', observations: [observation] });
    const tried = saveTrial(store, { revisionId: revision.id, trial });
    if (typeof tried === 'string') throw new Error(tried);
    const answers = [{ trialId: tried.id, observation }];
    saveRevision(store, {
      fitId: id,
      fit: inventedFit({ name: `Fit ${i}` }),
      name: 'two',
      reason: '',
      answers,
    });
    if (i > 0) saveDraft(store, { id, fit: inventedFit({ name: `Fit ${i}`, padAftM: 0.2 }) });
  }
  return store;
}

/** Everything in a bundle; throws its refusal. */
function read(packed: Uint8Array): Incoming[] {
  return [...bundleItems(packedBytes(packed))];
}

/** Packs files as a bundle with a true list of contents, whatever is in them. */
function packed(files: Record<string, string>): Uint8Array {
  const listed = Object.entries(files).map(([name, text]) => ({
    name,
    bytes: strToU8(text).length,
    sha256: createHash('sha256').update(text).digest('hex'),
  }));
  const contents = {
    format: BUNDLE_FORMAT,
    program: 'test',
    madeAt: '2026-01-01T00:00:00.000Z',
    files: listed,
  };
  const zipped: Zippable = Object.fromEntries(
    Object.entries(files).map(([name, text]) => [name, strToU8(text)]),
  );
  return zipSync({ ...zipped, 'bundle.json': strToU8(JSON.stringify(contents)) });
}

describe('a bundle with the club’s paddles', () => {
  it('carries them in a file of their own and takes each in once; an older bundle has none', () => {
    const from = filledStore();
    const bytes = bundleOf(from);
    expect(JSON.parse(strFromU8(unzipSync(bytes)['paddles.json']!))).toMatchObject([
      { paddle: inventedPaddle() },
    ]);
    const into = temporaryStore();
    expect(mergeIn(into, read(bytes)).paddles).toMatchObject({ added: 1, same: 0 });
    expect(paddles.list(into, page)).toEqual(paddles.list(from, page));
    expect(mergeIn(into, read(bytes)).paddles).toMatchObject({ added: 0, same: 1 });
    expect(read(packed({ 'boats.json': '[]' }))).toEqual([]);
  });

  it('is refused where a paddle is none', () => {
    const wrong = [{ id: crypto.randomUUID(), paddle: { name: 'Reed', lengthM: 9, bladeLengthM: 0.5 } }];
    expect(() => read(packed({ 'paddles.json': JSON.stringify(wrong) }))).toThrow('paddle.lengthM');
  });
});

describe('a bundle with photographs', () => {
  function withPhoto() {
    const from = filledStore();
    const boatId = boats.list(from, page)[0]!.id;
    const photo = addPhoto(from, { boatId, caption: 'Port side', bytes: inventedPicture() });
    if (typeof photo === 'string') throw new Error(photo);
    return { from, boatId, photo, name: `photos/${photo.id}.png` };
  }

  it('carries each as a file of its own that any viewer opens, and takes it in once', () => {
    const { from, boatId, photo, name } = withPhoto();
    const bytes = bundleOf(from);
    expect(Buffer.from(unzipSync(bytes)[name]!).equals(inventedPicture())).toBe(true);
    const into = temporaryStore();
    expect(mergeIn(into, read(bytes)).photos).toMatchObject({ added: 1, same: 0 });
    expect(listPhotos(into, boatId)).toEqual([photo]);
    expect(openPhoto(into, photo.id)?.bytes.equals(inventedPicture())).toBe(true);
    expect(mergeIn(into, read(bytes)).photos).toMatchObject({ added: 0, same: 1 });
  });

  it('is refused when one is missing, not named by a boat, or no picture', () => {
    const { from, name } = withPhoto();
    const texts = Object.fromEntries(
      Object.entries(unzipSync(bundleOf(from)))
        .filter(([file]) => file !== 'bundle.json' && file !== name)
        .map(([file, bytes]) => [file, Buffer.from(bytes).toString('utf8')]),
    );
    expect(() => read(packed(texts))).toThrow('is missing');
    expect(() => read(packed({ ...texts, [name]: 'GIF89a' }))).toThrow('is not a picture');
    const other = `photos/${crypto.randomUUID()}.png`;
    expect(() => read(packed({ 'boats.json': '[]', [other]: 'x' }))).toThrow('does not belong there');
  });

  it('carries everything an athlete ever measured', () => {
    const from = temporaryStore();
    const { id } = athletes.save(from, inventedAthlete());
    saveMeasuring(from, id, { takenOn: '2024-04-01', statureM: 1.5, massKg: null, tape: {} });
    const into = temporaryStore();
    mergeIn(into, read(bundleOf(from)));
    expect(listMeasurings(into, id)).toEqual(listMeasurings(from, id));
    expect(listMeasurings(into, id)).toHaveLength(2);
  });
});

describe('a bundle', () => {
  it('carries everything to an empty store, and is an ordinary zip of JSON', () => {
    const from = filledStore();
    const bytes = bundleOf(from);
    const into = temporaryStore();
    mergeIn(into, read(bytes));
    expect(readIncoming(into.db).items).toEqual(readIncoming(from.db).items);
    const names = Object.keys(unzipSync(bytes));
    expect(names).toEqual(
      expect.arrayContaining(['READ-ME.txt', 'athletes.json', 'boats.json', 'bundle.json']),
    );
    expect(names.filter((name) => name.startsWith('fits/'))).toHaveLength(3);
  });

  it('carries rows that no longer read as they stood', () => {
    const store = filledStore();
    store.db.exec(`UPDATE athletes SET athlete = '{"half":'||'1}'`);
    expect(athletes.list(store, { archived: false, search: '', limit: 9, offset: 0 })).toEqual([]);
    const files = unzipSync(bundleOf(store));
    expect(Buffer.from(files['unreadable/athletes-1.txt']!).toString()).toBe('{"half":1}');
  });

  it('with rows of any table that no longer read is read again all the same', () => {
    const store = filledStore();
    const add = store.db.prepare(
      "INSERT INTO quarantine (table_name, row_id, problem, raw, found_at) VALUES (?, 'x', 'p', ?, '2026-03-02T09:00:00.000Z')",
    );
    const tables = store.db
      .prepare("SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%'")
      .pluck()
      .all() as string[];
    for (const table of tables) add.run(table, 'raw \ud800 text');
    expect(read(bundleOf(store)).length).toBeGreaterThan(0);
  });

  it('made by a later version says so, whatever else is different in it', () => {
    const later = (files: Record<string, string>) => {
      const contents = { format: 'kneelwright-bundle/999', program: '9', madeAt: 'then', files: [] };
      return zipSync(
        Object.fromEntries(
          Object.entries({ ...files, 'bundle.json': JSON.stringify(contents) }).map(([name, text]) => [
            name,
            strToU8(text),
          ]),
        ),
      );
    };
    const cases: Record<string, string>[] = [{}, { 'athletes.json': '{"quite":"different"}' }];
    for (const files of cases) {
      expect(() => read(later(files))).toThrow(/ade by a newer Kneelwright/);
    }
  });

  it('written before there were trials is taken in as it always was', () => {
    const from = filledStore();
    const [, fit] = read(bundleOf(from)).filter(({ kind }) => kind === 'fit');
    const { trials: _, ...item } = fit!.item as IncomingFit;
    const older = {
      ...item,
      revisions: item.revisions.map(({ answers: _answers, ...revision }) => revision),
    };
    const into = temporaryStore();
    mergeIn(into, read(packed({ [`fits/${item.id}.json`]: JSON.stringify(older) })));
    expect(readIncoming(into.db).items).toEqual([
      {
        kind: 'fit',
        item: { ...item, trials: [], revisions: item.revisions.map((r) => ({ ...r, answers: [] })) },
      },
    ]);
  });

  it('that is cut off anywhere is refused', () => {
    const whole = bundleOf(filledStore());
    const directory = whole.length - 900;
    for (let end = 0; end < directory; end += 97) {
      expect(() => read(whole.subarray(0, end)), `cut at ${end}`).toThrow();
    }
  });

  it('in which any byte of content was turned is refused, or reads as before', () => {
    const whole = bundleOf(filledStore());
    const before = JSON.stringify(read(whole));
    for (let at = 0; at < whole.length; at += 53) {
      const turned = Uint8Array.from(whole);
      turned[at]! ^= 0x11;
      let after: string | null = null;
      try {
        after = JSON.stringify(read(turned));
      } catch {
        continue;
      }
      expect(after, `byte ${at}`).toBe(before);
    }
  });

  it.each([
    ['../../evil.json', 'does not belong there'],
    ['/etc/passwd', 'does not belong there'],
    ['fits\\..\\..\\x.json', 'does not belong there'],
    ['fits/../athletes.json', 'does not belong there'],
    ['fits/not-a-fit.json', 'does not belong there'],
  ])('holding a file named %s is refused', (name, why) => {
    expect(() => read(packed({ [name]: '{}' }))).toThrow(why);
  });

  it('holding a file named __proto__ is refused', () => {
    const named = Buffer.from(packed({ xxprotoxx: '{}' }));
    for (let at = named.indexOf('xxprotoxx'); at >= 0; at = named.indexOf('xxprotoxx'))
      named.write('__proto__', at);
    expect(() => read(named)).toThrow('does not belong there');
  });

  it('that swells is stopped at the limit, long before it is unpacked', () => {
    const bomb = zipSync({ 'athletes.json': new Uint8Array(BUNDLE_LIMITS.file + 1) }, { level: 9 });
    expect(bomb.length).toBeLessThan(100_000);
    let unpackedBytes = 0;
    expect(() => {
      for (const file of unpackBundle(packedBytes(bomb))) unpackedBytes += file.bytes.length;
    }).toThrow('is too large');
    expect(unpackedBytes).toBe(0);
  });

  it('that swells over many files is stopped at the limit for all of them', () => {
    const files = Object.fromEntries(
      Array.from(
        { length: 40 },
        () => [`fits/${crypto.randomUUID()}.json`, new Uint8Array(100_000)] as const,
      ),
    );
    const limits = { ...BUNDLE_LIMITS, unpacked: 2 * 1024 * 1024 };
    let unpackedBytes = 0;
    expect(() => {
      for (const file of unpackBundle(packedBytes(zipSync(files)), limits))
        unpackedBytes += file.bytes.length;
    }).toThrow('is too large; at most 2 MB');
    expect(unpackedBytes).toBeLessThanOrEqual(limits.unpacked);
  });

  it('with one file twice, one missing, one too many, or a wrong digest is refused', () => {
    const twice = Buffer.from(packed({ 'boats.json': '[]', 'coats.json': '[]' }));
    for (let at = twice.indexOf('coats'); at >= 0; at = twice.indexOf('coats')) twice.write('b', at);
    expect(() => read(twice)).toThrow('twice');
    const oneAfterAnother = Buffer.concat([packed({ 'boats.json': '[]' }), packed({ 'boats.json': '[]' })]);
    expect(() => read(oneAfterAnother)).toThrow(/damaged/i);
    const digest = createHash('sha256').update('[]').digest('hex');
    const listing = (files: unknown) =>
      strToU8(JSON.stringify({ format: BUNDLE_FORMAT, program: 't', madeAt: '2026-01-01T00:00:00Z', files }));
    const boat = { name: 'boats.json', bytes: 2, sha256: digest };
    expect(() => read(zipSync({ 'bundle.json': listing([boat]) }))).toThrow('is missing');
    expect(() => read(zipSync({ 'boats.json': strToU8('[]'), 'bundle.json': listing([]) }))).toThrow(
      'does not belong there',
    );
    expect(() => read(zipSync({ 'boats.json': strToU8('[ ]'), 'bundle.json': listing([boat]) }))).toThrow(
      'is not as it was written',
    );
    expect(() => read(zipSync({ 'boats.json': strToU8('[]') }))).toThrow('is missing');
  });

  it('is no way to change what every object inherits', () => {
    const item = JSON.stringify([{ id: crypto.randomUUID(), athlete: inventedAthlete() }]).replace(
      '"athlete":{',
      '"__proto__":{"polluted":1},"athlete":{"__proto__":{"polluted":1},"constructor":{"prototype":{"polluted":1}},',
    );
    expect(() => read(packed({ 'athletes.json': item }))).toThrow('not known here');
    expect(({} as { polluted?: number }).polluted).toBe(undefined);
  });

  it('of JSON nested without end, or not JSON, or not UTF-8, is refused', () => {
    expect(() => read(packed({ 'athletes.json': '['.repeat(5_000_000) }))).toThrow('is not JSON');
    expect(() => read(packed({ 'boats.json': `${'['.repeat(100_000)}${']'.repeat(100_000)}` }))).toThrow();
    expect(() => read(zipSync({ 'bundle.json': Uint8Array.of(0xff, 0xfe, 0x5b) }))).toThrow(
      'is not JSON in UTF-8',
    );
  });

  it('with a waiting value that is no JSON is refused, before any of it is merged', () => {
    const from = temporaryStore();
    athletes.save(from, inventedAthlete('Half Written'));
    const [{ item }] = read(bundleOf(from)).filter(({ kind }) => kind === 'athlete') as [
      Extract<Incoming, { kind: 'athlete' }>,
    ];
    const waits = (value: string) => ({
      seen: { other: 1 },
      writes: [{ store: 'other', counter: 1, at: '' }],
      others: [{ store: 'third', counter: 2, at: '', value }],
    });
    const bundle = (value: string) => {
      const versions = { ...item.versions!, fields: { massKg: waits(value) } };
      return packed({ 'athletes.json': JSON.stringify([{ ...item, versions }]) });
    };
    expect(read(bundle('61'))).toHaveLength(1);
    expect(() => read(bundle('61 kg'))).toThrow(/damaged/i);
  });

  it('that is no zip at all is refused', () => {
    for (const bytes of [new Uint8Array(), strToU8('SQLite format 3'), new Uint8Array(5000)]) {
      expect(() => read(bytes)).toThrow('Not a bundle');
    }
  });
});
