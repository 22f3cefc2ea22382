import {
  copyFileSync,
  cpSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createLoopbackShell } from '../../app/loopback/loopback-shell.ts';
import { dispatch } from '../../app/services/dispatch.ts';
import { openProgram } from '../../app/services/open-program.ts';
import type { Program } from '../../app/services/program.ts';
import { STORE_FILE } from '../../app/store/open-store.ts';
import { inventedAthlete, inventedFit } from '../app/invented.ts';
import { random32 } from '../random32.ts';

const ROOT = join(import.meta.dirname, '../..');

/** What a run of damages found. */
export interface DamageResult {
  readonly damages: number;
  /** Damages after which something that had been kept was not there, and no word was said. */
  readonly silent: number;
  /** Damages after which something that had been kept was not there, with or without a word. */
  readonly lossy: number;
  /** Starts that neither opened the store nor said in one sentence why not. */
  readonly speechless: number;
  readonly seed: number;
}

/** Marks of everything that was kept: fits and athletes by id, revisions too. */
type Kept = Map<string, string>;

/** A folder as a day's work leaves it, closed or as a crash leaves it, and what was kept in it. */
interface Ground {
  readonly folder: string;
  readonly older: string;
  readonly other: string;
  readonly kept: Kept;
}

type Damage = readonly [name: string, apply: (folder: string, ground: Ground, random: () => number) => void];

const store = (folder: string) => join(folder, STORE_FILE);

/** Turns one bit of a file over. */
function flipBit(path: string, random: () => number): void {
  if (!existsSync(path)) return;
  const bytes = readFileSync(path);
  if (bytes.length === 0) return;
  const at = Math.floor(random() * bytes.length);
  bytes[at] = bytes[at]! ^ (1 << Math.floor(random() * 8));
  writeFileSync(path, bytes);
}

function scribble(path: string, random: () => number, length: number): void {
  if (!existsSync(path)) return;
  const bytes = readFileSync(path);
  const at = Math.floor(random() * Math.max(1, bytes.length - length));
  bytes.fill(Math.floor(random() * 256), at, at + length);
  writeFileSync(path, bytes);
}

function cut(path: string, random: () => number): void {
  if (existsSync(path)) truncateSync(path, Math.floor(readFileSync(path).length * random()));
}

const remove = (path: string) => rmSync(path, { recursive: true, force: true });
const removeAll = (paths: readonly string[]) => {
  for (const path of paths) remove(path);
};
const backupsOf = (folder: string) =>
  existsSync(join(folder, 'backups'))
    ? readdirSync(join(folder, 'backups')).map((name) => join(folder, 'backups', name))
    : [];

/** What may befall the files of one folder. */
export const DAMAGES: readonly Damage[] = [
  ['the file is gone', (folder) => removeAll(['', '-wal', '-shm'].map((end) => store(folder) + end))],
  ['the file is gone, its log is not', (folder) => remove(store(folder))],
  ['the file is empty', (folder) => writeFileSync(store(folder), '')],
  ['its last 4 KB are gone', (folder) => cutEnd(store(folder), 4096)],
  ['it is cut off', (folder, _ground, random) => cut(store(folder), random)],
  ['its header is noise', (folder, _ground, random) => noise(store(folder), random)],
  ['it is text', (folder) => writeFileSync(store(folder), 'This is no database. '.repeat(300))],
  ['one bit of it', (folder, _ground, random) => flipBit(store(folder), random)],
  ['512 bytes of it', (folder, _ground, random) => scribble(store(folder), random, 512)],
  ['an older one', (folder, ground) => copyFileSync(ground.older, store(folder))],
  ['an older one, without a log', (folder, ground) => replaceWhole(folder, ground.older)],
  ["another store's", (folder, ground) => replaceWhole(folder, ground.other)],
  ['one bit of the log', (folder, _ground, random) => flipBit(`${store(folder)}-wal`, random)],
  ['the log is cut off', (folder, _ground, random) => cut(`${store(folder)}-wal`, random)],
  ['the log is gone', (folder) => remove(`${store(folder)}-wal`)],
  ['one bit of the journal', (folder, _ground, random) => flipBit(join(folder, 'journal'), random)],
  ['the journal is cut off', (folder, _ground, random) => cut(join(folder, 'journal'), random)],
  ['the journal is gone', (folder) => remove(join(folder, 'journal'))],
  ['one bit of the manifest', (folder, _ground, random) => flipBit(join(folder, 'manifest.json'), random)],
  ['the manifest is gone', (folder) => remove(join(folder, 'manifest.json'))],
  ['the backups are gone', (folder) => remove(join(folder, 'backups'))],
  ['its header is noise, nothing is beside it', (folder, _ground, random) => alone(folder, random, 100)],
  ['its first page is noise, nothing is beside it', (folder, _ground, random) => alone(folder, random, 4096)],
  [
    'a backup is cut off',
    (folder, _ground, random) => {
      for (const path of backupsOf(folder)) cut(path, random);
    },
  ],
];

/** The first bytes of a file are noise, and nothing beside it helps. */
function alone(folder: string, random: () => number, length: number): void {
  noise(store(folder), random, length);
  for (const name of ['journal', 'manifest.json', 'backups']) remove(join(folder, name));
}

function cutEnd(path: string, length: number): void {
  truncateSync(path, Math.max(0, readFileSync(path).length - length));
}

function noise(path: string, random: () => number, length = 100): void {
  const bytes = readFileSync(path);
  for (let at = 0; at < Math.min(length, bytes.length); at++) bytes[at] = Math.floor(random() * 256);
  writeFileSync(path, bytes);
}

function replaceWhole(folder: string, by: string): void {
  for (const end of ['-wal', '-shm']) remove(store(folder) + end);
  copyFileSync(by, store(folder));
}

/** Damages a folder in `damages` ways, each from the same state, opens it again and looks for everything that was kept. */
export async function damageAndLook(run: {
  damages: number;
  seed: number;
  report?: (line: string) => void;
}): Promise<DamageResult> {
  const { damages, seed, report = () => {} } = run;
  const random = random32(seed);
  const root = mkdtempSync(join(tmpdir(), 'kneelwright-damages-'));
  const found = { silent: 0, lossy: 0, speechless: 0 };
  try {
    const grounds = [
      await makeGround(join(root, 'a'), 'closed'),
      await makeGround(join(root, 'b'), 'crashed'),
    ];
    for (let i = 0; i < damages; i++) {
      const ground = grounds[Math.floor(i / DAMAGES.length) % grounds.length]!;
      const [name, apply] = DAMAGES[i % DAMAGES.length]!;
      const folder = join(root, 'damaged');
      cpSync(ground.folder, folder, { recursive: true });
      apply(folder, ground, random);
      const looked = await look(folder, ground.kept);
      if (looked === 'speechless') found.speechless += 1;
      else if (looked.lost.length > 0) {
        found.lossy += 1;
        if (looked.said.length === 0) found.silent += 1;
        report(`${name}: ${looked.lost.length} of ${ground.kept.size} lost; ${looked.said.join(' ')}`);
      }
      rmSync(folder, { recursive: true });
    }
  } finally {
    rmSync(root, { recursive: true, force: true });
  }
  return { damages, ...found, seed };
}

const openIn = (folder: string) => openProgram({ root: ROOT, folder, shell: createLoopbackShell(() => {}) });

async function call(program: Program, name: string, input: unknown): Promise<never> {
  const result = await dispatch(program, name, input);
  if (!result.ok) throw new Error(`${name}: ${result.error.message}`);
  return result.value as never;
}

/** Two days' work with a backup after each, and some edits since. */
async function makeGround(place: string, end: 'closed' | 'crashed'): Promise<Ground> {
  const folder = join(place, 'data');
  const opened = openIn(folder);
  if (opened.kind === 'refused') throw new Error(opened.sentence);
  const { program } = opened;
  const kept: Kept = new Map();
  const ids: string[] = [];
  for (let day = 0; day < 3; day++) {
    for (let i = 0; i < 6; i++) await workOn(program, { kept, ids, mark: `day ${day} edit ${i}` });
    if (day < 2) await call(program, 'backups.take', {});
    if (day === 0) copyFileSync(backupsOf(folder)[0]!, join(place, 'older.db'));
  }
  const other = join(place, 'other');
  const otherOpened = openIn(other);
  if (otherOpened.kind === 'open') {
    await workOn(otherOpened.program, { kept: new Map(), ids: [], mark: 'elsewhere' });
    otherOpened.close();
  }
  const left = join(place, 'left');
  if (end === 'crashed') cpSync(folder, left, { recursive: true });
  opened.close();
  const ground = end === 'crashed' ? left : folder;
  return { folder: ground, older: join(place, 'older.db'), other: store(other), kept };
}

async function workOn(
  program: Program,
  { kept, ids, mark }: { kept: Kept; ids: string[]; mark: string },
): Promise<void> {
  const fit = { ...inventedFit({ name: mark }), notes: mark };
  const made = (await call(program, 'fits.create', { fit })) as { id: string };
  ids.push(made.id);
  kept.set(`fit ${made.id}`, mark);
  const athlete = (await call(program, 'athletes.save', { athlete: inventedAthlete(mark) })) as {
    id: string;
  };
  kept.set(`athlete ${athlete.id}`, mark);
  const edited = ids[Math.floor(ids.length / 2)]!;
  const notes = `${mark}, edited`;
  const saved = { id: edited, fit: { ...inventedFit({ name: notes }), notes } };
  await call(program, 'drafts.save', saved);
  kept.set(`fit ${edited}`, notes);
  const revision = (await call(program, 'revisions.save', { fitId: edited, fit: saved.fit, name: mark })) as {
    id: string;
  };
  kept.set(`revision ${revision.id}`, notes);
}

/** Opens what is left, and gives what is missing of what was kept, and what was said at the start. */
async function look(folder: string, kept: Kept): Promise<'speechless' | { lost: string[]; said: string[] }> {
  let opened: ReturnType<typeof openIn>;
  try {
    opened = openIn(folder);
  } catch (error) {
    console.error(error);
    return 'speechless';
  }
  if (opened.kind === 'refused') return { lost: [...kept.keys()], said: [opened.sentence] };
  const { program } = opened;
  try {
    const lost: string[] = [];
    for (const [what, mark] of kept) if ((await markOf(program, what)) !== mark) lost.push(what);
    const state = (await call(program, 'program.state', {})) as {
      recovery: { message: string } | null;
      notices: string[];
      problems: unknown[];
    };
    const said = [...(state.recovery ? [state.recovery.message] : []), ...state.notices];
    return { lost, said: [...said, ...state.problems.map(() => 'a row was set aside')] };
  } finally {
    opened.close();
  }
}

async function markOf(program: Program, what: string): Promise<string | null> {
  const [kind, id] = what.split(' ');
  if (kind === 'athlete') {
    const listed = (await call(program, 'athletes.list', { limit: 1000 })) as {
      id: string;
      athlete: { name: string };
    }[];
    return listed.find((one) => one.id === id)?.athlete.name ?? null;
  }
  const opened = await dispatch(program, kind === 'fit' ? 'fits.open' : 'revisions.open', { id });
  return opened.ok ? (opened.value as { fit: { notes: string } }).fit.notes : null;
}
