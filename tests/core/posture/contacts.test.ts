import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BODY_LENGTHS } from '../../../core/body/body.ts';
import { estimateBody } from '../../../core/body/estimate-body.ts';
import type { Seat } from '../../../core/document/seat-schema.ts';
import { norm, subtract } from '../../../core/frame/vec3.ts';
import { type BodyLengths, contactsOf, lengthsOf, paddlingSign } from '../../../core/posture/contacts.ts';
import { cases } from '../../cases.ts';
import { exampleSeat } from '../example/example-fit.ts';

const body = estimateBody({ stature: 1.8, mass: 80, sex: 'male' });
const lengths = lengthsOf(body);
const seat = exampleSeat();
const at = (more: { pad?: object; rest?: object; foot?: object } = {}, own: BodyLengths = lengths) => {
  const moved = {
    ...seat,
    kneePad: { ...seat.kneePad, ...more.pad },
    rearRest: { ...seat.rearRest, ...more.rest },
    frontFoot: { ...seat.frontFoot, ...more.foot },
  };
  return contactsOf(moved, own, body.stature);
};
const between = (a: { x: number; y: number; z: number }, b: typeof a) => norm(subtract(a, b));

describe('lengthsOf', () => {
  it('is every length’s value without its spread', () => {
    for (const name of BODY_LENGTHS) expect(lengths[name]).toBe(body.lengths[name].value);
    expect(Object.keys(lengths)).toHaveLength(BODY_LENGTHS.length);
  });
});

describe('paddlingSign', () => {
  it.each([
    ['left', undefined, 1],
    ['left', 'left', 1],
    ['left', 'right', -1],
    ['right', undefined, 1],
    ['right', 'left', -1],
  ] as const)('paddling %s and kneeling %s: %i', (side, kneels, expected) => {
    const kneeling: Pick<Seat, 'side' | 'kneels'> = kneels ? { side, kneels } : { side };
    expect(paddlingSign(kneeling)).toBe(expected);
  });
});

describe('the kneeling knee', () => {
  it('bears on the recess as far as the foam lets it sink; its joint is a knee’s radius above', () => {
    const { kneeContact, knee } = at();
    expect(kneeContact).toEqual({ x: -0.175, y: 0.035, z: 0.11 - 0.008 });
    expect(knee.z - kneeContact.z).toBeCloseTo(lengths.kneeRadius, 12);
    expect([knee.x, knee.y]).toEqual([kneeContact.x, kneeContact.y]);
  });
});

describe('the rear foot', () => {
  it('has its ball on the rest, 2 cm above its edge at 1.80 m', () => {
    const { rearBall } = at();
    expect([rearBall.x, rearBall.y]).toEqual([-0.62, -0.1]);
    expect(rearBall.z - 0.05).toBeCloseTo(0.0198, 6);
  });

  it('keeps shank and foot their lengths wherever it is in reach, the ankle in the upright plane of knee and ball', () => {
    const toBall = Math.hypot(lengths.heelToBall - lengths.heelToAnkle, lengths.ankleHeight);
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 0.66, noNaN: true }),
        fc.double({ min: -0.2, max: 0.05, noNaN: true }),
        (aftM, outM) => {
          const { knee, rearAnkle, rearBall, rearShortfall } = at({ rest: { aftM, outM } });
          expect(rearShortfall).toBe(0);
          expect(between(knee, rearAnkle)).toBeCloseTo(lengths.shank, 2);
          expect(between(rearAnkle, rearBall)).toBeCloseTo(toBall, 2);
          const leg = subtract(rearBall, knee);
          const off = subtract(rearAnkle, knee);
          expect(leg.x * off.y - leg.y * off.x).toBeCloseTo(0, 9);
          expect(rearAnkle.z).toBeGreaterThan(rearBall.z);
        },
      ),
      { seed: 21, numRuns: cases(27, 80) },
    );
  });

  it('says by how much it does not reach', () => {
    const toBall = Math.hypot(lengths.heelToBall - lengths.heelToAnkle, lengths.ankleHeight);
    const { rearShortfall, knee, rearBall } = at({ rest: { aftM: 1.5 } });
    expect(rearShortfall).toBeCloseTo(between(knee, rearBall) - lengths.shank - toBall, 6);
    expect(rearShortfall).toBeGreaterThan(0.5);
  });

  it('has its heel behind and above the ankle and its toes under and ahead of the ball', () => {
    const { rearHeel, rearAnkle, rearBall, rearToe } = at();
    expect(rearHeel.x).toBeLessThan(rearAnkle.x);
    expect(rearToe.x).toBeGreaterThan(rearBall.x);
    expect(rearToe.z).toBeLessThan(rearBall.z);
  });
});

describe('the front foot', () => {
  it('lies flat from its heel: ball, toe and ankle where the body has them', () => {
    const { frontHeel, frontBall, frontToe, frontAnkle } = at();
    expect(frontHeel).toEqual({ x: 0.4, y: -0.06, z: 0 });
    expect(frontBall.x - frontHeel.x).toBeCloseTo(lengths.heelToBall, 12);
    expect(frontToe.x - frontHeel.x).toBeCloseTo(lengths.footLength, 12);
    expect(frontAnkle.x - frontHeel.x).toBeCloseTo(lengths.heelToAnkle, 12);
    expect(frontAnkle.z).toBeCloseTo(lengths.ankleHeight, 12);
    expect([frontBall.y, frontToe.y, frontAnkle.y]).toEqual([-0.06, -0.06, -0.06]);
  });

  it('turned out, takes the toes away from the kneeling side', () => {
    const { frontHeel, frontToe, frontDirection } = at({ foot: { toeOutDeg: 30 } });
    expect(frontToe.y - frontHeel.y).toBeCloseTo(-lengths.footLength / 2, 9);
    expect(frontDirection.x).toBeCloseTo(Math.cos(Math.PI / 6), 12);
    expect(frontDirection.z).toBe(0);
  });

  it('on a wedge, lifts the toes and keeps every distance of the foot', () => {
    const flat = at();
    const wedged = at({ foot: { wedgeDeg: 15 } });
    expect(wedged.frontToe.z - wedged.frontHeel.z).toBeCloseTo(
      lengths.footLength * Math.sin((15 * Math.PI) / 180),
      12,
    );
    for (const [a, b] of [
      ['frontHeel', 'frontAnkle'],
      ['frontAnkle', 'frontToe'],
      ['frontBall', 'frontAnkle'],
    ] as const) {
      expect(between(wedged[a], wedged[b])).toBeCloseTo(between(flat[a], flat[b]), 12);
    }
  });
});
