import { bundleFacts } from './bundle.ts';
import { type DragRow, dragBench, type Spread } from './drag-bench.ts';
import type { Fact, Found, Row } from './row.ts';
import { startupBench } from './startup-bench.ts';

/** What the page costs: a scripted drag, the way from the program's start to a bench that can be dragged, its size. */
export async function rendererBench(): Promise<Found> {
  const startup = await startupBench();
  const drags = await dragBench();
  return {
    rows: [...drags.flatMap(dragRows), ...startup.rows],
    facts: [...drags.flatMap(inTime), ...drags.flatMap(mainThread), ...startup.facts, ...bundleFacts()],
  };
}

function dragRows({ what, scriptMs, frameMs }: DragRow): Row[] {
  const row = (name: string, { median, p95, count }: Spread): Row => ({
    group: 'renderer',
    name: `${name}, ${what}`,
    medianUs: 1000 * median,
    p95Us: 1000 * p95,
    ownUs: null,
    runs: count,
    ratio: null,
  });
  return [row('script of a move', scriptMs), row('frame interval', frameMs)];
}

function inTime({ what, framesInTime, scriptInTime }: DragRow): Fact[] {
  const fact = (name: string, share: number): Fact => ({
    group: 'renderer',
    name: `${name} within 60 Hz, ${what}`,
    value: 100 * share,
    unit: '%',
  });
  return [fact('frames', framesInTime), fact('script of moves', scriptInTime)];
}

/** What a drawn move costs the page's main thread, apart from what the machine was busy with besides. */
function mainThread({ what, mainMs }: DragRow): Fact[] {
  const fact = (name: string, value: number): Fact => ({
    group: 'renderer',
    name: `processor time a move, ${name}, ${what}`,
    value,
    unit: 'ms',
  });
  return [
    fact('script', mainMs.script),
    fact('layout', mainMs.layout),
    fact('paint and pixels', mainMs.paint),
  ];
}
