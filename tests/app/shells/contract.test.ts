import { existsSync } from 'node:fs';
import { join } from 'node:path';
import Papa from 'papaparse';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type CallName, contract } from '../../../app/contract/contract.ts';
import { inventedAthlete, inventedBoat, inventedFit, inventedPaddle, inventedPicture } from '../invented.ts';
import { temporaryFolder } from '../temporary.ts';
import { type ThroughElectron, throughElectron } from './through-electron.ts';
import { throughLoopback } from './through-loopback.ts';
import { value, type WayIn } from './way-in.ts';

const called = new Set<CallName>();

/** Every test below runs through both shells: the loopback server, and Electron's main code on its stand-in. */
describe.each([
  ['loopback', throughLoopback],
  ['electron', throughElectron],
] as const)('the contract through %s', (shell, open) => {
  let folder: string;
  let way: WayIn;
  const call: WayIn['call'] = (name, input) => {
    called.add(name);
    return way.call(name, input);
  };
  beforeAll(async () => {
    folder = temporaryFolder();
    way = await open(folder);
    if (shell === 'electron') {
      (way as ThroughElectron).standIn.choices.save = join(folder, 'everything.kneelwright');
    }
  });
  afterAll(() => way.close());

  it('begins empty and takes the demo club once', async () => {
    expect(value(await call('program.state', {}))).toMatchObject({
      shell,
      empty: true,
      problems: [],
      recovery: null,
    });
    const { fitId } = value(await call('demo.install', {}));
    expect(value(await call('fits.open', { id: fitId })).revisions.length).toBeGreaterThan(0);
    expect(await call('demo.install', {})).toMatchObject({ ok: false, error: { code: 'conflict' } });
    expect(value(await call('program.state', {})).empty).toBe(false);
  });

  it('keeps athletes, boats and paddles: made, changed, set aside, brought back', async () => {
    for (const kind of ['athletes', 'boats', 'paddles'] as const) {
      const made =
        kind === 'athletes'
          ? value(await call('athletes.save', { athlete: inventedAthlete('Ægir Þorpari') }))
          : kind === 'boats'
            ? value(await call('boats.save', { boat: inventedBoat('Ægir Þorpari') }))
            : value(await call('paddles.save', { paddle: inventedPaddle('Ægir Þorpari') }));
      const { id } = made;
      const listed = async (archived: boolean) =>
        value(await call(`${kind}.list`, { search: 'aegir thorp', archived })).map((record) => record.id);
      expect(await listed(false)).toEqual([id]);
      expect(value(await call(`${kind}.open`, { id }))).toEqual(made);
      expect(value(await call(`${kind}.archive`, { id })).archived).toBe(true);
      expect(await listed(false)).toEqual([]);
      expect(await listed(true)).toEqual([id]);
      expect(value(await call(`${kind}.restore`, { id })).archived).toBe(false);
    }
  });

  it('keeps what was measured on earlier days, but not over the present body', async () => {
    const measuredOn = '2026-02-03';
    const { id: athleteId } = value(
      await call('athletes.save', { athlete: inventedAthlete('Grown Enough', { measuredOn }) }),
    );
    const earlier = { takenOn: '2025-02-03', statureM: 1.6, massKg: null, tape: {} };
    const both = value(await call('measurings.save', { athleteId, measuring: earlier }));
    expect(both.map(({ takenOn }) => takenOn)).toEqual(['2025-02-03', measuredOn]);
    expect(value(await call('measurings.list', { athleteId }))).toEqual(both);
    // What is entered of the same day later stands beside it.
    const armSpan = { valueM: 1.62 };
    for (const [more, known] of [
      [
        { statureM: null, massKg: 51, tape: { armSpan } },
        { statureM: 1.6, massKg: 51, tape: { armSpan } },
      ],
      [
        { statureM: 1.61, massKg: null, tape: {} },
        { statureM: 1.61, massKg: 51, tape: { armSpan } },
      ],
    ])
      expect(
        value(await call('measurings.save', { athleteId, measuring: { ...earlier, ...more! } }))[0],
      ).toEqual({ ...earlier, ...known });
    const present = { ...earlier, takenOn: measuredOn };
    for (const refused of [
      await call('measurings.save', { athleteId, measuring: present }),
      await call('measurings.remove', { athleteId, takenOn: measuredOn }),
    ]) {
      expect(refused).toMatchObject({ ok: false, error: { code: 'not-allowed' } });
    }
    expect(value(await call('measurings.remove', { athleteId, takenOn: '2025-02-03' }))).toHaveLength(1);
    const gone = await call('measurings.remove', { athleteId, takenOn: '2025-02-03' });
    expect(gone).toMatchObject({ ok: false, error: { code: 'not-found' } });
  });

  it('takes in many athletes at once, after a backup, and hands a table out as CSV', async () => {
    const made = ['Table One', 'Table Two'].map((name) => inventedAthlete(name));
    const taken = value(await call('athletes.import', { athletes: made }));
    expect(taken).toMatchObject({ saved: 2, presentKeptAs: { cause: 'before-import' } });
    const listed = value(await call('athletes.list', { search: 'table' }));
    expect(listed.map(({ athlete }) => athlete.name)).toEqual(['Table One', 'Table Two']);
    const rows = [['Name'], ['Þóra, "the tall"'], ['=1+1']];
    const bytes = await way.fetchDelivery(value(await call('tables.export', { name: 'Some rows', rows })));
    const text = Buffer.from(bytes).toString('utf8');
    expect(text.startsWith('\u{feff}')).toBe(true);
    expect(Papa.parse(text.slice(1)).data).toEqual([['Name'], ['Þóra, "the tall"'], ["'=1+1"]]);
  });

  it('keeps photographs of a boat, and knows who is fitted in it', async () => {
    const { id, boat } = value(await call('boats.save', { boat: inventedBoat('Pictured') }));
    const data = inventedPicture().toString('base64');
    const photo = value(await call('photos.add', { boatId: id, caption: 'Port side', data }));
    expect(value(await call('photos.open', { id: photo.id }))).toEqual({ mime: 'image/png', data });
    const changed = value(await call('photos.describe', { id: photo.id, caption: 'Starboard' }));
    expect(value(await call('photos.list', { boatId: id }))).toEqual([changed]);
    const text = Buffer.from('no picture').toString('base64');
    const refused = await call('photos.add', { boatId: id, caption: '', data: text });
    expect(refused).toMatchObject({ ok: false, error: { code: 'bad-input' } });
    value(await call('photos.remove', { id: photo.id }));
    expect(value(await call('photos.list', { boatId: id }))).toEqual([]);
    const { id: athleteId } = value(await call('athletes.save', { athlete: inventedAthlete('Pictured') }));
    const pictured = value(await call('photos.add', { boatId: id, caption: '', data, athleteId }));
    const blank = { boat: {}, joints: {}, confirmed: false, shown: false, faceSeen: false };
    const study = { seat: 0, moment: 'ready' as const, image: { width: 4, height: 3 }, ...blank };
    const studied = value(await call('photos.study', { id: pictured.id, study }));
    expect(value(await call('photos.ofAthlete', { athleteId }))).toEqual([studied]);
    expect(value(await call('boats.fits', { id }))).toEqual([]);
    expect(value(await call('boats.stock', { id }))).toEqual({ pads: [], rests: [] });
    const sections = value(await call('boats.sections', { id, format: 'svg', paper: 'A4' }));
    expect(Buffer.from(await way.fetchDelivery(sections)).toString('utf8')).toContain('<svg');
    const fit = { ...inventedFit({ name: 'In the pictured one' }), boat };
    const made = value(await call('fits.create', { fit }));
    expect(value(await call('boats.fits', { id })).map((one) => one.id)).toEqual([made.id]);
  });

  it('keeps a fit through draft, revision, discard and archive', async () => {
    const made = value(await call('fits.create', { fit: inventedFit() }));
    const moved = inventedFit({ padAftM: 0.14 });
    const draft = value(await call('drafts.save', { id: made.id, fit: moved, basedOn: made.draftSavedAt }));
    expect(value(await call('fits.open', { id: made.id }))).toMatchObject({
      fit: moved,
      draftSavedAt: draft.savedAt,
    });
    const revision = value(await call('revisions.save', { fitId: made.id, fit: moved, name: 'Pad aft' }));
    expect(value(await call('revisions.open', { id: revision.id }))).toEqual({ revision, fit: moved });
    expect(value(await call('revisions.list', { fitId: made.id, before: 2 }))).toEqual([revision]);
    await call('drafts.save', { id: made.id, fit: inventedFit({ padAftM: 0.2 }) });
    expect(value(await call('drafts.discard', { id: made.id }))).toMatchObject({
      fit: moved,
      draftSavedAt: null,
    });
    expect(value(await call('fits.archive', { id: made.id })).archived).toBe(true);
    expect(value(await call('fits.restore', { id: made.id })).archived).toBe(false);
    expect(value(await call('fits.list', { search: 'first try' })).map((fit) => fit.id)).toEqual([made.id]);
  });

  it('keeps trials, tells an athlete’s timeline, and finds everything again', async () => {
    const { athlete } = value(await call('athletes.save', { athlete: inventedAthlete('Úna Brackwater') }));
    const fit = inventedFit({ athlete, name: 'Úna in spring' });
    const { id: fitId } = value(await call('fits.create', { fit }));
    const revision = value(await call('revisions.save', { fitId, fit, name: 'First' }));
    const observation = { kind: 'boat', sign: 'bowDigs', strength: 2 } as const;
    const trial = { seat: 0, heldOn: '2026-05-02', observations: [observation], notes: 'Under at pace' };
    const kept = value(await call('trials.save', { revisionId: revision.id, trial }));
    const answers = [{ trialId: kept.id, observation }];
    expect(value(await call('revisions.save', { fitId, fit, name: 'Second', answers })).answers).toEqual(
      answers,
    );
    expect(value(await call('trials.archive', { id: kept.id })).archived).toBe(true);
    expect(value(await call('trials.restore', { id: kept.id })).archived).toBe(false);
    expect(value(await call('trials.list', { fitId }))).toMatchObject([{ id: kept.id }]);
    expect(
      await call('trials.save', { revisionId: revision.id, trial: { ...trial, seat: 3 } }),
    ).toMatchObject({
      ok: false,
      error: { code: 'not-allowed' },
    });
    const timeline = value(await call('athletes.timeline', { id: athlete.id! }));
    expect(timeline.map(({ kind }) => kind)).toEqual(['revision', 'trial', 'revision']);
    expect(value(await call('athletes.fits', { id: athlete.id! }))).toMatchObject([{ id: fitId, seat: 0 }]);
    const found = value(await call('things.find', { text: 'UNA brackwater' }));
    expect(found.map(({ kind }) => kind).sort()).toEqual(['athlete', 'fit']);
    expect(value(await call('things.find', { text: 'under at pace' }))).toMatchObject([
      { id: kept.id, fitId },
    ]);
  });

  it('exports everything, and takes it in again as the same', async () => {
    const bytes = await way.fetchDelivery(value(await call('bundle.export', {})));
    const upload = await way.offer(bytes);
    const preview = value(await call('bundle.preview', { upload }));
    expect(await call('bundle.unlock', { handle: crypto.randomUUID(), passphrase: 'x' })).toMatchObject({
      ok: false,
      error: { code: 'not-found' },
    });
    if (preview.kind !== 'ready') throw new Error('the bundle was not read');
    expect(preview.changes).toMatchObject({
      athletes: { added: 0, updated: 0 },
      fits: { added: 0, updated: 0 },
    });
    const taken = value(await call('bundle.import', { handle: preview.handle }));
    expect(taken.changes).toEqual(preview.changes);
    expect(taken.presentKeptAs.cause).toBe('before-import');
  });

  it('puts a fit on paper, for the boatbuilder and for the athlete', async () => {
    const revision = { number: 1, keptAt: '2026-05-04T16:20:00Z' };
    for (const wanted of [
      { kind: 'set-out-sheet', seat: 0, paper: 'A4' },
      { kind: 'take-home', seat: 0, paper: 'Letter', before: null },
    ] as const) {
      const made = value(await call('paper.export', { fit: inventedFit(), revision, wanted }));
      const bytes = await way.fetchDelivery(made.delivery);
      expect(Buffer.from(bytes.subarray(0, 8)).toString('latin1')).toBe('%PDF-1.7');
      expect(made.unprintable).toEqual([]);
    }
  });

  it('takes a backup, and restores it after more was done', async () => {
    const backup = value(await call('backups.take', {}));
    const { id } = value(await call('athletes.save', { athlete: inventedAthlete('Too late') }));
    const { presentKeptAs } = value(await call('backups.restore', { name: backup.name, how: 'replace' }));
    const ids = async () => value(await call('athletes.list', {})).map((athlete) => athlete.id);
    expect(await ids()).not.toContain(id);
    value(await call('backups.restore', { name: presentKeptAs.name, how: 'bring-back' }));
    expect(await ids()).toContain(id);
    const names = value(await call('backups.list', {})).map(({ name }) => name);
    expect(names).toEqual(expect.arrayContaining([backup.name, presentKeptAs.name]));
  });

  it('erases an athlete only when the name is given', async () => {
    const { id, athlete } = value(await call('athletes.save', { athlete: inventedAthlete('Grimpa Vell') }));
    await call('fits.create', { fit: inventedFit({ name: 'Grimpa alone', athlete }) });
    expect(value(await call('athletes.previewErase', { id })).fits).toEqual(['Grimpa alone']);
    expect(await call('athletes.erase', { id, name: 'Grimpa' })).toMatchObject({
      ok: false,
      error: { code: 'not-allowed' },
    });
    const report = value(await call('athletes.erase', { id, name: 'Grimpa Vell' }));
    expect(report).toMatchObject({ fits: ['Grimpa alone'], copiesLeft: [] });
    expect(value(await call('fits.list', { search: 'grimpa' }))).toEqual([]);
    expect(value(await call('athletes.erased', { ids: [crypto.randomUUID(), id] }))).toEqual([id]);
  });

  it('keeps how things are shown, apart from the club’s own data', async () => {
    const first = value(await call('display.read', {}));
    expect(first).toMatchObject({ theme: 'system', length: 'cm', screens: [] });
    const chosen = {
      ...first,
      theme: 'dark' as const,
      length: 'in' as const,
      screens: [{ screen: '1440 × 900 at 2', pixelsPerMm: 4.33 }],
    };
    expect(value(await call('display.keep', chosen))).toEqual(chosen);
    expect(value(await call('display.read', {}))).toEqual(chosen);
  });

  it('joins two entries of one person, and takes them apart', async () => {
    const [one, two] = await Promise.all(
      ['Once Entered', 'Twice Entered'].map(async (name) => {
        return value(await call('athletes.save', { athlete: inventedAthlete(name) })).id;
      }),
    );
    expect(value(await call('athletes.join', { id: two!, into: one! })).joined).toHaveLength(1);
    expect(await call('athletes.join', { id: one!, into: two! })).toMatchObject({ ok: false });
    expect(value(await call('athletes.entries', { id: two! })).joinedInto).toMatchObject({ id: one });
    expect(value(await call('athletes.takeApart', { id: two! })).joinedInto).toBe(null);
  });

  it('has nothing to decide where nothing was changed twice, and says so', async () => {
    expect(value(await call('conflicts.list', {}))).toEqual([]);
    const choice = { kind: 'athlete', id: crypto.randomUUID(), path: 'massKg', value: '61' } as const;
    expect(await call('conflicts.decide', choice)).toMatchObject({ ok: false, error: { code: 'conflict' } });
  });

  it('shares nothing where there is no library, and joins none without an invitation', async () => {
    const none = { joined: null, waiting: 0, problem: null };
    expect(value(await call('library.state', {}))).toMatchObject(none);
    expect(value(await call('library.preview', { code: 'no code' }))).toEqual({ kind: 'unreadable' });
    expect(await call('library.join', { code: 'no code' })).toMatchObject({
      ok: false,
      error: { code: 'bad-input' },
    });
    expect(value(await call('library.call', {}))).toMatchObject(none);
    expect(value(await call('library.open', { fitId: crypto.randomUUID() }))).toMatchObject(none);
    expect(value(await call('library.groups', {}))).toEqual({ groups: [] });
    expect(value(await call('library.makeGroup', { name: 'Juniors' }))).toEqual({ groups: [] });
    const change = { groupId: crypto.randomUUID(), athleteId: crypto.randomUUID(), isIn: true };
    expect(value(await call('library.setInGroup', change))).toEqual({ groups: [] });
    expect(await call('library.discard', { athleteId: crypto.randomUUID() })).toMatchObject({ ok: false });
    expect(value(await call('library.leave', {}))).toMatchObject(none);
  });

  it('has no work under way when none was asked for', async () => {
    expect(value(await call('work.progress', {}))).toBe(null);
    expect(value(await call('work.cancel', {}))).toEqual({ asked: false });
  });

  it('refuses what it does not know and what is malformed, one problem for each thing wrong', async () => {
    expect(await way.send('athletes.explode', {})).toMatchObject({
      ok: false,
      error: { code: 'unknown-call' },
    });
    expect(await way.send('__proto__', {})).toMatchObject({ ok: false, error: { code: 'unknown-call' } });
    expect(await way.send(null, {})).toMatchObject({ ok: false, error: { code: 'unknown-call' } });
    const athlete = { ...inventedAthlete(), massKg: 900, side: 'up', shoe: 42 };
    const refused = await way.send('athletes.save', { athlete });
    expect(refused).toEqual({
      ok: false,
      error: {
        code: 'bad-input',
        message: expect.stringContaining('Nothing was changed'),
        problems: [
          { path: 'athlete.side', message: '"up" is not known here; allowed: left, right' },
          { path: 'athlete.massKg', message: '900 is too large; at most 250 kg' },
          {
            path: 'athlete',
            message: expect.stringContaining('"shoe" is not known here; allowed: id, name'),
          },
        ],
      },
    });
    expect(await way.send('fits.open', { id: crypto.randomUUID() })).toMatchObject({
      ok: false,
      error: { code: 'not-found' },
    });
  });

  it('ends when asked, and leaves one whole file', async () => {
    expect(value(await call('program.quit', {}))).toEqual({ quitting: true });
    await expect.poll(() => way.quitAsked()).toBe(true);
    await way.close();
    expect(existsSync(join(folder, 'data/kneelwright.db'))).toBe(true);
    expect(existsSync(join(folder, 'data/kneelwright.db-wal'))).toBe(false);
  });
});

describe('the contract', () => {
  it('has no entry that the tests above leave out', () => {
    expect([...called].sort()).toEqual(Object.keys(contract).sort());
  });
});
