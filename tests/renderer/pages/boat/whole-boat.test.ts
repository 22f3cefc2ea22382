import { expect, it } from 'vitest';
import { boatSchema } from '../../../../core/document/boat-schema.ts';
import { usualHull } from '../../../../core/hull/usual-hull.ts';
import { boatRules } from '../../../../renderer/pages/boat/boat-rules.ts';
import { boatValues } from '../../../../renderer/pages/boat/boat-values.ts';
import { readForm } from '../../../../renderer/ui/form/form-rules.ts';
import { exampleBoat } from '../../../core/example/example-fit.ts';

const CORRECTION = { fullness: 0.02, foreAftFullness: 0.01, residualM: 0.001 };
const CHECK = {
  bowMarkXM: 2,
  sternMarkXM: -2,
  alone: { bowM: 0.2, sternM: 0.2 },
  loaded: { bowM: 0.15, sternM: 0.15, massKg: 70, atXM: 0 },
  takenOn: '2026-01-02',
  water: { kind: 'salt', temperatureC: 10, densityKgM3: 1020 },
};
const STEMS = { bow: { rakeM: 0.12, curveM: 0.02 }, stern: { rakeM: 0.1, curveM: 0 } };
const measured = exampleBoat();
const usual = usualHull({ boatClass: 'C1' });

/** Everything that a boat can have, but for its hull and where the board ends. */
const ALL = {
  id: '6f1f9a52-4f39-4d57-9a6a-0f3d1d3f6b11',
  name: 'With everything',
  centre: { xM: 0.1, zM: 0.2 },
  skinM: 0.005,
  floatCheck: CHECK,
  correction: CORRECTION,
  earlierFloatChecks: [{ check: CHECK, correction: CORRECTION }],
  hardware: {
    padHolePitchM: 0.02,
    restHolePitchM: 0.025,
    padTravelM: [0, 0.3],
    restTravelM: [0.3, 1],
    boltM: 0.006,
    rails: [
      { fitting: 'kneePad', apartM: 0.06, heightM: 0.012, holeM: 0.008, aftEndXM: -0.5, foreEndXM: 0.5 },
    ],
  },
  holes: [{ xM: -0.2, yM: 0.03, diameterM: 0.007, state: 'plugged' }],
  stock: {
    pads: [
      {
        name: 'pad',
        count: 2,
        ...{ lengthM: 0.26, widthM: 0.16, heightM: 0.11, recessDepthM: 0.02, foamM: 0.01, foamGiveM: 0.003 },
      },
    ],
    rests: [{ name: 'rest', count: 1, widthM: 0.14, heightM: 0.05, tiltDeg: 30, foamM: 0.01 }],
  },
};
const BOARD = {
  thicknessM: 0.009,
  outline: [-1, 1].map((xM) => ({ xM, widthM: 0.2 })),
  profile: [-0.5, 0.5].map((xM) => ({ xM, heightM: 0.05 })),
};

it.each([
  // Places such as -1.4300000000000002, as arithmetic leaves them.
  ['measured by tape', measured, { ...measured.hull, stems: STEMS }],
  [
    'usual',
    usual,
    {
      ...usual.hull,
      depthM: 0.33,
      stems: STEMS,
      doubt: { volume: 0.1, centre: 0.01, heightM: 0.01, beam: 0.02 },
    },
  ],
  [
    'of offsets',
    measured,
    {
      kind: 'offsets',
      stations: [-2.001, 0.1 + 0.2, 2].map((xM) => ({
        xM,
        section: [
          [0, 0],
          [0.3, 0.3],
        ],
      })),
    },
  ],
])('all that a boat can have comes out of its form untouched: one %s', (_, like, hull) => {
  const floorboard = { ...like.floorboard, ...BOARD };
  const boat = boatSchema.parse({ ...like, ...ALL, floorboard, hull });
  expect(Object.keys(boat).sort()).toEqual(Object.keys(boatSchema.shape).sort());
  expect(readForm(boatRules(boat), boatValues(boat))).toEqual({ ok: true, document: boat });
});
