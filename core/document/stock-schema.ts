import { z } from 'zod';
import { label, metres } from './measure-schema.ts';
import { kneePadSchema, rearRestSchema } from './seat-schema.ts';

const pad = kneePadSchema.shape;
const rest = rearRestSchema.shape;

/** How many pieces of one kind there are. */
const count = z.int().min(0).max(99).default(1);
/** Thickness of the foam on top, metres; part of the piece's height. */
const foamM = metres(0, 0.1).default(0.01);

/** A knee pad of the boat's own stock. `heightM` is the bottom of its recess above its underside, unloaded. */
export const stockPad = z.strictObject({
  name: label,
  count,
  lengthM: pad.lengthM.unwrap(),
  widthM: pad.widthM.unwrap(),
  heightM: pad.heightM,
  recessDepthM: pad.recessDepthM.unwrap(),
  foamM,
  /** How far the foam compresses under a knee. */
  foamGiveM: pad.foamGiveM.unwrap(),
});

/** A rear foot rest of the boat's own stock. `heightM` is its bearing edge above its underside. */
export const stockRest = z.strictObject({
  name: label,
  count,
  widthM: rest.widthM.unwrap(),
  heightM: rest.heightM,
  tiltDeg: rest.tiltDeg.unwrap(),
  foamM,
});

/** Pads and rests that are kept with a boat. */
export const stockSchema = z.strictObject({
  pads: z.array(stockPad).max(24).default([]),
  rests: z.array(stockRest).max(24).default([]),
});

/** A pad on the shelf. */
export type StockPad = z.infer<typeof stockPad>;
/** A rest on the shelf. */
export type StockRest = z.infer<typeof stockRest>;
