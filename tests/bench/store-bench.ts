import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createLoopbackShell } from '../../app/loopback/loopback-shell.ts';
import { dispatch } from '../../app/services/dispatch.ts';
import { openProgram } from '../../app/services/open-program.ts';
import type { Program } from '../../app/services/program.ts';
import { createFit } from '../../app/store/fits.ts';
import { saveRevision } from '../../app/store/revisions.ts';
import { athletes } from '../../app/store/roster.ts';
import { atomically, type Store } from '../../app/store/store.ts';
import { inventedAthlete, inventedFit } from '../app/invented.ts';

/** One thing measured in both stores: medians in milliseconds, through the contract as a page calls it. */
export interface StoreFigure {
  readonly what: string;
  readonly emptyMs: number;
  readonly fullMs: number;
}

/** What the bench found. */
export interface StoreBench {
  readonly athletes: number;
  readonly fits: number;
  readonly revisions: number;
  readonly fileMb: number;
  /** Process start to an open store, in the same process: milliseconds. */
  readonly openStoreMs: { readonly empty: number; readonly full: number };
  readonly figures: readonly StoreFigure[];
}

const ROOT = join(import.meta.dirname, '../..');
const FULL = { athletes: 2000, fitsEach: 2, revisionsEach: 25 };
/** The store that counts as empty holds one of each, so that there is something to open. */
const EMPTY = { athletes: 1, fitsEach: 1, revisionsEach: 1 };
const ROUNDS = 41;
const FIRST = ['Ada', 'Bojan', 'Céline', 'Dagný', 'Eero', 'Fiadh', 'Gergő', 'Ħanna', 'Ilir', 'Jūratė'];
const LAST = [
  'Alderwick',
  'Brzask',
  'Çelebin',
  'Đorić',
  'Eskerod',
  'Fjellvik',
  'Grünhalm',
  'Høyland',
  'Ionesku',
];

/** Lists, searches and opens in a store of 100 000 revisions over 2 000 athletes and in an empty one, side by side. */
export async function storeBench(): Promise<StoreBench> {
  const root = mkdtempSync(join(tmpdir(), 'kneelwright-bench-'));
  try {
    const [empty, full] = [filled(join(root, 'empty'), EMPTY), filled(join(root, 'full'), FULL)];
    const openStoreMs = { empty: openingTime(empty.folder), full: openingTime(full.folder) };
    const [inEmpty, inFull] = [opened(empty.folder), opened(full.folder)];
    const figures: StoreFigure[] = [];
    for (const [what, name, input] of calls()) {
      const emptyMs = await medianOf(inEmpty.program, name, input(empty));
      const fullMs = await medianOf(inFull.program, name, input(full));
      figures.push({ what, emptyMs, fullMs });
    }
    inEmpty.close();
    inFull.close();
    return {
      athletes: FULL.athletes,
      fits: FULL.athletes * FULL.fitsEach,
      revisions: FULL.athletes * FULL.fitsEach * FULL.revisionsEach,
      fileMb: Math.round(statSync(join(full.folder, 'kneelwright.db')).size / 1e5) / 10,
      openStoreMs,
      figures,
    };
  } finally {
    rmSync(root, { recursive: true, force: true });
  }
}

interface Filled {
  readonly folder: string;
  readonly fitId: string;
  readonly revisionId: string;
}

function calls() {
  const nothing = () => ({});
  const page = { limit: 200 };
  return [
    ['athletes: first page', 'athletes.list', () => page],
    ['athletes: search a name', 'athletes.list', () => ({ ...page, search: 'ada alder' })],
    ['athletes: search that finds nothing', 'athletes.list', () => ({ ...page, search: 'zzzz' })],
    ['fits: first page', 'fits.list', () => page],
    ['fits: search a name', 'fits.list', () => ({ ...page, search: 'celebin' })],
    ['fits: search that finds nothing', 'fits.list', () => ({ ...page, search: 'zzzz' })],
    ['fits: last page', 'fits.list', () => ({ ...page, offset: 3900 })],
    ['fit: open', 'fits.open', ({ fitId }: Filled) => ({ id: fitId })],
    ['revision: open', 'revisions.open', ({ revisionId }: Filled) => ({ id: revisionId })],
    ['draft: save', 'drafts.save', ({ fitId }: Filled) => ({ id: fitId, fit: inventedFit() })],
    ['program: state', 'program.state', nothing],
  ] as const;
}

function opened(folder: string) {
  const program = openProgram({ root: ROOT, folder, shell: createLoopbackShell(() => {}) });
  if (program.kind === 'refused') throw new Error(program.sentence);
  return program;
}

/** Filled through the store's own functions, in one transaction and without waiting for the disk. */
function filled(folder: string, size: typeof FULL): Filled {
  const program = opened(folder);
  const { store } = program.program;
  store.db.pragma('synchronous = OFF');
  const ids = atomically(store, () => fill(store, size));
  program.close();
  return { folder, ...ids };
}

function fill(store: Store, size: typeof FULL): { fitId: string; revisionId: string } {
  let last = { fitId: '', revisionId: '' };
  for (let i = 0; i < size.athletes; i++) {
    const name = `${FIRST[i % FIRST.length]} ${LAST[Math.floor(i / FIRST.length) % LAST.length]} ${i}`;
    const { athlete } = athletes.save(store, inventedAthlete(name, { id: randomUUID() }));
    for (let f = 0; f < size.fitsEach; f++) {
      const fit = inventedFit({ name: `Fit ${f}`, athlete });
      const { id } = createFit(store, fit);
      for (let r = 0; r < size.revisionsEach; r++) {
        const saved = saveRevision(store, { fitId: id, fit, name: `Revision ${r}`, reason: '' });
        if (typeof saved !== 'string') last = { fitId: id, revisionId: saved.id };
      }
    }
  }
  return last;
}

function openingTime(folder: string): number {
  const began = performance.now();
  const program = opened(folder);
  const took = performance.now() - began;
  program.close();
  return rounded(took);
}

async function medianOf(program: Program, name: string, input: unknown): Promise<number> {
  const times: number[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const began = performance.now();
    const result = await dispatch(program, name, input);
    times.push(performance.now() - began);
    if (!result.ok) throw new Error(`${name}: ${result.error.message}`);
  }
  return rounded(times.sort((a, b) => a - b)[Math.floor(ROUNDS / 2)]!);
}

function rounded(ms: number): number {
  return Math.round(ms * 100) / 100;
}

if (import.meta.main) console.log(JSON.stringify(await storeBench(), null, 2));
