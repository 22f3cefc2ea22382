import { describe, expect, it } from 'vitest';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { ovalsOf as fleshOvals } from '../../../core/figure/body-part.ts';
import { type Figure, figureBox, figureOf } from '../../../core/figure/figure.ts';
import { figureShapes } from '../../../core/figure/figure-shapes.ts';
import { paddleShape } from '../../../core/figure/paddle-shape.ts';
import { norm, subtract } from '../../../core/frame/vec3.ts';
import { reachOf } from '../../../core/graphics/oval.ts';
import { pointsOf, ringsOf } from '../../../core/graphics/shape.ts';
import { VIEWS } from '../../../core/graphics/view.ts';
import type { Phase } from '../../../core/posture/stance.ts';
import { notEmpty } from '../../not-empty.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../example/example-fit.ts';
import { valuesOf } from '../example/values-of.ts';

const seated = (fit: Fit) => valuesOf(fit).seats[0]!;

function figureIn(fit: Fit, phase: Phase = 'ready'): Figure {
  const { stances, body } = seated(fit);
  const seat = fit.seats[0]!;
  const { stature, lengths } = body;
  return figureOf(
    stances[phase].points,
    { stature, lengths, sex: seat.athlete!.sex },
    { paddle: seat.paddle, fineness: 'screen' },
  );
}

const ovalsOf = ({ parts }: Figure, limb?: string) =>
  parts.filter((part) => !limb || part.limb === limb).flatMap(({ flesh }) => flesh.flatMap(fleshOvals));
const lowest = (ovals: ReturnType<typeof ovalsOf>) =>
  Math.min(...ovals.map((oval) => oval.at.z - reachOf(oval).z));
const PHASES = ['ready', 'catch', 'exit'] as const;
const SIDES = ['left', 'right'] as const;

describe('the figure in space', () => {
  it('kneels on the pad and stands on the board: no flesh lies more than a few millimetres under them', () => {
    const fit = exampleFit();
    const { support } = seated(fit);
    const figure = figureIn(fit);
    expect(lowest(ovalsOf(figure, 'frontLeg'))).toBeGreaterThan(fit.boat.floorboard.heightM - 0.004);
    const knee = ovalsOf(figure, 'kneelingLeg').filter(
      ({ at }) => Math.abs(at.x - support.contacts.knee.x) < 0.05,
    );
    expect(lowest(knee)).toBeGreaterThan(support.contacts.knee.z - 0.012);
  });

  it('is as tall as the stance says, to a centimetre', () => {
    const { stances } = seated(exampleFit());
    const tops = ringsOf(figureShapes(figureIn(exampleFit()), 'profile')).flatMap(pointsOf);
    const top = Math.max(...tops.map(([, z]) => z));
    expect(Math.abs(top - stances.ready.points.headTop.z)).toBeLessThan(0.01);
  });

  it('lies inside its box in every view', () => {
    const figure = figureIn(exampleFit());
    const { least, most } = figureBox(figure);
    for (const [x, z] of notEmpty(ringsOf(figureShapes(figure, 'profile')).flatMap(pointsOf))) {
      expect(x).toBeGreaterThan(least.x - 0.02);
      expect(x).toBeLessThan(most.x + 0.02);
      expect(z).toBeGreaterThan(least.z - 0.02);
      expect(z).toBeLessThan(most.z + 0.02);
    }
  });

  it('is the mirror image for the other side', () => {
    const [left, right] = SIDES.map((side) => ovalsOf(figureIn(exampleFit([exampleSeat({ side })]))));
    for (const { at } of notEmpty(left!)) {
      const nearest = Math.min(
        ...right!.map((other) => Math.hypot(other.at.x - at.x, other.at.y + at.y, other.at.z - at.z)),
      );
      expect(nearest).toBeLessThan(1e-9);
    }
  });

  it('looks ahead, never astern, as the trunk turns', () => {
    for (const side of SIDES) {
      for (const phase of PHASES) {
        const { ahead } = figureIn(exampleFit([exampleSeat({ side })]), phase).head;
        expect(ahead.x).toBeGreaterThan(0.7);
        expect(Math.abs(ahead.y)).toBeLessThan(0.2);
      }
    }
  });

  it('follows the body it is of: broader hips and narrower shoulders for her, and half way where nothing is said', () => {
    // ANSUR II means by sex: hip breadth 0.210 of stature for lean women and 0.186 for lean men, NATICK/TR-15/007.
    const hips = (sex: 'female' | 'male' | 'unspecified') => {
      const figure = figureIn(exampleFit([exampleSeat({ athlete: exampleAthlete({ sex }) })]));
      const seat = figure.parts.find(({ name }) => name === 'seat')!;
      return Math.max(...fleshOvals(seat.flesh.at(-1)!).map((oval) => reachOf(oval).y));
    };
    expect(hips('female')).toBeGreaterThan(hips('male'));
    expect(hips('unspecified')).toBeCloseTo((hips('female') + hips('male')) / 2, 2);
  });
});

describe('whatever is asked of it', () => {
  const withPad = (pad: Partial<Fit['seats'][0]['kneePad']>) => {
    const seat = exampleSeat();
    return exampleFit([{ ...seat, kneePad: { ...seat.kneePad, ...pad } }]);
  };
  const strange: Fit[] = [
    ...[-0.2, 0, 0.1, 0.3, 0.5, 1].map((aftM) => withPad({ aftM })),
    ...[0.01, 0.2, 0.4].map((heightM) => withPad({ heightM })),
    ...[-0.3, 0.3].map((outM) => withPad({ outM })),
    exampleFit([exampleSeat({ athlete: exampleAthlete({ statureM: 1.35, massKg: 32 }) })]),
    exampleFit([exampleSeat({ athlete: exampleAthlete({ statureM: 2.1, massKg: 110 }) })]),
  ];

  it('every point of it is a number in every view', () => {
    for (const fit of notEmpty(strange)) {
      const figure = figureIn(fit);
      for (const view of VIEWS) {
        for (const ring of ringsOf(figureShapes(figure, view))) {
          expect(ring.every(Number.isFinite)).toBe(true);
        }
      }
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
