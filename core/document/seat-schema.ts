import { z } from 'zod';
import { athleteSchema } from './athlete-schema.ts';
import { bandOverride } from './band-override-schema.ts';
import { COORDINATES, FITTINGS, type Fitting } from './coordinates.ts';
import { degrees, isoDate, metres } from './measure-schema.ts';

/**
 * The knee pad. `aftM` and `outM` place the deepest point of the recess, where the knee bears: aft of the seat's
 * datum, and from the centreline toward the kneeling side. `heightM` is that point's height above the floorboard,
 * unloaded. `recessTurnDeg` is how far the recess's axis turns: positive when its aft end points to the off side.
 */
export const kneePadSchema = z.strictObject({
  aftM: metres(...COORDINATES['kneePad.aftM'].allowed),
  outM: metres(...COORDINATES['kneePad.outM'].allowed),
  heightM: metres(...COORDINATES['kneePad.heightM'].allowed),
  recessTurnDeg: degrees(...COORDINATES['kneePad.recessTurnDeg'].allowed).default(12),
  recessDepthM: metres(0, 0.06).default(0.02),
  lengthM: metres(0.05, 0.6).default(0.26),
  widthM: metres(0.05, 0.5).default(0.16),
  /** How far the foam compresses under the knee. */
  foamGiveM: metres(0, 0.08).default(0.008),
  /** Thickness of the foam that lines the recess. Left out: `USUAL_FOAM` of the parts. */
  foamM: metres(0, 0.1).optional(),
  braced: z.boolean().default(true),
});

/**
 * The rear foot rest. The point is where the ball of the rear foot bears: aft of the datum, and from the centreline
 * toward the kneeling side (usually negative: it lies to the off side). `turnDeg` turns the rest to the off side.
 */
export const rearRestSchema = z.strictObject({
  aftM: metres(...COORDINATES['rearRest.aftM'].allowed),
  outM: metres(...COORDINATES['rearRest.outM'].allowed),
  heightM: metres(...COORDINATES['rearRest.heightM'].allowed),
  turnDeg: degrees(...COORDINATES['rearRest.turnDeg'].allowed).default(20),
  tiltDeg: degrees(0, 90).default(60),
  widthM: metres(0.03, 0.5).default(0.14),
  strap: z.enum(['none', 'releases', 'fixed']).default('releases'),
});

/**
 * The front foot. The point is the back of the heel on the floorboard: forward of the datum, and from the centreline
 * toward the kneeling side (usually negative). `toeOutDeg` turns the toes away from the kneeling side.
 */
export const frontFootSchema = z.strictObject({
  forwardM: metres(...COORDINATES['frontFoot.forwardM'].allowed),
  outM: metres(...COORDINATES['frontFoot.outM'].allowed),
  heightM: metres(...COORDINATES['frontFoot.heightM'].allowed).default(0),
  toeOutDeg: degrees(...COORDINATES['frontFoot.toeOutDeg'].allowed).default(0),
  /** Wedge under the foot: positive lifts the toes. */
  wedgeDeg: degrees(...COORDINATES['frontFoot.wedgeDeg'].allowed).default(0),
  nonSlip: z.boolean().default(true),
});

/** The paddle: overall length, blade length, and the lower hand's distance from the top of the grip. */
export const paddleSchema = z.strictObject({
  lengthM: metres(...COORDINATES['paddle.lengthM'].allowed),
  bladeLengthM: metres(...COORDINATES['paddle.bladeLengthM'].allowed),
  lowerHandM: metres(...COORDINATES['paddle.lowerHandM'].allowed),
  bladeAngleDeg: degrees(-30, 30).default(0),
  massKg: z.number().min(0.2).max(3).default(0.75),
});

/** Posture angles that a coach may hold at a measured value, such as from a photograph, degrees. */
export const pinsSchema = z
  .strictObject({
    thighPitchDeg: degrees(-80, 80),
    thighRollDeg: degrees(-80, 80),
    pelvisYawDeg: degrees(-90, 90),
    trunkPitchDeg: degrees(-60, 90),
    trunkRollDeg: degrees(-60, 60),
  })
  .partial();

/**
 * The reading behind a held angle: its value and standard deviation, degrees, and the day. It counts only while the pin has
 * this value: a pin that was moved by hand since is no reading.
 */
export const pinReading = z.strictObject({
  atDeg: degrees(-90, 90),
  sdDeg: degrees(0.05, 30),
  takenOn: isoDate.optional(),
});

/** Fittings and angles that proposals may not move. */
export const LOCKABLE = FITTINGS;

/**
 * The stroke: rate, mean drive force, the trunk at catch and exit, and how far over the shoulders the top hand passes in the
 * middle of the drive. Left out: the defaults.
 */
export const strokeSchema = z
  .strictObject({
    ratePerMin: z.number().min(10).max(140),
    driveForceN: z.number().min(0).max(1000),
    catchPitchDeg: degrees(-20, 90),
    catchRotationDeg: degrees(-20, 90),
    exitPitchDeg: degrees(-20, 90),
    exitRotationDeg: degrees(-60, 60),
    topHandOverM: metres(-0.3, 0.6),
  })
  .partial();

/** One seat: who kneels in it, on which side, on what fittings, with which paddle. */
export const seatSchema = z.strictObject({
  /** Null: an empty seat. The boat floats without that paddler. */
  athlete: athleteSchema.nullable(),
  side: z.enum(['left', 'right']),
  /** The kneeling side. Left out: the paddling side. */
  kneels: z.enum(['left', 'right']).optional(),
  kneePad: kneePadSchema,
  rearRest: rearRestSchema,
  frontFoot: frontFootSchema,
  paddle: paddleSchema,
  pins: pinsSchema.default({}),
  /** Readings from photographs behind the pins. */
  pinReadings: z.partialRecord(pinsSchema.keyof(), pinReading).optional(),
  locks: z.array(z.enum(LOCKABLE)).default([]),
  bands: z.array(bandOverride).max(64).default([]),
  stroke: strokeSchema.default({}),
});

/** A knee pad, as set. */
export type KneePad = z.infer<typeof kneePadSchema>;
/** A rear foot rest, as set. */
export type RearRest = z.infer<typeof rearRestSchema>;
/** A paddle, and where it is held. */
export type Paddle = z.infer<typeof paddleSchema>;
/** Measured angles of the stance that are held. */
export type Pins = z.infer<typeof pinsSchema>;
/** One seat of a fit: lengths in metres, angles in degrees, in the seat's own datum. */
export type Seat = z.infer<typeof seatSchema>;
/** What can be locked against proposals. */
export type Lockable = Fitting;
