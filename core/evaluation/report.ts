import type { BodyEstimate } from '../body/body.ts';
import type { BalanceDemand, FloatResult } from '../hydrostatics/afloat.ts';
import type { Phase, Stance } from '../posture/stance.ts';
import type { DriveLoads, Support } from '../support/support.ts';
import type { Finding, Quantity } from './finding.ts';
import type { Unknown } from './unknowns.ts';

/** Everything computed for one occupied seat. Boat frame, SI. */
export interface SeatReport {
  /** The body that was used. */
  readonly body: BodyEstimate;
  /** The three stances of the stroke; `ready` is the one the fittings are set by. */
  readonly stances: Readonly<Record<Phase, Stance>>;
  /** How the weight rests at ready. */
  readonly support: Support;
  /** Null when the boat does not float. */
  readonly drive: DriveLoads | null;
}

/** The whole evaluation of a fit: what the screen shows and what `evaluate` prints. */
export interface Report {
  readonly format: 'kneelwright-report/1';
  /** As the document has it. */
  readonly fitName: string;
  /** Null where a seat is empty. */
  readonly seats: readonly (SeatReport | null)[];
  /** The boat at rest with the crew in each phase. */
  readonly afloat: Readonly<Record<Phase, FloatResult>>;
  /** Null when the boat does not float. */
  readonly balance: BalanceDemand | null;
  /** Every value with its spread, of all seats and the boat. */
  readonly quantities: readonly Quantity[];
  /** Most severe first. */
  readonly findings: readonly Finding[];
  /** Judged values that body and fittings hardly inform, with the look that would tell; what settles most first. */
  readonly unknowns: readonly Unknown[];
}
