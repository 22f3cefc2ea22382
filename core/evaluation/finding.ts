import type { FittingCoordinate } from '../document/coordinates.ts';
import type { Lockable } from '../document/seat-schema.ts';
import type { Support } from '../support/support.ts';

/** Severities, mildest first. *Unknown* is no finding: body and fittings hardly inform the value, but a photograph would. */
export const SEVERITIES = ['good', 'unknown', 'check', 'change', 'stop'] as const;
/** How grave a finding is, mildest first in `SEVERITIES`. */
export type Severity = (typeof SEVERITIES)[number];

/** Kind of source of a band or value. */
export type SourceKind = 'published' | 'common practice' | 'this model' | 'class rule' | "coach's own";

/** SI units of quantities, but for a moment per degree of lean; `1` is a plain number or share. */
export type Unit = 'm' | 'rad' | 'kg' | 'N' | 'N·m' | 'N·m/°' | 'Pa' | '1';

/** One value of the report: the same id on the drawing, in the table, in findings and in `evaluate`. */
export interface Quantity {
  /** As in `QUANTITIES`. */
  readonly id: string;
  /** Index of the seat, bow first; null for the whole boat. */
  readonly seat: number | null;
  /** SI. */
  readonly value: number;
  /** Standard deviation, same unit; null where none is known. */
  readonly sd: number | null;
  readonly unit: Unit;
  /** The value from which its probability is computed, where that is not the value itself: see `Judged`. */
  readonly judged?: Judged;
  /** Body, fittings and measurements hardly inform it: it is the same estimate for everybody. */
  readonly uninformed?: true;
  /** The limb does not reach its fitting: it is drawn straight, and no body would have this angle. */
  readonly unreached?: true;
  /** More than half of its variance comes from the doubt of the boat's lines. */
  readonly byHull?: true;
  /**
   * For a share of the weight, or its load at rest: the least and the greatest over all places in its patch where the contact
   * may bear.
   */
  readonly range?: Support['shareRanges']['knee'];
}

/**
 * The normal distribution from which the probability of a kinked value is computed, in the value's unit. For the least of two:
 * its mean. For a shortfall: the whole distance, negative while the limb reaches (`smooth`).
 */
export interface Judged {
  /** Mean of that spread. */
  readonly value: number;
  /** Its standard deviation. */
  readonly sd: number;
  readonly smooth?: true;
}

/** A band: null means open on that side. Values in the quantity's SI unit. */
export interface Band {
  /** Least value that is good. */
  readonly min: number | null;
  /** Greatest value that is good. */
  readonly max: number | null;
  /** Beyond these the finding says stop, whatever the doubt. Left out: no such limit. */
  readonly stopMin?: number | undefined;
  /** As `stopMin`, at the other end. */
  readonly stopMax?: number | undefined;
  readonly source: SourceKind;
  /** The message `band-source.…` names the source. */
  readonly sourceKey: string;
  /** Why a coach set a band of their own; empty for the usual band. */
  readonly reason: string;
}

/** A side effect of a change: a judged quantity before and after, SI, and its severities. */
export interface SideEffect {
  /** The quantity that moves with it. */
  readonly id: string;
  /** Index of the seat; null for the whole boat. */
  readonly seat: number | null;
  readonly unit: Unit;
  /** Value before the change. */
  readonly from: number;
  /** Value after it. */
  readonly to: number;
  /** Severity before the change. */
  readonly severityFrom: Severity;
  /** Severity after it. */
  readonly severityTo: Severity;
}

/** The smallest single change that clears a finding, found by solving; or that none does. */
export type Suggestion =
  | {
      readonly kind: 'move';
      readonly seat: number;
      readonly coordinate: FittingCoordinate;
      /** In the coordinate's own unit: metres or degrees. */
      readonly from: number;
      readonly to: number;
      /** False where the change brings a new *change* or *stop* elsewhere; it is then the least bad. */
      readonly clean: boolean;
      readonly sideEffects: readonly SideEffect[];
    }
  | {
      readonly kind: 'choose';
      readonly seat: number;
      readonly choice: 'strapReleases' | 'floorNonSlip' | 'padBraced' | 'kneelsOnSide';
    }
  /** No move decides it: the boat's lines are not known well enough. A float check would help, or a tape across the hull. */
  | { readonly kind: 'measure'; readonly what: HullMeasurement }
  | { readonly kind: 'none'; readonly locked: readonly Lockable[] };

/** What makes a hull better known: how it floats, or its beams by tape. */
export type HullMeasurement = 'floatCheck' | 'beams';

/** What the usual place would do to an outcome that is already good. SI. */
export interface Instead {
  /** The nearest edge of the usual band. */
  readonly at: number;
  /** The outcome, its value here and there. */
  readonly quantity: string;
  readonly unit: Unit;
  /** Its value in this setting. */
  readonly from: number;
  /** Its value with the place at the edge of its band. */
  readonly to: number;
}

/** One finding. `text/sentences.ts` makes its sentences. */
export interface Finding {
  /** Quantity and seat in one: no two findings of a report share it. */
  readonly id: string;
  /** Index of the seat, bow first; null for the whole boat. */
  readonly seat: number | null;
  /** The judged quantity. */
  readonly quantity: string;
  /** In the quantity's SI unit. */
  readonly value: number;
  /** One standard deviation, same unit; null where the doubt is not known. */
  readonly sd: number | null;
  readonly unit: Unit;
  /** The band that it was judged by. */
  readonly band: Band;
  /** Signed distance to the nearest edge in the quantity's unit; negative inside the band. */
  readonly distance: number;
  /** Probability that the value lies outside the band, 0–1. */
  readonly probability: number;
  readonly severity: Severity;
  /** The measurement that would settle it, where most of the doubt is the boat's and the value lies in its band. */
  readonly settledBy?: HullMeasurement;
  /** As in `Quantity`: the value has no meaning then. */
  readonly unreached?: true;
  /** For `padAft` with a datum that is not amidships: how far the knee is aft of the boat's middle, metres. */
  readonly fromMiddleM?: number;
  /** As in `Quantity`. */
  readonly range?: Quantity['range'];
  /** For the support margin: the edge to which it is measured. */
  readonly support?: Pick<Support, 'nearestEdge' | 'inLine'>;
  /** For an unusual place that works: how an outcome would change at the usual place. */
  readonly instead?: Instead;
  /** The part of the drawing that it belongs to. */
  readonly part: Lockable | 'trunk' | 'hull' | 'frontKnee' | 'kneelingKnee' | 'hip' | 'support';
}
