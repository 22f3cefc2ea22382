import { z } from 'zod';
import { isoDate, metres } from './measure-schema.ts';
import { USUAL_CLASSES, USUAL_DOUBT, USUAL_LIMITS } from './usual-classes.ts';
import { waterSchema } from './water-schema.ts';

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

/**
 * How an end rises from keel to sheer: how far the stem's foot lies inside its head, and how far it curves out beyond the
 * straight line between them, at most a quarter of that.
 */
export const stemShape = z.strictObject({ rakeM: metres(0, 1), curveM: metres(0, 0.25).default(0) });

/** Rake and curve of both ends. An end that is left out is upright. */
export const stemsSchema = z.strictObject({ bow: stemShape.optional(), stern: stemShape.optional() });

/** A hull measured with a tape at five or more stations. The ends follow from the length. */
export const tapeHull = z.strictObject({
  kind: z.literal('tape'),
  lengthM: metres(1, 15),
  stations: z.array(tapeStation).min(5).max(60),
  stems: stemsSchema.optional(),
});

/** How well a usual hull describes one boat of its class: standard deviations. */
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

/** A hull that is not measured: the usual lines of its class at this length and greatest beam. An estimate. */
export const usualHullSource = z.strictObject({
  kind: z.literal('usual'),
  boatClass: z.enum(USUAL_CLASSES),
  lengthM: metres(...USUAL_LIMITS.lengthM),
  /** Greatest beam, at the sheer. */
  beamM: metres(...USUAL_LIMITS.beamM),
  /** Keel to sheer amidships. Left out: the class's. */
  depthM: metres(0.1, 0.8).optional(),
  doubt: usualDoubt.default(USUAL_DOUBT),
  stems: stemsSchema.optional(),
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
  /** The water it was read in. Left out: fresh at 15 °C. */
  water: waterSchema.optional(),
});

/** The two-parameter correction of the hull by a float check (`correctHull`). */
export const hullCorrection = z.strictObject({
  fullness: z.number().min(-0.5).max(0.5),
  foreAftFullness: z.number().min(-0.5).max(0.5),
  residualM: metres(0, 0.5),
});

/** The kinds of hull document, each field within its own limits. `hullSchema` also checks them together. */
export const hullKinds = z.discriminatedUnion('kind', [offsetsHull, tapeHull, usualHullSource]);

/** A hull as documented, in one of three ways. */
export type HullSource = z.infer<typeof hullKinds>;
/** A hull by a table of offsets. */
export type OffsetsHull = z.infer<typeof offsetsHull>;
/** A hull measured by tape. */
export type TapeHull = z.infer<typeof tapeHull>;
/** A hull of a class, by length and beam. */
export type UsualHull = z.infer<typeof usualHullSource>;
/** How one end is raked. */
export type StemShape = z.infer<typeof stemShape>;
/** Both ends. */
export type Stems = z.infer<typeof stemsSchema>;
/** How the boat floated alone and under a known load. */
export type FloatCheck = z.infer<typeof floatCheck>;
/** The correction of a hull by a float check. */
export type HullCorrection = z.infer<typeof hullCorrection>;
