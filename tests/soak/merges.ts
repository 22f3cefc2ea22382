import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { MEASURED_PATH } from '../../app/changes/record-content.ts';
import { decideConflict, listConflicts } from '../../app/store/conflicts.ts';
import { closeStore, openStore } from '../../app/store/open-store.ts';
import type { Store } from '../../app/store/store.ts';
import { bring, contentOf } from '../app/exchange.ts';
import { random32 } from '../random32.ts';
import { onlooker } from './onlooker.ts';
import { openForm, randomEdit } from './random-edits.ts';

/** What a run of exchanges found. */
export interface MergeResult {
  readonly stores: number;
  readonly edits: number;
  readonly exchanges: number;
  /** Acknowledged field edits that no later one replaced, and that neither stand nor are shown as a conflict. */
  readonly lostFields: number;
  /** Fields that wait for a decision at the end, and decisions that were taken on the way. */
  readonly conflictsShown: number;
  /** Stores whose content differs from the first one's at the end. */
  readonly unequalStores: number;
}

const DAY_MS = 86_400_000;
/** How far a store's clock may be off, days either way. */
const CLOCK_OFF_DAYS = 400;

/**
 * Opens so many stores with wrong clocks, edits them at random, exchanges bundles between random pairs now and then, decides
 * a conflict here and there, lets all meet at the end, and holds what they know against an onlooker's notes.
 */
export function mergesAtRandom(run: { stores: number; edits: number; seed: number }): MergeResult {
  const random = random32(run.seed);
  const root = mkdtempSync(join(tmpdir(), 'kneelwright-merges-'));
  const stores = Array.from({ length: run.stores }, (_, i) => opened(join(root, String(i)), random));
  const watch = onlooker(run.stores);
  const forms = stores.map((): OpenForm | null => null);
  let exchanges = 0;
  let decisions = 0;
  const meet = (into: number, from: number) => {
    bring(stores[into]!, stores[from]!);
    watch.met(into, from);
    exchanges += 1;
  };
  try {
    for (let edit = 0; edit < run.edits; edit++) {
      const at = Math.floor(random() * run.stores);
      const chance = random();
      if (chance < 0.08) meet(at, Math.floor(random() * run.stores));
      else if (chance < 0.12)
        decisions += decideOne(stores[at]!, (field, value) => watch.decided(at, { field, value }), random);
      else if (chance < 0.16) forms[at] = formOf(stores[at]!, random);
      else if (chance < 0.2 && forms[at]) {
        editOne(stores[at]!, (change) => watch.edited(at, change), random, forms[at]);
        forms[at] = null;
      } else editOne(stores[at]!, (change) => watch.edited(at, change), random);
    }
    for (let round = 0; round < 2; round++)
      for (const into of stores.keys()) for (const from of stores.keys()) if (into !== from) meet(into, from);
    return { ...looked(stores, watch.newest(), decisions), exchanges, edits: run.edits };
  } finally {
    for (const store of stores) closeStore(store);
    rmSync(root, { recursive: true, force: true });
  }
}

function opened(folder: string, random: () => number): Store {
  let now = Date.UTC(2026, 2, 2) + (2 * random() - 1) * CLOCK_OFF_DAYS * DAY_MS;
  const opening = openStore(folder, () => {
    now += 1000 + 1e6 * random();
    return Math.round(now);
  });
  if (opening.kind === 'refused') throw new Error(opening.refusal.code);
  // What is looked at here is not the disk.
  opening.store.db.pragma('synchronous = OFF');
  return opening.store;
}

type Change = Parameters<ReturnType<typeof onlooker>['edited']>[1];

/** A form that is open while others edit and files come, and what stood when it was opened. */
interface OpenForm {
  readonly saw: Readonly<Record<string, string>>;
  readonly save: (random: () => number) => void;
}

function formOf(store: Store, random: () => number): OpenForm | null {
  const save = openForm(store, random);
  return save && { saw: contentOf(store, 'as-kept').fields, save };
}

/**
 * What whoever saves a form saw of a field. The measuring that an athlete's own document describes is written with it, after any
 * edit of it: what was unseen of the body waits under the athlete's own field.
 */
function sawIn({ saw }: OpenForm, field: string, stood: string | null): string | null {
  return field.includes(MEASURED_PATH) ? stood : (saw[field] ?? null);
}

/** One edit, or the saving of a form; tells every field that it changed. */
export function editOne(
  store: Store,
  tell: (change: Change) => void,
  random: () => number,
  form: OpenForm | null = null,
): void {
  const before = contentOf(store, 'as-kept');
  const waiting = waitingValues(store);
  if (form) form.save(random);
  else randomEdit(store, random);
  const after = contentOf(store, 'as-kept');
  for (const field of new Set([...Object.keys(before.fields), ...Object.keys(after.fields)])) {
    const [stood, value] = [before.fields[field] ?? null, after.fields[field] ?? null];
    if (stood === value) continue;
    const saw = form ? sawIn(form, field, stood) : stood;
    // What stood and was not seen is not replaced.
    tell({ field, value, saw, waiting: [...(waiting.get(field) ?? []), ...(saw === stood ? [] : [stood])] });
  }
}

/** Fields that wait for a decision, with their values. */
export function waitingValues(store: Store): Map<string, (string | null)[]> {
  return new Map(
    listConflicts(store).map(({ kind, id, path, values }) => [
      `${kind} ${id} ${path}`,
      values.map(({ value }) => value),
    ]),
  );
}

/** Decides a field that waits, if there is one; gives how many it decided. */
export function decideOne(
  store: Store,
  tell: (field: string, value: string | null) => void,
  random: () => number,
): number {
  const open = listConflicts(store);
  const conflict = open[Math.floor(random() * open.length)];
  const chosen = conflict?.values[Math.floor(random() * conflict.values.length)];
  if (!conflict || !chosen) return 0;
  const { kind, id, path } = conflict;
  if (decideConflict(store, { kind, id, path, value: chosen.value }) !== 'decided') return 0;
  tell(`${kind} ${id} ${path}`, chosen.value);
  return 1;
}

function looked(
  stores: readonly Store[],
  newest: readonly { field: string; value: string | null }[],
  decisions: number,
): Omit<MergeResult, 'exchanges' | 'edits'> {
  const [first, ...rest] = stores.map((store) => contentOf(store));
  const shown = waitingValues(stores[0]!);
  const lost = newest.filter(
    ({ field, value }) => ![first!.fields[field] ?? null, ...(shown.get(field) ?? [])].includes(value),
  );
  return {
    stores: stores.length,
    lostFields: lost.length,
    conflictsShown: shown.size + decisions,
    unequalStores: rest.filter((content) => JSON.stringify(content) !== JSON.stringify(first)).length,
  };
}
