import { describe, expect, it } from 'vitest';
import type { Fit } from '../../../../core/document/fit-schema.ts';
import { figureSolids, JOINTS } from '../../../../core/figure/figure-solids.ts';
import { paddleShape } from '../../../../core/figure/paddle-shape.ts';
import { norm, subtract } from '../../../../core/frame/vec3.ts';
import { angleMarks } from '../../../../renderer/drawing/view/angle-marks.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../../../core/example/example-fit.ts';
import { valuesOf } from '../../../core/example/values-of.ts';
import { notEmpty } from '../../../not-empty.ts';

const seated = (fit: Fit) => valuesOf(fit).seats[0]!;
const solidsOf = (fit: Fit) => {
  const { stances, body } = seated(fit);
  return figureSolids(stances.ready, body);
};
const with_ = (pad: Partial<Fit['seats'][0]['kneePad']>) => {
  const seat = exampleSeat();
  return exampleFit([{ ...seat, kneePad: { ...seat.kneePad, ...pad } }]);
};

describe('the figure as solids', () => {
  it('has flesh round every joint that gets a circle', () => {
    const { stances, body } = seated(exampleFit());
    const balls = figureSolids(stances.ready, body).flatMap(({ hulls }) => hulls.flat());
    for (const [name] of JOINTS) {
      const at = stances.ready.points[name];
      expect(balls.some((b) => norm(subtract(b.at, at)) < b.radius)).toBe(true);
    }
  });

  it('kneels on the pad and stands on the board: no flesh lies more than a few millimetres under them', () => {
    const fit = exampleFit();
    const { support } = seated(fit);
    const lowest = (limb: string) =>
      Math.min(
        ...solidsOf(fit)
          .filter((s) => s.limb === limb)
          .flatMap(({ hulls }) => hulls.flat())
          .map(({ at, radius }) => at.z - radius),
      );
    expect(lowest('frontLeg')).toBeGreaterThan(fit.boat.floorboard.heightM - 0.004);
    const knee = solidsOf(fit)
      .filter((s) => s.limb === 'kneelingLeg')
      .flatMap(({ hulls }) => hulls.flat())
      .filter(({ at }) => Math.abs(at.x - support.contacts.knee.x) < 0.05);
    expect(Math.min(...knee.map(({ at, radius }) => at.z - radius))).toBeGreaterThan(
      support.contacts.knee.z - 0.012,
    );
  });

  it('is as tall as the stance says, to a centimetre', () => {
    const { stances } = seated(exampleFit());
    const balls = solidsOf(exampleFit()).flatMap(({ hulls }) => hulls.flat());
    const top = Math.max(...balls.map(({ at, radius }) => at.z + radius));
    expect(Math.abs(top - stances.ready.points.headTop.z)).toBeLessThan(0.01);
  });

  it('is the mirror image for the other side', () => {
    const left = solidsOf(exampleFit());
    const right = solidsOf(exampleFit([exampleSeat({ side: 'right' })]));
    notEmpty(left).forEach((solid, i) => {
      notEmpty(solid.hulls).forEach((balls, j) => {
        balls.forEach(({ at, radius }, k) => {
          const other = right[i]!.hulls[j]!;
          const nearest = Math.min(
            ...other.map(
              (b) => Math.hypot(b.at.x - at.x, b.at.y + at.y, b.at.z - at.z) + Math.abs(b.radius - radius),
            ),
          );
          expect(nearest, `${solid.limb} ${j} ${k}`).toBeLessThan(1e-9);
        });
      });
    });
  });

  it('looks ahead, never astern, as the trunk turns', () => {
    for (const side of ['left', 'right'] as const) {
      const { stances, body } = seated(exampleFit([exampleSeat({ side })]));
      for (const phase of ['ready', 'catch', 'exit'] as const) {
        const head = figureSolids(stances[phase], body).find(({ limb }) => limb === 'head')!;
        const nose = head.hulls.at(-1)![1]!.at;
        expect(nose.x).toBeGreaterThan(stances[phase].points.neck.x);
      }
    }
  });
});

describe('whatever is asked of it', () => {
  const strange: Fit[] = [
    ...[-0.2, 0, 0.1, 0.3, 0.5, 1].map((aftM) => with_({ aftM })),
    ...[0.01, 0.2, 0.4].map((heightM) => with_({ heightM })),
    ...[-0.3, 0.3].map((outM) => with_({ outM })),
    exampleFit([exampleSeat({ athlete: exampleAthlete({ statureM: 1.35, massKg: 32 }) })]),
    exampleFit([exampleSeat({ athlete: exampleAthlete({ statureM: 2.1, massKg: 110 }) })]),
  ];

  it('every ball and every arc is a number, and the paddle too', () => {
    for (const fit of strange) {
      const { stances, body } = seated(fit);
      for (const { hulls } of figureSolids(stances.ready, body)) {
        for (const { at, radius } of hulls.flat()) {
          expect([at.x, at.y, at.z, radius].every(Number.isFinite)).toBe(true);
          expect(radius).toBeGreaterThan(0);
        }
      }
      for (const { arc } of angleMarks(stances.ready, 200)) {
        expect(arc.points.every((p) => Number.isFinite(p.x + p.y + p.z))).toBe(true);
      }
      const { topHand, lowerHand } = stances.ready.points;
      const shape = paddleShape(fit.seats[0]!.paddle, { top: topHand, lower: lowerHand })!;
      expect(shape.blade.every((p) => Number.isFinite(p.x + p.y + p.z))).toBe(true);
    }
  });
});

describe('the paddle in space', () => {
  it('is as long as it is, straight through both hands, its blade square to the way of the boat', () => {
    const { points } = seated(exampleFit()).stances.ready;
    const { paddle } = exampleSeat();
    const shape = paddleShape(paddle, { top: points.topHand, lower: points.lowerHand })!;
    const tip = shape.blade.reduce((a, b) => (b.z < a.z ? b : a));
    expect(norm(subtract(tip, points.topHand))).toBeGreaterThan(paddle.lengthM - 0.01);
    expect(norm(subtract(shape.shaft[1], shape.shaft[0]))).toBeCloseTo(
      paddle.lengthM - paddle.bladeLengthM,
      9,
    );
    const across = subtract(shape.grip[1], shape.grip[0]);
    expect(across.x).toBeCloseTo(0, 9);
  });
});
