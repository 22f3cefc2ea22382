import type { FittingCoordinate } from '../document/coordinates.ts';
import type { Lockable } from '../document/seat-schema.ts';
import type { Support } from '../support/support.ts';

/** Severities, mildest first. *Unknown* is no finding: body and fittings hardly inform the value, and a look would. */
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
  /** What its probability is told by, where that is not the value itself: see `Judged`. */
  readonly judged?: Judged;
  /** Body, fittings and what was measured hardly inform it: it is what everybody's would be taken for. */
  readonly uninformed?: true;
  /** The limb does not reach its fitting: it is drawn straight, and this angle is not one that a body would have. */
  readonly unreached?: true;
  /** More than half of its variance is the boat's own: its lines are known too little. */
  readonly byHull?: true;
  /** Of a share of the weight or its load at rest: the least and the greatest, wherever in its patch the contact bears. */
  readonly range?: Support['shareRanges']['knee'];
}

/**
 * The normal spread that the probability of a kinked value is told by, in the value's unit: of the least of two the mean; of a
 * shortfall the whole distance, negative while it reaches (`smooth`).
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
  /** Past these the finding says stop, whatever the doubt; left out where nothing does. */
  readonly stopMin?: number | undefined;
  /** As `stopMin`, at the other end. */
  readonly stopMax?: number | undefined;
  readonly source: SourceKind;
  /** The message `band-source.…` names the publication, or who says so. */
  readonly sourceKey: string;
  /** Why a coach set a band of their own; empty for the usual band. */
  readonly reason: string;
}

/** What a change does besides: a judged quantity before and after, SI, and how its severity moves. */
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
  /** What was said of it before. */
  readonly severityFrom: Severity;
  /** What would be said of it then. */
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
  /** No move decides it: the boat's own lines are too little known, and a float check would tell. */
  | { readonly kind: 'measure'; readonly what: 'floatCheck' }
  | { readonly kind: 'none'; readonly locked: readonly Lockable[] };

/** What a usual place would do to an outcome that is good as it is. SI. */
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

/** One finding. The sentences are made by `sentences.ts` from this record. */
export interface Finding {
  /** Quantity and seat in one: no two findings of a report share it. */
  readonly id: string;
  /** Index of the seat, bow first; null for the whole boat. */
  readonly seat: number | null;
  /** What was judged. */
  readonly quantity: string;
  /** In the quantity's SI unit. */
  readonly value: number;
  /** One standard deviation, same unit; null where the doubt is not known. */
  readonly sd: number | null;
  readonly unit: Unit;
  /** What it was held against. */
  readonly band: Band;
  /** Signed distance to the nearest edge in the quantity's unit; negative inside the band. */
  readonly distance: number;
  /** Probability that the value lies outside the band, 0–1. */
  readonly probability: number;
  readonly severity: Severity;
  /** What would settle it, where the doubt is more the boat's than the setting's and the value itself lies in its band. */
  readonly settledBy?: 'floatCheck';
  /** As in `Quantity`: then the value says nothing. */
  readonly unreached?: true;
  /** Of the knee's place aft of a mark that is not amidships: how far the knee is aft of the boat's middle, metres. */
  readonly fromMiddleM?: number;
  /** As in `Quantity`. */
  readonly range?: Quantity['range'];
  /** Of the support margin: the edge it is measured to. */
  readonly support?: Pick<Support, 'nearestEdge' | 'inLine'>;
  /** Of an unusual place that works: how an outcome would change if the place were brought to the usual. */
  readonly instead?: Instead;
  /** The part of the drawing it speaks of. */
  readonly part: Lockable | 'trunk' | 'hull' | 'frontKnee' | 'kneelingKnee' | 'hip' | 'support';
}
