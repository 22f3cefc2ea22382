import type { BoatPoint } from '../frame/vec3.ts';
import type { Stance } from '../stance/stance.ts';

/** The three contacts, in the order of the support triangle. */
export const CONTACTS = ['knee', 'rearFoot', 'frontFoot'] as const;
export type Contact = (typeof CONTACTS)[number];

/** How the paddler's weight rests on knee, rear foot and front foot. Statics; boat frame; SI. */
export interface Support {
  /** Contact points on pad, rest and floor. */
  readonly contacts: Readonly<Record<Contact, BoatPoint>>;
  /** Share of the weight on each; they sum to 1. Negative outside the triangle: that contact would lift. */
  readonly shares: Readonly<Record<Contact, number>>;
  /** Vertical force on each contact, newtons. */
  readonly loadsN: Readonly<Record<Contact, number>>;
  /** Distance from the centre of mass's projection to the nearest edge, metres; negative outside. */
  readonly margin: number;
  /** The two ends of the nearest edge. */
  readonly nearestEdge: readonly [Contact, Contact];
  readonly inside: boolean;
  /** Area of the triangle, m². */
  readonly area: number;
  /** The three contacts lie in one line: nothing is held to either side of it, and the shares say only how it rests along it. */
  readonly inLine: boolean;
  /** Mean pressure on the pad, pascals: a relative figure to compare set-ups by. */
  readonly padPressurePa: number;
}

/**
 * What the drive asks of the contacts, worked out as if the knee alone passed the blade's force into the boat: the most
 * that the pad's fixing may have to hold. SI.
 */
export interface DriveLoads {
  readonly shares: Readonly<Record<Contact, number>>;
  /** Vertical force on each contact, newtons. */
  readonly loadsN: Readonly<Record<Contact, number>>;
  /** Horizontal force of the knee on the pad, newtons, forward positive. */
  readonly padForwardN: number;
  /** The same across the boat, newtons, positive toward the blade. */
  readonly padSidewaysN: number;
  readonly bladeForceN: number;
}

/** Where knee, rear foot and front foot bear, metres, boat frame. */
export function contactsOf({ points }: Pick<Stance, 'points'>): Record<Contact, BoatPoint> {
  return { knee: points.kneeContact, rearFoot: points.rearBall, frontFoot: points.frontBall };
}
