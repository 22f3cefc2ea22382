import { z } from 'zod';
import {
  boardHoleSchema,
  boatSchema,
  floorboardSchema,
  hardwareSchema,
  railsSchema,
} from '../../../core/document/boat-schema.ts';
import {
  stemShape,
  tapeHull,
  tapeStation,
  usualHullSource,
} from '../../../core/document/hull-kinds-schema.ts';
import { stockPad, stockRest } from '../../../core/document/stock-schema.ts';

const { name, massKg, skinM } = boatSchema.shape;
const { heightM, widthM } = floorboardSchema.shape;
const thicknessM = floorboardSchema.shape.thicknessM.unwrap();
const stem = stemShape.shape;
const beam = tapeStation.shape.beams.unwrap().element.shape;

/** A place along the boat as a tape lies, metres from the stern: as long as a hull may be. */
const fromStern = z.number().min(0).max(15);

const { yM, state } = boardHoleSchema.shape;
const boardHole = z.object({
  fromSternM: fromStern,
  yM,
  diameterM: boardHoleSchema.shape.diameterM.unwrap(),
  state,
});

/** What each field of a boat's form may hold, in the form's own terms. A cell of the tape's table may stay empty. */
export const BOAT_FIELDS = z.object({
  name,
  massKg,
  skinM,
  lengthM: tapeHull.shape.lengthM,
  beamM: usualHullSource.shape.beamM,
  beamHeightsM: z.array(beam.aboveKeelM.optional()),
  stations: z.array(
    z.object({
      fromSternM: fromStern.nullable(),
      keelM: tapeStation.shape.keelM.nullable(),
      sheerM: tapeStation.shape.sheerM.nullable(),
      sheerBeamM: tapeStation.shape.sheerBeamM.nullable(),
      beamsM: z.array(beam.beamM.nullable()),
    }),
  ),
  floorboard: z.object({ heightM, widthM, thicknessM, aftFromSternM: fromStern, foreFromSternM: fromStern }),
  stems: z.object({
    bowRakeM: stem.rakeM.nullable(),
    bowCurveM: stem.curveM.unwrap().nullable(),
    sternRakeM: stem.rakeM.nullable(),
    sternCurveM: stem.curveM.unwrap().nullable(),
  }),
  profile: z.array(z.object({ fromSternM: fromStern, heightM })),
  hardware: hardwareSchema
    .omit({ rails: true })
    .extend({ boltM: hardwareSchema.shape.boltM.unwrap().nullable() }),
  rails: z.array(
    railsSchema
      .omit({ aftEndXM: true, foreEndXM: true })
      .extend({ aftFromSternM: fromStern.nullable(), foreFromSternM: fromStern.nullable() }),
  ),
  holes: z.array(boardHole),
  pads: z.array(stockPad),
  rests: z.array(stockRest),
  seatsFromSternM: z.array(fromStern),
});
