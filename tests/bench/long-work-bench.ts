import { copyFileSync, mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { monitorEventLoopDelay } from 'node:perf_hooks';
import type { CallName, CallOutput } from '../../app/contract/contract.ts';
import { createLoopbackShell, type LoopbackShell } from '../../app/loopback/loopback-shell.ts';
import { dispatch } from '../../app/services/dispatch.ts';
import { openProgram } from '../../app/services/open-program.ts';
import type { Program } from '../../app/services/program.ts';
import type { Filled } from './filled-store.ts';
import type { Fact, Found } from './row.ts';

const ROOT = join(import.meta.dirname, '../..');
const NANO = 1e-6;
const MB = 1e6;
/** Some ticks of the measurement, milliseconds. */
const TICKS_MS = 50;
/** How long nothing is measured, to know what the computer itself adds, milliseconds. */
const IDLE_MS = 3000;

interface Opened {
  readonly program: Program;
  readonly shell: LoopbackShell;
  readonly close: () => void;
}

/**
 * Long work through the contract, at what the store in `folder` holds: how long each takes, how long the program could not
 * answer meanwhile at most, and how much memory the process then has.
 */
export async function longWorkBench(folder: string, { fitId }: Filled): Promise<Found> {
  const facts: Fact[] = [];
  const add = async <T>(what: string, work: () => Promise<T>, edited?: Edited): Promise<T> => {
    const { result, found } = await measured(what, work, edited);
    facts.push(...found);
    return result;
  };
  const here = opened(folder);
  const empty = opened(mkdtempSync(join(folder, 'empty-')));
  try {
    const fit = (await value(here, 'fits.open', { id: fitId })).fit;
    const athlete = fit.seats[0]?.athlete;
    if (!athlete?.id) throw new Error('nobody kneels in the fit');
    const beside = await toEdit(here, fit);
    const inEmpty = await toEdit(empty, fit);
    await add('nothing at all', () => new Promise((resolve) => setTimeout(resolve, IDLE_MS)), beside);
    const backup = await add('backup', () => value(here, 'backups.take', {}), beside);
    const delivery = await add('export of everything', () => value(here, 'bundle.export', {}), beside);
    if (delivery.kind !== 'download') throw new Error('the bundle was not delivered');
    const file = here.shell.fetch(delivery.href.split('/').at(-1)!);
    if (!file || !('path' in file)) throw new Error('the bundle is not in a file');
    const bundle = join(folder, 'bundle.kneelwright');
    copyFileSync(file.path, bundle);
    for (const [where, into, edited] of [
      ['the same store', here, beside],
      ['an empty store', empty, inEmpty],
    ] as const) {
      const sent = join(folder, 'sent');
      copyFileSync(bundle, sent);
      const upload = into.shell.accept(sent);
      const preview = () => value(into, 'bundle.preview', { upload });
      const read = await add(`import preview into ${where}`, preview, edited);
      if (read.kind !== 'ready') throw new Error('the bundle was not read');
      await add(`import into ${where}`, () => value(into, 'bundle.import', { handle: read.handle }), edited);
    }
    for (const how of ['bring-back', 'replace'] as const)
      await add(`restore, ${how}`, () => value(here, 'backups.restore', { name: backup.name, how }));
    const { id, name } = athlete;
    await add('erase preview', () => value(here, 'athletes.previewErase', { id }), beside);
    await add('erase', () => value(here, 'athletes.erase', { id, name }), beside);
  } finally {
    here.close();
    empty.close();
    rmSync(empty.program.store.folder, { recursive: true, force: true });
  }
  return { rows: [], facts };
}

function opened(folder: string): Opened {
  const shell = createLoopbackShell(() => {});
  const program = openProgram({ root: ROOT, folder, shell });
  if (program.kind === 'refused') throw new Error(program.sentence);
  return { ...program, shell };
}

/** A fit that is edited while the work goes on. */
interface Edited {
  readonly into: Opened;
  readonly id: string;
  readonly fit: CallOutput<'fits.open'>['fit'];
}
/** Makes a fit of nobody, which stays when somebody is erased. */
async function toEdit(into: Opened, of: Edited['fit']): Promise<Edited> {
  const fit = { ...of, seats: of.seats.map((seat) => ({ ...seat, athlete: null })) };
  return { into, id: (await value(into, 'fits.create', { fit })).id, fit };
}

/** From one edit to the next, milliseconds. */
const EDITS_MS = 20;

/** Saves a fit's draft again and again; gives, when stopped, how long the slowest and the middle one took, milliseconds. */
function editsMeanwhile({ into, id, fit }: Edited): { stop(): Promise<{ longest: number; median: number }> } {
  let over = false;
  const waits: number[] = [];
  const editing = (async () => {
    while (!over) {
      const from = performance.now();
      await value(into, 'drafts.save', { id, fit });
      waits.push(performance.now() - from);
      await new Promise((resolve) => setTimeout(resolve, EDITS_MS));
    }
  })();
  return {
    async stop() {
      over = true;
      await editing;
      waits.sort((a, b) => a - b);
      return { longest: waits.at(-1) ?? 0, median: waits[Math.floor(waits.length / 2)] ?? 0 };
    },
  };
}

async function measured<T>(
  what: string,
  work: () => Promise<T>,
  edited?: Edited,
): Promise<{ result: T; found: Fact[] }> {
  const own = ownStretches();
  const delay = monitorEventLoopDelay({ resolution: 5 });
  delay.enable();
  // A delay is only counted at the tick after it: what was before the work is taken out, what ends it is waited for.
  await new Promise((resolve) => setTimeout(resolve, TICKS_MS));
  delay.reset();
  own.reset();
  const began = performance.now();
  const edits = edited && editsMeanwhile(edited);
  const result = await work();
  const waited = await edits?.stop();
  const took = performance.now() - began;
  await new Promise((resolve) => setTimeout(resolve, TICKS_MS));
  delay.disable();
  const fact = (name: string, amount: number, unit: string): Fact => ({
    group: 'store',
    name: `${what}: ${name}`,
    value: amount,
    unit,
  });
  const found = [
    fact('whole', took, 'ms'),
    fact('longest time without an answer', delay.max * NANO, 'ms'),
    fact('longest stretch of its own work', own.end(), 'ms'),
    fact('memory of the process after it', process.memoryUsage().rss / MB, 'MB'),
    ...(waited
      ? [
          fact('longest wait of an edit', waited.longest, 'ms'),
          fact('middle wait of an edit', waited.median, 'ms'),
        ]
      : []),
  ];
  return { result, found };
}

/**
 * The longest time of the processor that the main thread takes between two turns of the event loop, milliseconds: what the
 * program itself keeps an answer waiting, however busy the computer is with other programs.
 */
function ownStretches(): { reset(): void; end(): number } {
  const used = () => {
    const { user, system } = process.threadCpuUsage();
    return (user + system) / 1000;
  };
  let longest = 0;
  let last = used();
  const timer = setInterval(() => {
    const now = used();
    longest = Math.max(longest, now - last);
    last = now;
  }, 1);
  return {
    reset() {
      longest = 0;
      last = used();
    },
    end() {
      clearInterval(timer);
      return longest;
    },
  };
}

async function value<N extends CallName>(
  { program }: Opened,
  name: N,
  input: unknown,
): Promise<CallOutput<N>> {
  const result = await dispatch(program, name, input);
  if (!result.ok) throw new Error(`${name}: ${result.error.message}`);
  return result.value as CallOutput<N>;
}
