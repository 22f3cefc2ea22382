import type { BoatPoint } from '../frame/vec3.ts';
import type { Stance } from '../posture/stance.ts';
import type { PolygonCorner, SupportPatches } from './support-patches.ts';
import type { InPlan } from './support-triangle.ts';

/** The three contacts, in the order of the support triangle. */
export const CONTACTS = ['knee', 'rearFoot', 'frontFoot'] as const;
/** Where the paddler touches the boat. */
export type Contact = (typeof CONTACTS)[number];

/** How the paddler's weight rests on knee, rear foot and front foot. Statics; boat frame; SI. */
export interface Support {
  /** Contact points on pad, rest and floor. */
  readonly contacts: Readonly<Record<Contact, BoatPoint>>;
  /** Corners of the patch in which each contact bears, in plan. */
  readonly patches: SupportPatches;
  /** The support polygon: the hull of the patches, counter-clockwise seen from above. */
  readonly polygon: readonly PolygonCorner[];
  /** Share of the weight on each with every contact at its nominal point; they sum to 1, each from 0 to 1. */
  readonly shares: Readonly<Record<Contact, number>>;
  /** The least and greatest share that each may carry, wherever in its patch it bears; 0 to 1. */
  readonly shareRanges: Readonly<Record<Contact, { readonly least: number; readonly most: number }>>;
  /** Vertical force on each contact, newtons. */
  readonly loadsN: Readonly<Record<Contact, number>>;
  /** Distance from the centre of mass's projection to the edge of the support polygon (the hull of the patches), metres; negative outside. */
  readonly margin: number;
  /** The contacts at the two ends of the nearest edge; twice the same where it is the side of one patch. */
  readonly nearestEdge: readonly [Contact, Contact];
  readonly inside: boolean;
  /** Area of the polygon, m². */
  readonly area: number;
  /** The three nominal points lie in one line: only the breadth of the patches holds the weight to either side of it. */
  readonly inLine: boolean;
  /** Mean pressure on the pad, pascals: a relative figure to compare set-ups by. */
  readonly padPressurePa: number;
}

/**
 * Loads of the drive on the contacts, computed as if the knee alone passed the blade's force into the boat: the most that the
 * pad's fixing may have to hold. SI.
 */
export interface DriveLoads {
  /** Place in plan over which the carried load seems to act, metres, boat frame. */
  readonly seemsAt: InPlan;
  /** Shares of it, negative where a contact would have to pull. */
  readonly shares: Readonly<Record<Contact, number>>;
  /** Vertical force on each contact, newtons. */
  readonly loadsN: Readonly<Record<Contact, number>>;
  /** Horizontal force of the knee on the pad, newtons, forward positive. */
  readonly padForwardN: number;
  /** Size of the same across the boat, newtons, without a sign. */
  readonly padSidewaysN: number;
  /** The blade force that these loads belong to, newtons. */
  readonly bladeForceN: number;
}

/** Where knee, rear foot and front foot bear, metres, boat frame. */
export function contactPoints({ points }: Pick<Stance, 'points'>): Record<Contact, BoatPoint> {
  return { knee: points.kneeContact, rearFoot: points.rearBall, frontFoot: points.frontBall };
}
