import { describe, expect, it } from 'vitest';
import { boatSchema } from '../../../core/document/boat-schema.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { withCoordinate } from '../../../core/document/fitting-coordinate.ts';
import { paddleOf } from '../../../core/evaluation/paddle-quantities.ts';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { usualHull } from '../../../core/hull/usual-hull.ts';
import { sheerZAt, waterZAt } from '../../../core/paddle/beside-hand.ts';
import { lengthChanges, mainReason } from '../../../core/paddle/length-changes.ts';
import { midDrive } from '../../../core/paddle/mid-drive.ts';
import { paddleFit } from '../../../core/paddle/paddle-fit.ts';
import { toRadians } from '../../../core/units/angle.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../example/example-fit.ts';
import { valuesOf } from '../example/values-of.ts';

const fit = exampleFit();
const report = valuesOf(fit);
const seat = fit.seats[0]!;
const { body, stances } = report.seats[0]!;

const figureOf = (of: Fit, id: string) => valuesOf(of).quantities.find((q) => q.id === id)!.value;

describe('paddleFit', () => {
  const paddle = paddleFit({ body, seat, stances, waterZ: 0.1, gunwaleZ: 0.3 });

  it('by stature: 8 to 12 cm shorter than a paddler of 1.80 m', () => {
    expect(paddle.byStature.lengthM).toBeCloseTo(1.7, 12);
    expect(paddle.byStature.leastM).toBeCloseTo(1.68, 12);
    expect(paddle.byStature.mostM).toBeCloseTo(1.72, 12);
  });

  it('by the stance: the top hand over the water in the middle of the drive and the blade, part by part', () => {
    const { lengthM, parts } = paddle.byStance;
    expect(lengthM).toBeCloseTo(paddle.midDrive.topHandZ - 0.1 + seat.paddle.bladeLengthM, 12);
    expect(parts.map((p) => p.part)).toEqual(['knee', 'thigh', 'trunk', 'hand', 'blade']);
    expect(parts.reduce((sum, p) => sum + p.lengthM, 0)).toBeCloseTo(lengthM, 12);
    for (const part of parts) expect(part.lengthM).toBeGreaterThan(0);
  });

  it('tells the difference by the top hand: as much lower with a paddle by stature', () => {
    const { difference, topHand } = paddle;
    expect(difference).toBeCloseTo(paddle.byStance.lengthM - paddle.byStature.lengthM, 12);
    expect(topHand.modelled.over - topHand.byStature.over).toBeCloseTo(difference, 12);
    expect(topHand.modelled.level).toBe('chin');
  });

  it('a hand measured at the height that the rule implies makes both lengths one', () => {
    const measured = { ...seat, stroke: { topHandOverM: paddle.topHand.byStature.over } };
    const agreed = paddleFit({ body, seat: measured, stances, waterZ: 0.1, gunwaleZ: 0.3 });
    expect(agreed.difference).toBeCloseTo(0, 12);
    expect(agreed.topHand.modelled.over).toBeCloseTo(agreed.topHand.byStature.over, 12);
    expect(agreed.topHand.modelled.level).toBe('chin');
  });

  it('hand places, by subtraction from the example paddle (1.70, blade .60, lower hand .70)', () => {
    expect(paddle.handSpacing).toBe(0.7);
    expect(paddle.handShare).toBeCloseTo(0.7 / 1.7, 12);
    expect(paddle.handAboveNeck).toBeCloseTo(0.4, 12);
    expect(paddle.bladeShare).toBeCloseTo(0.6 / 1.7, 12);
  });

  it('with a paddle as long as the stance asks for, the neck lies at the water at mid-drive', () => {
    const lengthM = paddle.byStance.lengthM;
    const suited = paddleFit({
      body,
      seat: { ...seat, paddle: { ...seat.paddle, lengthM } },
      stances,
      waterZ: 0.1,
      gunwaleZ: 0.3,
    });
    expect(suited.againstStance).toBeCloseTo(0, 12);
    expect(suited.handOverWater).toBeCloseTo(suited.handAboveNeck, 12);
  });

  it('gunwale and water differ by the freeboard beside the hand', () => {
    expect(paddle.handOverWater - paddle.handOverGunwale).toBeCloseTo(0.2, 12);
  });

  it('reads the blade angle as set', () => {
    const turned = { ...seat, paddle: { ...seat.paddle, bladeAngleDeg: 6 } };
    const { bladeAngle } = paddleFit({ body, seat: turned, stances, waterZ: 0.1, gunwaleZ: 0.3 });
    expect(bladeAngle).toBeCloseTo((6 * Math.PI) / 180, 12);
  });
});

describe('the rule, at its own measurement', () => {
  // Medians of stature and mass: ANSUR II, U.S. Army 2012, public release (NATICK/TR-15/007). The rule and the hand's place
  // in it are common practice, no source.
  it.each([
    ['female', 1.626, 66.8],
    ['male', 1.755, 84.6],
  ] as const)(
    'the median %s on fittings in mid-band of a usual single gets stature less 10 ± 2 cm, hand 14 cm over the shoulders',
    (sex, statureM, massKg) => {
      const athlete = exampleAthlete({ sex, statureM, massKg });
      const usual = exampleSeat({ athlete });
      const fittings = exampleFit([
        {
          ...usual,
          kneePad: { ...usual.kneePad, heightM: 0.115 },
          paddle: { ...usual.paddle, lengthM: statureM - 0.1, bladeLengthM: 0.355 * (statureM - 0.1) },
        },
      ]);
      const boat = boatSchema.parse({ ...usualHull({ boatClass: 'C1' }), name: 'Usual single' });
      const median = { ...fittings, boat };
      const under = statureM - figureOf(median, 'paddleByStance');
      expect(under).toBeGreaterThan(0.08);
      expect(under).toBeLessThan(0.12);
      const solved = valuesOf(median).seats[0]!;
      const middle = midDrive({ body: solved.body, seat: median.seats[0]!, stances: solved.stances });
      expect((middle.trunkPitch * 180) / Math.PI).toBeCloseTo(35, 6);
      expect(Math.abs(middle.topHandOver - 0.14)).toBeLessThan(0.01);
      // What the knee's height adds is counted from there.
      const place = { seat: median.seats[0]!, ...solved };
      const { changes } = paddleOf(place, { hull: hullOfBoat(boat) }, valuesOf(median).afloat.ready)!;
      expect(Math.abs(changes.knee)).toBeLessThan(0.008);
    },
  );

  it('what then differs is what the stance changes: it adds up, and a pad 6 cm higher is the main reason', () => {
    const high = exampleFit([{ ...seat, kneePad: { ...seat.kneePad, heightM: 0.24 } }]);
    const solved = valuesOf(high).seats[0]!;
    const paddle = paddleFit({
      body: solved.body,
      seat: high.seats[0]!,
      stances: solved.stances,
      waterZ: 0.1,
      gunwaleZ: 0.3,
    });
    const { knee, lean, hand, body: rest } = paddle.changes;
    expect(knee + lean + hand + rest).toBeCloseTo(paddle.difference, 12);
    expect(lean).toBeCloseTo(0, 9);
    expect(hand).toBeCloseTo(0, 9);
    expect(paddle.longerThanAthlete).toBe(true);
    expect(mainReason(paddle.changes)).toBe('knee');
  });
});

describe('the paddle in a whole report', () => {
  it('a pad one centimetre higher asks for a paddle about one centimetre longer, and lifts the lower hand', () => {
    const place = { seat: 0, coordinate: 'kneePad.heightM' } as const;
    const higher = withCoordinate(fit, place, seat.kneePad.heightM + 0.01);
    for (const id of ['paddleByStance', 'paddleDifference', 'handOverWater', 'handOverGunwale']) {
      const gained = figureOf(higher, id) - figureOf(fit, id);
      expect(gained, id).toBeGreaterThan(0.006);
      expect(gained, id).toBeLessThan(0.014);
    }
    expect(figureOf(higher, 'paddleByStature')).toBe(figureOf(fit, 'paddleByStature'));
  });

  it('leaning farther forward at the catch reaches farther', () => {
    const farther = exampleFit([exampleSeat({ stroke: { catchPitchDeg: 45 } })]);
    const shorter = exampleFit([exampleSeat({ stroke: { catchPitchDeg: 20 } })]);
    expect(figureOf(farther, 'catchReach')).toBeGreaterThan(figureOf(shorter, 'catchReach') + 0.05);
  });

  it('every figure carries a spread of millimetres to centimetres once it is evaluated', () => {
    const { sd } = report.quantities.find((q) => q.id === 'paddleByStance')!;
    expect(sd!).toBeGreaterThan(0.005);
    expect(sd!).toBeLessThan(0.08);
  });

  it('leaves the figures out where the boat does not float', () => {
    const state = { ...report.seats[0]!, seat, frame: { stationX: 0, floorZ: 0.03, side: 'left' as const } };
    const sunk = { kind: 'overloaded', massKg: 200, mostKg: 100 } as const;
    expect(paddleOf(state, { hull: hullOfBoat(fit.boat) }, sunk)).toBeNull();
  });
});

describe('heights beside the hand', () => {
  it('water plane of a boat that lies bow up and heeled, by hand', () => {
    const attitude = { draft: 0.1, trim: Math.atan(0.01), heel: Math.atan(0.1) };
    expect(waterZAt(attitude, { x: 0.5, y: -0.2 })).toBeCloseTo(0.1 - 0.005 + 0.02, 12);
  });

  it('sheer: as given at the stations, between them in between, and held past the ends', () => {
    const hull = hullOfBoat(fit.boat);
    const sheers = hull.stations.map(({ x, section }) => ({ x, z: section.at(-1)![1] }));
    for (const { x, z } of sheers) expect(sheerZAt(hull, x)).toBeCloseTo(z, 9);
    const [a, b] = [sheers[3]!, sheers[4]!];
    const between = sheerZAt(hull, (a.x + b.x) / 2);
    expect(between).toBeGreaterThan(Math.min(a.z, b.z) - 0.01);
    expect(between).toBeLessThan(Math.max(a.z, b.z) + 0.01);
    expect(sheerZAt(hull, 99)).toBe(sheerZAt(hull, hull.foreX));
    expect(sheerZAt(hull, -99)).toBe(sheerZAt(hull, hull.aftX));
  });
});

it('a trunk more upright than 35° asks for a longer paddle, by its height’s cosine; the rest is the body’s', () => {
  const middle = { ...midDrive({ body, seat, stances }), trunkPitch: toRadians(20), topHandOver: 0.2 };
  const given = { middle, kneeOverWater: 0.145, usualHand: 0.19, trunk: 0.5 };
  const changes = lengthChanges(0.15, given);
  expect(changes.lean).toBeCloseTo(0.5 * (Math.cos(Math.PI / 9) - Math.cos((35 * Math.PI) / 180)), 12);
  expect(changes.lean).toBeGreaterThan(0.05);
  expect(changes.hand).toBeCloseTo(0.01, 12);
  expect(changes.knee + changes.lean + changes.hand + changes.body).toBeCloseTo(0.15, 12);
});
