import type { TrialRecord } from '../../app/contract/trials.ts';
import { createFit, openFit, saveDraft, setFitArchived } from '../../app/store/fits.ts';
import { listMeasurings, removeMeasuring, saveMeasuring } from '../../app/store/measurings.ts';
import { addPhoto, describePhoto, listPhotos, removePhoto } from '../../app/store/photos.ts';
import { listRevisions, saveRevision } from '../../app/store/revisions.ts';
import { athletes, boats, paddles } from '../../app/store/roster.ts';
import type { Store } from '../../app/store/store.ts';
import { listTrials, saveTrial } from '../../app/store/trials.ts';
import { type Athlete, LIMITED_JOINTS } from '../../core/document/athlete-schema.ts';
import type { Boat } from '../../core/document/boat-schema.ts';
import type { StockPaddleDocument } from '../../core/document/stock-paddle-schema.ts';
import { trialSchema } from '../../core/trial/observation.ts';
import {
  inventedAthlete,
  inventedBoat,
  inventedFit,
  inventedPaddle,
  inventedPicture,
} from '../app/invented.ts';

const every = { archived: false, search: '', limit: 1000, offset: 0 };
/** Records of one kind, at most: enough for stores to meet on the same ones. */
const MOST = 6;

/**
 * A form that somebody opens now; null where there is nothing to open. What it gives saves one change of what was opened, on
 * top of whatever happened meanwhile.
 */
export function openForm(store: Store, random: () => number): ((random: () => number) => void) | null {
  const { pick } = chance(random);
  const athlete = pick(athletes.list(store, every));
  const boat = pick(boats.list(store, every));
  const paddle = pick(paddles.list(store, every));
  const fit = pick(fitIds(store));
  const trial = fit === undefined ? undefined : pick(listTrials(store, fit));
  const forms = [
    trial && ((at: () => number) => saveTrialForm(store, trial, at)),
    athlete && ((at: () => number) => saveAthlete(store, { ...athlete.athlete, id: athlete.id }, at, 'form')),
    boat && ((at: () => number) => saveBoat(store, { ...boat.boat, id: boat.id }, at, 'form')),
    paddle && ((at: () => number) => savePaddle(store, { ...paddle.paddle, id: paddle.id }, at, 'form')),
  ].filter((form) => form !== undefined);
  return pick(forms) ?? null;
}

function chance(random: () => number) {
  return {
    pick: <T>(list: readonly T[]): T | undefined => list[Math.floor(random() * list.length)],
    figure: (from: number, to: number) => Math.round((from + (to - from) * random()) * 100) / 100,
  };
}

/** From a form that was opened earlier, or as read just now. */
type From = 'form' | 'now';

function saveAthlete(store: Store, athlete: Athlete, random: () => number, from: From = 'now'): void {
  const { pick, figure } = chance(random);
  const joint = pick(LIMITED_JOINTS)!;
  const others = athlete.limits.filter((limit) => limit.joint !== joint);
  const limit = { joint, maxDeg: Math.round(figure(0, 120)), reason: `because ${figure(0, 99)}` };
  const changes = [
    { massKg: figure(40, 90) },
    { statureM: figure(1.4, 2) },
    { limits: [...others, limit] },
    { limits: others },
    { tape: { ...athlete.tape, armSpan: { valueM: figure(1.3, 2) } } },
    { name: `Athlete ${figure(0, 999)}` },
  ];
  athletes.save(store, { ...athlete, ...pick(changes) }, from === 'form' ? athlete : undefined);
}

function saveBoat(store: Store, boat: Boat, random: () => number, from: From = 'now'): void {
  const { pick, figure } = chance(random);
  const floorboard = { ...boat.floorboard, heightM: figure(0.02, 0.1) };
  const changes = [{ massKg: figure(10, 20) }, { floorboard }, { skinM: figure(0, 0.04) }];
  boats.save(store, { ...boat, ...pick(changes) }, from === 'form' ? boat : undefined);
}

function savePaddle(
  store: Store,
  paddle: StockPaddleDocument,
  random: () => number,
  from: From = 'now',
): void {
  const { pick, figure } = chance(random);
  const changes = [{ lengthM: figure(1.4, 1.8) }, { note: `note ${figure(0, 99)}` }];
  paddles.save(store, { ...paddle, ...pick(changes) }, from === 'form' ? paddle : undefined);
}

function saveTrialForm(store: Store, { id, revisionId, trial }: TrialRecord, random: () => number): void {
  const { pick, figure } = chance(random);
  const changed = { ...trial, ...pick([{ notes: `form ${figure(0, 999)}` }, { wind: 'head' as const }]) };
  saveTrial(store, { id, revisionId, trial: changed, opened: { revisionId, trial } });
}

/** Makes one random edit as a coach would. `random` gives numbers from 0 to 1. */
export function randomEdit(store: Store, random: () => number): void {
  const { pick, figure } = chance(random);
  const listed = [...athletes.list(store, every), ...athletes.list(store, { ...every, archived: true })];

  const editAthlete = () => {
    const record = pick(listed);
    if (!record || listed.length < 2)
      return void athletes.save(store, inventedAthlete(`Athlete ${figure(0, 999)}`));
    saveAthlete(store, { ...record.athlete, id: record.id }, random);
  };
  const archive = () => {
    const record = pick(listed);
    if (record) athletes.setArchived(store, record.id, !record.archived);
    const fit = pick(fitIds(store));
    if (fit) setFitArchived(store, fit, random() < 0.3);
  };
  const editBoat = () => {
    const all = boats.list(store, every);
    const record = pick(all);
    if (!record || all.length < 2) return void boats.save(store, inventedBoat(`Boat ${figure(0, 999)}`));
    saveBoat(store, { ...record.boat, id: record.id }, random);
  };
  const editPhoto = () => {
    const boat = pick(boats.list(store, every));
    const photos = boat ? listPhotos(store, boat.id) : [];
    const photo = pick(photos);
    if (boat && photos.length < 2)
      addPhoto(store, { boatId: boat.id, caption: `p ${figure(0, 99)}`, bytes: inventedPicture() });
    else if (photo && random() < 0.7) describePhoto(store, photo.id, `caption ${figure(0, 999)}`);
    else if (photo) removePhoto(store, photo.id);
  };
  const editPaddle = () => {
    const record = pick(paddles.list(store, every));
    if (!record) return void paddles.save(store, inventedPaddle());
    savePaddle(store, { ...record.paddle, id: record.id }, random);
  };
  const editMeasuring = () => {
    const record = pick(listed);
    if (!record) return;
    const days = listMeasurings(store, record.id);
    const day = pick(days);
    if (day && random() < 0.2) return void removeMeasuring(store, record.id, day.takenOn);
    const takenOn = `202${Math.floor(random() * 5)}-04-01`;
    saveMeasuring(store, record.id, {
      takenOn,
      statureM: figure(1.2, 1.9),
      massKg: figure(30, 80),
      tape: {},
    });
  };
  const editFit = () => {
    const ids = fitIds(store);
    const id = pick(ids);
    if (!id || ids.length < 2) return void createFit(store, inventedFit({ name: `Fit ${figure(0, 999)}` }));
    const opened = openFit(store, id);
    if (typeof opened === 'string') return;
    const { fit } = opened;
    const [seat] = fit.seats;
    const changes = [
      { seats: [{ ...seat!, kneePad: { ...seat!.kneePad, aftM: figure(0.05, 0.3) } }] },
      { seats: [{ ...seat!, rearRest: { ...seat!.rearRest, heightM: figure(0.05, 0.2) } }] },
      { notes: `notes ${figure(0, 999)}` },
      { heelDeg: figure(-3, 3) },
    ];
    const changed = { ...fit, ...pick(changes) };
    if (random() < 0.7) saveDraft(store, { id, fit: changed });
    else saveRevision(store, { fitId: id, fit: changed, name: `rev ${figure(0, 999)}`, reason: '' });
  };
  const editTrial = () => {
    const id = pick(fitIds(store));
    const revision = id && pick(listRevisions(store, id));
    if (!id || !revision) return;
    const trial = trialSchema.parse({
      seat: 0,
      heldOn: '2026-03-04',
      observations: [],
      notes: `felt ${figure(0, 999)}`,
    });
    const known = pick(listTrials(store, id));
    saveTrial(
      store,
      known ? { id: known.id, revisionId: known.revisionId, trial } : { revisionId: revision.id, trial },
    );
  };
  const edits = [
    editAthlete,
    editAthlete,
    editAthlete,
    editBoat,
    editPhoto,
    editPaddle,
    editMeasuring,
    editFit,
    editFit,
    editTrial,
    archive,
  ];
  pick(edits)!();
}

function fitIds(store: Store): string[] {
  return store.db.prepare(`SELECT id FROM fits ORDER BY id LIMIT ${MOST}`).pluck().all() as string[];
}
