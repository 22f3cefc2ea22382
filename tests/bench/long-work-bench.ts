import { monitorEventLoopDelay } from 'node:perf_hooks';
import { dispatch } from '../../app/services/dispatch.ts';
import type { Program } from '../../app/services/program.ts';
import type { Filled } from './filled-store.ts';
import type { Fact, Found } from './row.ts';

const NANO = 1e-6;
/** Some ticks of the measurement, milliseconds. */
const TICKS_MS = 50;

/** Long work through the contract: how long it takes, and how long the program could not answer meanwhile at most. */
export async function longWorkBench(program: Program, { fitId }: Filled): Promise<Found> {
  const opened = await value(program, 'fits.open', { id: fitId });
  const [{ athlete }] = (opened as { fit: { seats: [{ athlete: { id: string; name: string } }] } }).fit.seats;
  const work = [
    ['backup', 'backups.take', {}],
    ['export of everything', 'bundle.export', {}],
    ['erase preview', 'athletes.previewErase', { id: athlete.id }],
    ['erase', 'athletes.erase', { id: athlete.id, name: athlete.name }],
  ] as const;
  const facts: Fact[] = [];
  for (const [what, name, input] of work)
    facts.push(...(await measured(what, () => value(program, name, input))));
  return { rows: [], facts };
}

async function measured(what: string, work: () => Promise<unknown>): Promise<Fact[]> {
  const delay = monitorEventLoopDelay({ resolution: 5 });
  delay.enable();
  // A delay is only counted at the tick after it: what was before the work is taken out, what ends it is waited for.
  await new Promise((resolve) => setTimeout(resolve, TICKS_MS));
  delay.reset();
  const began = performance.now();
  await work();
  const took = performance.now() - began;
  await new Promise((resolve) => setTimeout(resolve, TICKS_MS));
  delay.disable();
  const fact = (name: string, milliseconds: number): Fact => ({
    group: 'store',
    name: `${what}: ${name}`,
    value: milliseconds,
    unit: 'ms',
  });
  return [fact('whole', took), fact('longest time without an answer', delay.max * NANO)];
}

async function value(program: Program, name: string, input: unknown): Promise<unknown> {
  const result = await dispatch(program, name, input);
  if (!result.ok) throw new Error(`${name}: ${result.error.message}`);
  return result.value;
}
