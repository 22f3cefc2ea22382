import type { Range } from '../document/stroke-defaults.ts';
import type { StrokeRow } from './stroke-cycle.ts';

/** How far a figure goes during the stroke: least, most, and between them. Its own unit. */
export interface Swing extends Range {
  /** Most less least, never negative. */
  readonly by: number;
}

/** What a stroke does to the boat at rest at every instant. Metres; null where it does not float throughout. */
export interface StrokeSummary {
  readonly trim: Swing;
  readonly freeboardBow: Swing;
  readonly freeboardStern: Swing;
  /** Fore-and-aft travel of every seat's centre of mass; null where empty. */
  readonly travel: readonly (Swing | null)[];
}

/** The swings of trim, freeboards and centres of mass over the rows of a cycle. */
export function strokeSummary(rows: readonly StrokeRow[]): StrokeSummary | null {
  const afloat = rows.flatMap((row) => (row.afloat.kind === 'afloat' ? [row.afloat] : []));
  if (afloat.length < rows.length || rows.length === 0) return null;
  const seats = rows[0]!.seats;
  return {
    trim: swing(afloat.map((a) => a.bowOverStern)),
    freeboardBow: swing(afloat.map((a) => a.freeboardBow)),
    freeboardStern: swing(afloat.map((a) => a.freeboardStern)),
    travel: seats.map((seat, i) => (seat ? swing(rows.map((row) => row.seats[i]?.travel.x ?? 0)) : null)),
  };
}

/** Least, greatest and the way between. */
function swing(values: readonly number[]): Swing {
  const least = Math.min(...values);
  const most = Math.max(...values);
  return { least, most, by: most - least };
}
