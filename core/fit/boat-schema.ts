import { z } from 'zod';
import { USUAL_CLASSES, USUAL_DOUBT } from '../hull/usual-lines.ts';
import { hullProblems } from './hull-problems.ts';
import { isoDate, label, metres } from './measure-schema.ts';
import { stockSchema } from './stock-schema.ts';

/** One half-section, keel to sheer: pairs [half-breadth y, height z], metres, boat frame. */
export const halfSection = z
  .array(z.tuple([metres(0, 2), metres(-0.5, 2)]))
  .min(2)
  .max(2000);

/** A hull by its table of offsets; stations in any order. */
export const offsetsHull = z.strictObject({
  kind: z.literal('offsets'),
  stations: z
    .array(z.strictObject({ xM: metres(-15, 15), section: halfSection }))
    .min(3)
    .max(2000),
});

/** What a tape reads at one station: keel rise, sheer height, and full beams at two or more heights. */
export const tapeStation = z.strictObject({
  xM: metres(-15, 15),
  /** Height of the keel line above the boat frame's origin. */
  keelM: metres(-0.5, 2),
  /** Height of the sheer above the boat frame's origin. */
  sheerM: metres(0.02, 2),
  /** Full beam at the sheer. */
  sheerBeamM: metres(0, 3),
  /** Full beams lower down: height above the keel line at this station, and full beam there. */
  beams: z
    .array(z.strictObject({ aboveKeelM: metres(0.005, 2), beamM: metres(0, 3) }))
    .max(12)
    .default([]),
});

/** A hull measured with a tape at five or more stations; the ends come from the length. */
export const tapeHull = z.strictObject({
  kind: z.literal('tape'),
  lengthM: metres(1, 15),
  stations: z.array(tapeStation).min(5).max(60),
});

/** How truly a usual hull describes one boat of its class, one standard deviation. */
export const usualDoubt = z.strictObject({
  /** Volume under a given draft, relative. */
  volume: z.number().min(0).max(0.5),
  /** Centre of buoyancy fore and aft, as a share of the length. */
  centre: z.number().min(0).max(0.1),
  /** Height of keel or sheer at one place. */
  heightM: metres(0, 0.1),
  /** Breadth at a height, relative. */
  beam: z.number().min(0).max(0.5),
});

/** A hull that nobody measured: the usual lines of its class at this length and greatest beam. An estimate. */
export const usualHullSource = z.strictObject({
  kind: z.literal('usual'),
  boatClass: z.enum(USUAL_CLASSES),
  lengthM: metres(3, 12),
  /** Greatest beam, at the sheer. */
  beamM: metres(0.25, 1.5),
  /** Keel to sheer amidships; the class's unless given. */
  depthM: metres(0.1, 0.8).optional(),
  doubt: usualDoubt.default(USUAL_DOUBT),
});

/** Freeboards read afloat: water surface up to the sheer at a bow mark and at a stern mark. */
const freeboardReading = z.strictObject({
  bowM: metres(-0.1, 1),
  sternM: metres(-0.1, 1),
});

/** A float check: boat alone, and with one known mass at a known place. */
export const floatCheck = z.strictObject({
  bowMarkXM: metres(-15, 15),
  sternMarkXM: metres(-15, 15),
  alone: freeboardReading,
  loaded: freeboardReading.extend({
    massKg: z.number().min(1).max(500).meta({ unit: 'kg' }),
    atXM: metres(-15, 15),
  }),
  takenOn: isoDate.optional(),
});

/** The two-parameter correction that a float check leaves on the hull. */
export const hullCorrection = z.strictObject({
  fullness: z.number().min(-0.5).max(0.5),
  foreAftFullness: z.number().min(-0.5).max(0.5),
  residualM: metres(0, 0.5),
});

/** Where a hull comes from. What its fields allow one by one must also make a hull together. */
export const hullSchema = z
  .discriminatedUnion('kind', [offsetsHull, tapeHull, usualHullSource])
  .superRefine((hull, context) => {
    for (const { path, message } of hullProblems(hull)) {
      context.addIssue({ code: 'custom', path: [...path], message });
    }
  });

/** Water the boat floats in; density follows EOS-80 unless it was measured. */
export const waterSchema = z.strictObject({
  kind: z.enum(['fresh', 'brackish', 'salt']).default('fresh'),
  temperatureC: z.number().min(-2).max(40).default(15),
  densityKgM3: z.number().min(950).max(1100).optional(),
});

/** The floorboard that pads and rests are fixed to. */
export const floorboardSchema = z.strictObject({
  /** Height of the floorboard's top above the boat frame's origin. */
  heightM: metres(0, 0.6),
  /** Width, the same all along where no outline is given. */
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

/** A pair of rails that a fitting is fixed to. */
export const railsSchema = z.strictObject({
  fitting: z.enum(['kneePad', 'rearRest']),
  /** From one line of holes to the other. */
  apartM: metres(0.01, 0.8),
  /** How far the rails' top stands above the floorboard. */
  heightM: metres(0, 0.2),
  /** Diameter of the holes. */
  holeM: metres(0.002, 0.03),
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
});

/** One boat: hull, floorboard, hardware and seats. */
export const boatSchema = z.strictObject({
  id: z.uuid().optional(),
  name: label,
  /** Racing class for dated limits, or none. */
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
  /** Float checks that later ones have replaced, with what each made of the hull, newest first. */
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
  /** Pads and rests that are kept with it. */
  stock: stockSchema.optional(),
});

/** A boat as written in a fit. Metres, kilograms; boat frame. */
export type Boat = z.infer<typeof boatSchema>;
export type HullSource = z.infer<typeof hullSchema>;
export type OffsetsHull = z.infer<typeof offsetsHull>;
export type TapeHull = z.infer<typeof tapeHull>;
export type UsualHull = z.infer<typeof usualHullSource>;
export type FloatCheck = z.infer<typeof floatCheck>;
export type HullCorrection = z.infer<typeof hullCorrection>;
export type Rails = z.infer<typeof railsSchema>;
export type Water = z.infer<typeof waterSchema>;
