import type { BoatPoint } from '../frame/vec3.ts';

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
  /** The contact opposite the nearest edge, and that edge's two ends. */
  readonly nearestEdge: readonly [Contact, Contact];
  readonly inside: boolean;
  /** Area of the triangle, m²; near zero means the three contacts lie in one line. */
  readonly area: number;
  /** Mean pressure on the pad, pascals: a relative figure to compare set-ups by. */
  readonly padPressurePa: number;
}

/** What the drive asks of the contacts: loads under a blade force, and the pad fixing's horizontal force. */
export interface DriveLoads {
  readonly shares: Readonly<Record<Contact, number>>;
  readonly loadsN: Readonly<Record<Contact, number>>;
  /** Horizontal force that the pad's fixing must hold, newtons, positive pushing the boat forward. */
  readonly padFixingN: number;
  readonly bladeForceN: number;
}
