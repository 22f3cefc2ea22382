import { z } from 'zod';
import { isoDate } from '../document/measure-schema.ts';
import { FIGURE_POINTS, STANCE_ANGLES, STANCE_UNKNOWNS } from '../posture/stance.ts';

/** A mark may lie outside the picture, where a joint is cut off. */
const pixel = z.strictObject({
  u: z.number().min(-20_000).max(40_000),
  v: z.number().min(-20_000).max(40_000),
});

/** A value read off a picture and its standard deviation: radians, or metres. */
const readValue = z.strictObject({ value: z.number(), sd: z.number().min(0) });

/** The instants of a stroke that a picture may show. */
export const SEEN_MOMENTS = ['ready', 'catch', 'drive', 'exit'] as const;

/**
 * What was marked in a photograph of somebody in a boat, and what was read off it: pixels, radians and metres. `revisionId` is the
 * fit's revision that it was read for.
 */
export const photoStudySchema = z.strictObject({
  seat: z.int().min(0).max(3),
  moment: z.enum(SEEN_MOMENTS),
  takenOn: isoDate.optional(),
  image: z.strictObject({ width: z.int().min(1).max(20_000), height: z.int().min(1).max(20_000) }),
  /** Points of the boat by their names, as `boatMarks` gives them. */
  boat: z.record(z.string().max(40), pixel).default({}),
  joints: z.partialRecord(z.enum(FIGURE_POINTS), pixel).default({}),
  /** Joints that a pose model proposed and nobody has looked at yet: how sure it is, 0 to 1. */
  proposed: z.partialRecord(z.enum(FIGURE_POINTS), z.number().min(0).max(1)).default({}),
  revisionId: z.uuid().optional(),
  /** What the marks gave, once it was taken into the fit. */
  result: z
    .strictObject({
      angles: z.partialRecord(z.enum(STANCE_ANGLES), readValue),
      topHandOver: readValue.optional(),
      /** The stance's unknowns as readings of their own, what was taken before the picture not counted in. */
      readings: z.partialRecord(z.enum(STANCE_UNKNOWNS), readValue).optional(),
    })
    .optional(),
  /** A coach looked at the result and took it: only then does it count for the athlete's own neutral posture. */
  confirmed: z.boolean().default(false),
  /** Shown to the athlete, on screen and on the page to take home. */
  shown: z.boolean().default(false),
  /** Whether the face may be seen where the athlete is shown the picture. */
  faceSeen: z.boolean().default(false),
});

/** Marks in a photograph and what was read off it. */
export type PhotoStudy = z.infer<typeof photoStudySchema>;
