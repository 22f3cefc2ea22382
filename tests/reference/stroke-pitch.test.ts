import { describe, expect, it } from 'vitest';
import { evaluateFit } from '../../core/evaluation/evaluator.ts';
import type { Hull } from '../../core/hull/hull.ts';
import { hullFromOffsets } from '../../core/hull/hull-from-offsets.ts';
import type { Afloat, PointMass } from '../../core/hydrostatics/afloat.ts';
import { floatAtRest } from '../../core/hydrostatics/float-at-rest.ts';
import { addedPitchInertia, rigidPitchInertia, shellPitchInertia } from '../../core/stroke/pitch-inertia.ts';
import { amplification, pitchResponse } from '../../core/stroke/pitch-response.ts';
import { exampleFit } from '../core/example/example-fit.ts';
import { sampleHull } from './hydro-sample-hulls.ts';
import { box, evenPlaces, sampled } from './hydro-shapes.ts';

const WATER = 1000;

function atRest(hull: Hull, masses: readonly PointMass[]): Afloat {
  const found = floatAtRest(hull, { masses, waterDensity: WATER });
  if (found.kind !== 'afloat') throw new Error(found.kind);
  return found;
}

describe('pitch inertia of a box 5 × 0.5 × 0.4 m against closed forms', () => {
  const hull = box();
  const level = { draft: 0.15, trim: 0, heel: 0 };

  it('added inertia about the middle: ρπ/8·B²·L³/12', () => {
    const closed = ((WATER * Math.PI) / 8) * 0.5 ** 2 * (5 ** 3 / 12);
    expect(addedPitchInertia(hull, level, { waterDensity: WATER, aboutX: 0 })).toBeCloseTo(closed, 6);
  });

  it('about another place it grows by the parallel-axis rule: + ρπ/8·B²·L·d²', () => {
    const closed = ((WATER * Math.PI) / 8) * 0.5 ** 2 * (5 ** 3 / 12 + 5 * 0.3 ** 2);
    expect(addedPitchInertia(hull, level, { waterDensity: WATER, aboutX: 0.3 })).toBeCloseTo(closed, 6);
  });

  it('its shell as a tube: m·L²/12', () => {
    expect(shellPitchInertia(hull, 14)).toBeCloseTo((14 * 25) / 12, 9);
  });

  it('natural period by hand', () => {
    const masses = [{ mass: 375, x: 0, y: 0, z: 0.12 }];
    const afloat = atRest(hull, masses);
    const answer = pitchResponse({
      hull,
      afloat,
      masses,
      hullMassKg: 20,
      waterDensity: WATER,
      ratePerMin: 60,
    })!;
    const inertia = (20 * 25) / 12 + ((WATER * Math.PI) / 8) * 0.25 * (125 / 12);
    const gm = 25 / (12 * 0.15) + 0.075 - 0.12;
    expect(answer.stiffness).toBeCloseTo(375 * 9.80665 * gm, 4);
    expect(answer.naturalPeriod).toBeCloseTo(2 * Math.PI * Math.sqrt(inertia / (375 * 9.80665 * gm)), 6);
  });

  it('two masses on a rod: m·(d/2)² each', () => {
    const ends = [-1.5, 1.5].map((x) => ({ mass: 10, x, y: 3, z: 0.2 }));
    expect(rigidPitchInertia(ends)).toBeCloseTo(2 * 10 * 1.5 ** 2, 9);
  });
});

/** Wigley's form with straight sides above its waterline: y = B/2·(1 − ξ²)(1 − ζ²), metres. */
function wigley(L: number, B: number, T: number): Hull {
  const stations = sampled(evenPlaces(L / 2, 41), 61, (x) => (s) => [
    (B / 2) * (1 - ((2 * x) / L) ** 2) * (s < 0.5 ? 1 - (1 - 2 * s) ** 2 : 1),
    s * 2 * T,
  ]);
  return hullFromOffsets({ name: 'wigley', stations });
}

describe('a Wigley-form single, 5.2 × 0.42 × 0.1031 m', () => {
  it('added inertia: ρπ/8·B²·L³·(1/3 − 2/5 + 1/7)/4', () => {
    const closed = (((WATER * Math.PI) / 8) * 0.42 ** 2 * 5.2 ** 3 * (1 / 3 - 2 / 5 + 1 / 7)) / 4;
    const level = { draft: 0.1031, trim: 0, heel: 0 };
    const added = addedPitchInertia(wigley(5.2, 0.42, 0.1031), level, { waterDensity: WATER, aboutX: 0 });
    expect(added / closed).toBeGreaterThan(0.998);
    expect(added / closed).toBeLessThan(1.002);
  });
});

/** The solved figure of an 80 kg paddler, its paddle with it. */
const PADDLER: PointMass[] = evaluateFit(exampleFit()).seats[0]!.stances.ready.masses.map(
  ({ massKg, centre }) => ({ mass: massKg, ...centre }),
);

const RANGES =
  'derived for Wigley forms of 5.2 × 0.36–0.42 m, 100 kg: period 0.67–0.87 s, added over rigid inertia 3–4';

/** The ranges were derived for an assumed centre of mass and paddler, to two figures. */
const EDGE = 0.03;

describe(`racing singles with an 80 kg paddler (${RANGES})`, () => {
  const masses = [{ mass: 14, x: 0, y: 0, z: 0.12 }, ...PADDLER];
  const answerFor = (hull: Hull) => {
    const afloat = atRest(hull, masses);
    return pitchResponse({ hull, afloat, masses, hullMassKg: 14, waterDensity: WATER, ratePerMin: 60 })!;
  };

  it.each([0.36, 0.39, 0.42])('natural period and ratio of inertias, beam %f m', (beam) => {
    const answer = answerFor(wigley(5.2, beam, 0.13));
    expect(answer.naturalPeriod).toBeGreaterThan(0.67 * (1 - EDGE));
    expect(answer.naturalPeriod).toBeLessThan(0.87 * (1 + EDGE));
    expect(answer.addedInertia / answer.rigidInertia).toBeGreaterThan(3 * (1 - EDGE));
    expect(answer.addedInertia / answer.rigidInertia).toBeLessThan(4 * (1 + 3 * EDGE));
  });

  const answer = answerFor(sampleHull('single'));

  it('the sample single', () => {
    expect(answer.naturalPeriod).toBeGreaterThan(0.67 * (1 - EDGE));
    expect(answer.naturalPeriod).toBeLessThan(0.87 * (1 + EDGE));
    expect(answer.addedInertia / answer.rigidInertia).toBeGreaterThan(3);
    expect(answer.addedInertia / answer.rigidInertia).toBeLessThan(4);
  });

  it('near the stroke’s own period, so pitching is more than the quasi-static trim', () => {
    expect(answer.strokePeriod).toBe(1);
    expect(answer.amplification.least).toBeGreaterThan(1);
    expect(answer.amplification.most).toBeLessThan(1 / (2 * 0.1 * Math.sqrt(1 - 0.01)) + 1e-9);
    expect(answer.kind).toBe('order of magnitude');
  });
});

describe('amplification against a numerical integration of the damped oscillator (Runge–Kutta of fourth order)', () => {
  /** Amplitude of x″ + 2ζωx′ + ω²x = ω²·cos(νt) once it has settled, ω = 1. */
  function settled(ratio: number, damping: number): number {
    const step = 0.01;
    const slope = (t: number, [x, v]: readonly [number, number]): [number, number] => [
      v,
      Math.cos(ratio * t) - 2 * damping * v - x,
    ];
    const moved = ([x, v]: readonly [number, number], [a, b]: readonly [number, number], h: number) =>
      [x + h * a, v + h * b] as const;
    let state: readonly [number, number] = [0, 0];
    let most = 0;
    for (let i = 0; i < 20_000; i++) {
      const t = i * step;
      const k1 = slope(t, state);
      const k2 = slope(t + step / 2, moved(state, k1, step / 2));
      const k3 = slope(t + step / 2, moved(state, k2, step / 2));
      const k4 = slope(t + step, moved(state, k3, step));
      const mean: [number, number] = [
        (k1[0] + 2 * k2[0] + 2 * k3[0] + k4[0]) / 6,
        (k1[1] + 2 * k2[1] + 2 * k3[1] + k4[1]) / 6,
      ];
      state = moved(state, mean, step);
      if (t > 150) most = Math.max(most, Math.abs(state[0]));
    }
    return most;
  }

  it.each([
    [0.5, 0.1],
    [0.75, 0.2],
    [1, 0.1],
    [1, 0.3],
    [1.3, 0.15],
  ])('period ratio %f, damping ratio %f', (ratio, damping) => {
    expect(amplification(ratio, damping) / settled(ratio, damping)).toBeCloseTo(1, 3);
  });
});
