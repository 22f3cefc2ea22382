import { describe, expect, it } from 'vitest';
import { estimateBody } from '../../../core/body/estimate-body.ts';
import { BANDS } from '../../../core/evaluation/bands.ts';
import { norm, subtract } from '../../../core/frame/vec3.ts';
import { fromSingle, movedAft, usualSetting } from '../../../core/optimise/usual-setting.ts';
import { solveStance } from '../../../core/posture/solve-stance.ts';

const man = estimateBody({ stature: 1.8, mass: 80, sex: 'male' });
const girl = estimateBody({ stature: 1.5, mass: 45, sex: 'female' });
const band = (quantity: string, crew: number) =>
  BANDS.find((b) => b.quantity === quantity && (b.crews?.includes(crew) ?? true))!;

describe('usualSetting', () => {
  it.each([1, 2, 3, 4])('of a crew of %i lies inside the bands for it', (crew) => {
    const { kneePad } = usualSetting(man, crew, 'left');
    for (const [quantity, value] of [
      ['padOut', kneePad.outM],
      ['padHeight', kneePad.heightM],
    ] as const) {
      const { min, max } = band(quantity, crew);
      expect(value, quantity).toBeGreaterThan(min! + 0.009);
      expect(value, quantity).toBeLessThan(max! - 0.009);
    }
  });

  it('raises the recess from single to pair and from pair to four, and brings the knee to the boat’s side', () => {
    const [single, pair, four] = [1, 2, 4].map((crew) => usualSetting(man, crew, 'left').kneePad);
    expect(pair!.heightM).toBeGreaterThan(single!.heightM);
    expect(four!.heightM).toBeGreaterThan(pair!.heightM);
    expect(pair!.outM).toBeGreaterThan(single!.outM);
  });

  it('begins a mean adult’s knee in a single in the middle of 15 to 20 cm aft', () => {
    const mean = estimateBody({ stature: 1.72, mass: 68, sex: 'unspecified' });
    expect(usualSetting(mean, 1, 'left').kneePad.aftM).toBeCloseTo(0.175, 3);
  });

  it('scales the places with the legs: knee aft and pad height differ from body to body', () => {
    const statures = [1.63, 1.7, 1.76, 1.82];
    const pads = statures.map(
      (stature) =>
        usualSetting(estimateBody({ stature, mass: 22 * stature ** 2, sex: 'unspecified' }), 1, 'left')
          .kneePad,
    );
    for (const [i, pad] of pads.slice(1).entries()) {
      expect(pad.aftM - pads[i]!.aftM).toBeGreaterThan(0.003);
      expect(pad.heightM - pads[i]!.heightM).toBeGreaterThan(0.002);
    }
  });

  it('grows with the body: a shorter paddler’s rest and front foot come nearer, the paddle shorter', () => {
    const [tall, small] = [man, girl].map((body) => usualSetting(body, 1, 'left'));
    expect(small!.rearRest.aftM).toBeLessThan(tall!.rearRest.aftM - 0.05);
    expect(small!.frontFoot.forwardM).toBeLessThan(tall!.frontFoot.forwardM - 0.04);
    expect(tall!.paddle.lengthM).toBeCloseTo(1.7, 9);
    expect(small!.paddle.lengthM).toBeCloseTo(1.4, 9);
  });
});

describe('the usual lower hand', () => {
  // Medians of stature and mass: ANSUR II, U.S. Army 2012, public release (NATICK/TR-15/007). The hand 15 to 25 cm above the
  // blade's neck: common practice, no source.
  it.each([
    ['female', 1.626, 66.8],
    ['male', 1.755, 84.6],
  ] as const)(
    'of the median %s lies 15 to 25 cm above the neck, where the arm reaches it',
    (sex, stature, mass) => {
      const body = estimateBody({ stature, mass, sex });
      const setting = usualSetting(body, 1, 'left');
      const { lengthM, bladeLengthM, lowerHandM } = setting.paddle;
      const above = lengthM - bladeLengthM - lowerHandM;
      expect(above).toBeGreaterThan(0.15);
      expect(above).toBeLessThan(0.25);
      const frame = { stationX: 0, floorZ: 0.1, side: 'left' as const };
      const { points } = solveStance({ body, seat: { ...setting, athlete: null }, frame, phase: 'ready' });
      const { upperArm, forearm, hand } = body.lengths;
      const reach = upperArm.value + forearm.value + hand.value;
      const apart = norm(subtract(points.lowerHand, points.lowerShoulder));
      expect(apart).toBeLessThan(reach);
      expect(apart).toBeGreaterThan(0.95 * reach);
    },
  );

  it.each([1.4, 1.5, 1.9, 2.1])('at %f m is never nearer the neck than 15 cm', (stature) => {
    const body = estimateBody({ stature, mass: 22 * stature ** 2, sex: 'female' });
    const { lengthM, bladeLengthM, lowerHandM } = usualSetting(body, 1, 'left').paddle;
    expect(lengthM - bladeLengthM - lowerHandM).toBeGreaterThan(0.15 - 1e-9);
  });
});

describe('movedAft', () => {
  it('moves pad, rest and foot alike, and nothing else', () => {
    const usual = usualSetting(man, 1, 'left');
    const moved = movedAft(usual, 0.01);
    expect(moved.kneePad.aftM - usual.kneePad.aftM).toBeCloseTo(0.01, 12);
    expect(moved.rearRest.aftM - usual.rearRest.aftM).toBeCloseTo(0.01, 12);
    expect(moved.frontFoot.forwardM - usual.frontFoot.forwardM).toBeCloseTo(-0.01, 12);
    expect({
      ...moved,
      kneePad: usual.kneePad,
      rearRest: usual.rearRest,
      frontFoot: usual.frontFoot,
    }).toEqual(usual);
  });
});

describe('fromSingle', () => {
  const single = usualSetting(man, 1, 'left');
  const own = { ...single, rearRest: { ...single.rearRest, aftM: single.rearRest.aftM + 0.03, turnDeg: 23 } };
  const seat = fromSingle(own, man, { crew: 2, side: 'right' });

  it('keeps knee, rear foot and front foot as they stand to each other, and the paddle', () => {
    expect(seat.rearRest.aftM - seat.kneePad.aftM).toBeCloseTo(own.rearRest.aftM - own.kneePad.aftM, 12);
    expect(seat.frontFoot.forwardM + seat.kneePad.aftM).toBeCloseTo(
      own.frontFoot.forwardM + own.kneePad.aftM,
      12,
    );
    expect(seat.rearRest.turnDeg).toBe(23);
    expect(seat.paddle).toEqual(own.paddle);
  });

  it('goes where a crew’s pad goes, on the side that is asked', () => {
    expect(seat.kneePad.outM).toBeCloseTo(usualSetting(man, 2, 'right').kneePad.outM, 12);
    expect(seat.side).toBe('right');
  });
});

it('a single’s pad is raised in a crew by as much as crews’ pads usually are', () => {
  const own = usualSetting(man, 1, 'left');
  const raised = { ...own, kneePad: { ...own.kneePad, heightM: own.kneePad.heightM + 0.01 } };
  for (const crew of [2, 4]) {
    const there = fromSingle(raised, man, { crew, side: 'left' }).kneePad.heightM;
    expect(there).toBeCloseTo(usualSetting(man, crew, 'left').kneePad.heightM + 0.01, 12);
    expect(there).toBeGreaterThan(raised.kneePad.heightM);
  }
});
