import { z } from 'zod';
import type { Boat } from '../../../core/document/boat-schema.ts';
import { type FloatCheck, floatCheck } from '../../../core/document/hull-kinds-schema.ts';
import { type Water, waterSchema } from '../../../core/document/water-schema.ts';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { shellCentre } from '../../../core/hull/shell-centre.ts';
import {
  type Calibrated,
  calibrateHull,
  type NotCalibrated,
} from '../../../core/hydrostatics/calibrate-hull.ts';
import { waterDensity } from '../../../core/hydrostatics/water-density.ts';
import { today } from '../../language/dates.ts';
import { say } from '../../language/messages.ts';
import type { FormRules } from '../../ui/form/form-rules.ts';

/** What the form of a float check holds while it is being filled in. Metres, kilograms, degrees Celsius. */
export interface FloatValues {
  readonly takenOn: string;
  readonly water: Water['kind'];
  readonly temperatureC: number | null;
  /** The bare boat's balance point forward of mid; null where it is estimated. */
  readonly centreXM: number | null;
  readonly bowMark: number | null;
  readonly sternMark: number | null;
  readonly aloneBow: number | null;
  readonly aloneStern: number | null;
  readonly loadedBow: number | null;
  readonly loadedStern: number | null;
  readonly massKg: number | null;
  readonly at: number | null;
}

/** A float check as read, and where the bare boat balances if that was measured. */
export interface ReadCheck {
  readonly check: FloatCheck;
  readonly centreXM: number | null;
}

/** Values to begin with: those of the check that stands, or blank ones. */
export function floatValues({ floatCheck: check, centre }: Boat): FloatValues {
  const water = check?.water ?? waterSchema.parse({});
  return {
    takenOn: check?.takenOn ?? today(),
    water: water.kind,
    temperatureC: water.temperatureC,
    centreXM: centre?.xM ?? null,
    bowMark: check?.bowMarkXM ?? null,
    sternMark: check ? -check.sternMarkXM : null,
    aloneBow: check?.alone.bowM ?? null,
    aloneStern: check?.alone.sternM ?? null,
    loadedBow: check?.loaded.bowM ?? null,
    loadedStern: check?.loaded.sternM ?? null,
    massKg: check?.loaded.massKg ?? null,
    at: check?.loaded.atXM ?? null,
  };
}

const mark = z.number().min(0).max(7);
const freeboard = floatCheck.shape.alone.shape.bowM;
const place = z.number().min(-7).max(7);

const FIELDS = z.object({
  temperatureC: waterSchema.shape.temperatureC.unwrap(),
  centreXM: z.number().min(-5).max(5).nullable(),
  bowMark: mark,
  sternMark: mark,
  aloneBow: freeboard,
  aloneStern: freeboard,
  loadedBow: freeboard,
  loadedStern: freeboard,
  massKg: floatCheck.shape.loaded.shape.massKg,
  at: place,
});

/** Where a part of the check stands in the form. */
const FIELD_OF: Readonly<Record<string, string>> = {
  'check.bowMarkXM': 'bowMark',
  'check.sternMarkXM': 'sternMark',
  'check.alone.bowM': 'aloneBow',
  'check.alone.sternM': 'aloneStern',
  'check.loaded.bowM': 'loadedBow',
  'check.loaded.sternM': 'loadedStern',
  'check.loaded.massKg': 'massKg',
  'check.loaded.atXM': 'at',
  'check.water.temperatureC': 'temperatureC',
  'check.takenOn': 'takenOn',
};

/** What the form of a float check asks. */
export const FLOAT_RULES: FormRules<FloatValues, ReadCheck> = {
  schema: z.object({ check: floatCheck, centreXM: FIELDS.shape.centreXM }),
  fields: FIELDS,
  fieldOf: (path) => FIELD_OF[path] ?? path,
  documentOf: (e) => ({
    centreXM: e.centreXM,
    check: {
      bowMarkXM: e.bowMark,
      sternMarkXM: e.sternMark === null ? null : -e.sternMark,
      alone: { bowM: e.aloneBow, sternM: e.aloneStern },
      loaded: { bowM: e.loadedBow, sternM: e.loadedStern, massKg: e.massKg, atXM: e.at },
      ...(e.takenOn ? { takenOn: e.takenOn } : {}),
      water: { kind: e.water, temperatureC: e.temperatureC },
    },
  }),
  check: ({ takenOn }) => ({ takenOn: takenOn > today() ? say('field.date-ahead') : null }),
};

/** The boat with its measured balance point; its height is the shell's as long as nobody has entered one. */
export function withCentre(boat: Boat, centreXM: number | null): Boat {
  if (centreXM === null) return { ...boat, centre: null };
  const zM = boat.centre?.zM ?? Number(shellCentre(hullOfBoat(boat)).z.toFixed(3));
  return { ...boat, centre: { xM: centreXM, zM } };
}

/** Fits the boat's hull to the check, with the boat's own centre of mass and the water that was read in. */
export function workOutCheck(boat: Boat, { check, centreXM }: ReadCheck): Calibrated | NotCalibrated {
  const hull = hullOfBoat({ ...boat, correction: null });
  const { centre } = withCentre({ ...boat, correction: null }, centreXM);
  return calibrateHull(hull, check, {
    boatMass: boat.massKg,
    boatCentre: centre ? { x: centre.xM, z: centre.zM } : shellCentre(hull),
    waterDensity: waterDensity(check.water ?? waterSchema.parse({})),
  });
}
