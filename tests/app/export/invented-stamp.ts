import type { SheetStamp } from '../../../core/setout/sheet-stamp.ts';

/** What a made-up sheet says of itself. */
export function inventedStamp(more: Partial<SheetStamp> = {}): SheetStamp {
  return {
    fitName: 'Monday, flat water',
    boatName: 'Heron 4',
    athleteName: 'Žofie Łuczak',
    revision: 7,
    revisionName: 'pad back',
    keptAt: '2026-05-04T16:20:00Z',
    ...more,
  };
}

/** Runs an export to its end and gives what it made, and how many steps it took. */
export function finished<T>(steps: Generator<unknown, T>): { made: T; steps: number } {
  for (let count = 0; ; count++) {
    const step = steps.next();
    if (step.done) return { made: step.value, steps: count };
  }
}
