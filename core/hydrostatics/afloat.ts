import type { BoatPoint } from '../frame/vec3.ts';
import type { Radians } from '../units/angle.ts';

/** A point mass in the boat frame: kilograms and metres. */
export interface PointMass {
  /** Kilograms. */
  readonly mass: number;
  /** Forward of amidships. */
  readonly x: number;
  /** To port of the centreline. */
  readonly y: number;
  /** Above the lowest point of the keel line. */
  readonly z: number;
}

/** How the boat lies: the water plane is z = draft − x·tan(trim) − y·tan(heel). */
export interface Attitude {
  /** Height of the water plane above the origin at x = y = 0, metres. */
  readonly draft: number;
  /** Positive bow up. */
  readonly trim: Radians;
  /** Positive starboard down. */
  readonly heel: Radians;
}

/** What is under water at one attitude. Metres, square and cubic metres; boat frame. */
export interface ImmersedProperties {
  /** Displaced volume, cubic metres. */
  readonly volume: number;
  /** Centre of buoyancy: x is LCB, y is TCB, z is VCB. */
  readonly centroid: BoatPoint;
  /** Where the water plane cuts the hull. */
  readonly waterplane: {
    /** Area in the water plane itself. */
    readonly area: number;
    /** x of the centre of flotation. */
    readonly lcf: number;
    /** Second moment of the waterplane about its fore-and-aft axis over volume. */
    readonly transverseBm: number;
    /** The same about the transverse axis through the centre of flotation. */
    readonly longitudinalBm: number;
    /** Length and greatest beam of the waterline, as seen from above. */
    readonly length: number;
    readonly beam: number;
    /** x of the waterline's ends. */
    readonly aftEnd: number;
    readonly foreEnd: number;
  };
  /** Shell under water, flat ends included; a flooded deck is not. */
  readonly wettedSurface: number;
  /** Volume over waterline length × beam × greatest depth under the plane; 0 out of the water, as the next two. */
  readonly blockCoefficient: number;
  /** Volume over waterline length × greatest section. */
  readonly prismaticCoefficient: number;
  /** Area of the waterplane over its length × beam. */
  readonly waterplaneCoefficient: number;
  /** Least plumb height of the sheer above the water, metres, and where; stems and other closed tops do not count. */
  readonly leastFreeboard: { readonly value: number; readonly x: number };
}

/** A boat at rest on the water. */
export interface Afloat extends ImmersedProperties, Attitude {
  readonly kind: 'afloat';
  /** Newton steps that it took. */
  readonly iterations: number;
  /** Everything aboard and the boat itself. */
  readonly massKg: number;
  /** Of all that together. */
  readonly centreOfMass: BoatPoint;
  /** Plumb height of the sheer above the water at the foremost and aftmost stations, low side, metres. */
  readonly freeboardBow: number;
  /** As `freeboardBow`, at the aftmost station. */
  readonly freeboardStern: number;
  /** Height of bow over stern, against the level boat, metres: length × tan(trim). */
  readonly bowOverStern: number;
  /** Slopes of the righting arms across and along the boat, metres; at an upright heel KB + BM − KG. */
  readonly transverseGm: number;
  /** As `transverseGm`, along the boat. */
  readonly longitudinalGm: number;
  /** Kilograms that sink it one centimetre. */
  readonly massPerCentimetre: number;
  /** Newton metres that change the trim by one centimetre, bow over stern. */
  readonly momentPerCentimetreTrim: number;
}

/** Why no position was found where the boat floats at rest: a part of the message key `afloat.reason.…`. */
export type NoEquilibrium =
  | 'pitches-over'
  | 'not-settled'
  | 'no-number'
  | 'no-weight'
  | 'density'
  | 'on-side'
  | 'ahead-of-bow'
  | 'behind-stern';

/** Why a boat does not float at rest. */
export type NotAfloat =
  | { readonly kind: 'overloaded'; readonly massKg: number; readonly mostKg: number }
  | { readonly kind: 'swamped'; readonly atX: number }
  | { readonly kind: 'no-equilibrium'; readonly reason: NoEquilibrium };

/** A boat at rest, or why it does not float. */
export type FloatResult = Afloat | NotAfloat;

/** What the paddler must balance. SI. */
export interface BalanceDemand {
  /** Negative: the boat turns over unless it is held. */
  readonly transverseGm: number;
  /** y of the combined centre of mass: positive to port, metres. */
  readonly offCentre: number;
  /** Steady moment the paddler holds, N·m, same sign as `offCentre`. */
  readonly steadyMoment: number;
  /**
   * What the crew must hold for each degree that the boat leans, N·m per degree: −GM × weight × π/180. Null when GM is not
   * negative: the boat then rights itself.
   */
  readonly leanMoment: number | null;
  /** Heel at which a boat with positive GM comes to rest; null when it has none. */
  readonly equilibriumHeel: Radians | null;
}
