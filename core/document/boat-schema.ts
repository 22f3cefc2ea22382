import { z } from 'zod';
import { floatCheck, hullCorrection, hullKinds } from './hull-kinds-schema.ts';
import { hullProblems } from './hull-problems.ts';
import { label, metres } from './measure-schema.ts';
import { stockSchema } from './stock-schema.ts';

/** A hull document. Its fields must also make a hull together (`hullProblems`). */
export const hullSchema = hullKinds.superRefine((hull, context) => {
  for (const { path, key, values } of hullProblems(hull)) {
    context.addIssue({ code: 'custom', path: [...path], message: key, params: { values } });
  }
});

/** The floorboard that pads and rests are fixed to. */
export const floorboardSchema = z.strictObject({
  /** Height of the floorboard's top above the boat frame's origin. */
  heightM: metres(0, 0.6),
  /** Width, constant where no outline is given. */
  widthM: metres(0.05, 1),
  aftEndXM: metres(-15, 15),
  foreEndXM: metres(-15, 15),
  thicknessM: metres(0.002, 0.06).default(0.008),
  /** Widths along the boat, where they differ; between them the sides run straight. */
  outline: z
    .array(z.strictObject({ xM: metres(-15, 15), widthM: metres(0, 1) }))
    .min(2)
    .max(40)
    .optional(),
  /** Heights of the top along the boat, where it is not level; left out, it is level at `heightM`. */
  profile: z
    .array(z.strictObject({ xM: metres(-15, 15), heightM: metres(0, 0.6) }))
    .min(2)
    .max(40)
    .optional(),
});

/** A pair of rails that a fitting is fixed to, at equal distances from the centreline. */
export const railsSchema = z.strictObject({
  fitting: z.enum(['kneePad', 'rearRest']),
  /** From one line of holes to the other. */
  apartM: metres(0.01, 0.8),
  /** How far the rails' top stands above the floorboard. */
  heightM: metres(0, 0.2),
  /** Diameter of the holes. */
  holeM: metres(0.002, 0.03),
  /** Where they end. Left out: at the floorboard's ends. */
  aftEndXM: metres(-15, 15).optional(),
  foreEndXM: metres(-15, 15).optional(),
});

/** Fixing hardware. A null pitch means clamps or screws that may go anywhere. */
export const hardwareSchema = z.strictObject({
  padHolePitchM: metres(0.001, 0.2).nullable().default(null),
  restHolePitchM: metres(0.001, 0.2).nullable().default(null),
  /** How far from its seat's datum the knee may be fixed, aft of it. */
  padTravelM: z.tuple([metres(-1, 2), metres(-1, 2)]).default([0, 0.4]),
  /** The same for the rear foot rest. */
  restTravelM: z.tuple([metres(-1, 2), metres(-1, 2)]).default([0.2, 1.1]),
  rails: z.array(railsSchema).max(4).optional(),
  /** Diameter of the bolts; left out, the usual one of the parts. */
  boltM: metres(0.003, 0.012).optional(),
});

/** A fixing hole of the floorboard: its centre (boat frame), and whether it is drilled, planned or plugged. */
export const boardHoleSchema = z.strictObject({
  xM: metres(-15, 15),
  yM: metres(-1, 1),
  diameterM: metres(0.002, 0.03).default(0.0065),
  state: z.enum(['drilled', 'planned', 'plugged']).default('drilled'),
});

/** One boat: hull, floorboard, hardware and seats. */
export const boatSchema = z.strictObject({
  id: z.uuid().optional(),
  name: label,
  /** Racing class, or none: the class rules that are checked. */
  boatClass: z.enum(['C1', 'C2', 'C4', 'none']).default('none'),
  /** Hull with floorboard and fixed gear, without pads, rests and paddles. */
  massKg: z.number().min(1).max(200).meta({ unit: 'kg' }),
  /** Centre of the bare boat's mass; null lets the program estimate it from the hull's shell. */
  centre: z
    .strictObject({ xM: metres(-5, 5), zM: metres(0, 1) })
    .nullable()
    .default(null),
  hull: hullSchema,
  /** Thickness of the hull's side, for clearances to its inner face. */
  skinM: metres(0, 0.05).default(0.004),
  floatCheck: floatCheck.nullable().default(null),
  correction: hullCorrection.nullable().default(null),
  /** Float checks that later ones replaced, each with its correction of the hull, newest first. */
  earlierFloatChecks: z
    .array(z.strictObject({ check: floatCheck, correction: hullCorrection.nullable() }))
    .max(50)
    .optional(),
  floorboard: floorboardSchema,
  hardware: hardwareSchema.prefault({}),
  /** Stations of the seats' datums, bow first. A single boat's datum is the centre mark. */
  seats: z
    .array(z.strictObject({ stationM: metres(-15, 15) }))
    .min(1)
    .max(4),
  /** Known holes of the floorboard: a drilling plan for several fits starts from them. */
  holes: z.array(boardHoleSchema).max(400).optional(),
  /** Pads and rests that are kept with it. */
  stock: stockSchema.optional(),
});

/** A boat as written in a fit. Metres, kilograms; boat frame. */
export type Boat = z.infer<typeof boatSchema>;
/** A hole of the floorboard: drilled, planned or plugged. */
export type BoardHole = z.infer<typeof boardHoleSchema>;
/** A pair of rails along the board that a fitting is bolted to. */
export type Rails = z.infer<typeof railsSchema>;
