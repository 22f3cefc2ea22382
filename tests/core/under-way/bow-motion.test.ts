import { describe, expect, it } from 'vitest';
import { evaluateFit } from '../../../core/evaluation/evaluator.ts';
import { strokeCycle } from '../../../core/stroke/stroke-cycle.ts';
import { strokeOfFit } from '../../../core/stroke/stroke-of-fit.ts';
import { type MovingBoat, motionAt, restAt } from '../../../core/under-way/boat-motion.ts';
import { bowMotion, INSTANTS_PER_STROKE } from '../../../core/under-way/bow-motion.ts';
import { harmonicsOf, seriesOf } from '../../../core/under-way/harmonics.ts';
import { exampleFit } from '../example/example-fit.ts';

const NO_WATER = { added: [0, 0, 0], damping: [0, 0, 0] } as const;
const free: MovingBoat = {
  massKg: 100,
  momentX: -8,
  momentZ: 40,
  inertia: 90,
  stiffness: { heave: 0, coupled: 0, pitch: 0 },
  surgeAdded: 0,
  surgeDamping: 0,
  speed: 0,
  water: () => NO_WATER,
};
const real = (re: number) => ({ re, im: 0 });
const NONE = real(0);

describe('motionAt', () => {
  it('without water is a rigid body in closed form: a force at the height of the centre turns nothing', () => {
    const height = free.momentZ / free.massKg;
    const [surge, , pitch] = motionAt(free, 5, { surge: real(50), heave: NONE, pitch: real(-50 * height) });
    expect(pitch!.re).toBeCloseTo(0, 12);
    expect(surge!.re).toBeCloseTo(-50 / (100 * 25), 12);
  });

  it('under slow forces, with no speed and surge held, comes to rest where statics say', () => {
    const stiffness = { heave: 17000, coupled: 900, pitch: 21000 };
    const held = { ...free, stiffness, surgeAdded: 1e12 };
    const rest = restAt(held, { heave: 60, pitch: 150 });
    const [, heave, pitch] = motionAt(held, 1e-3, { surge: NONE, heave: real(60), pitch: real(150) });
    expect(heave!.re / rest.heave).toBeCloseTo(1, 5);
    expect(pitch!.re / rest.pitch).toBeCloseTo(1, 5);
    expect(stiffness.heave * rest.heave + stiffness.coupled * rest.pitch).toBeCloseTo(60, 9);
  });

  it('balances energy: what the forces do in a stroke is what damping takes', () => {
    const water = () => ({ added: [60, -5, 70] as const, damping: [180, 12, 150] as const });
    const boat = {
      ...free,
      stiffness: { heave: 17000, coupled: 900, pitch: 21000 },
      surgeDamping: 30,
      water,
    };
    const omega = 6.5;
    const force = { surge: { re: 90, im: -40 }, heave: { re: 20, im: 70 }, pitch: { re: -50, im: 120 } };
    const q = motionAt(boat, omega, force);
    const power = [force.surge, force.heave, force.pitch].reduce(
      // Mean of F·q̇ is ½ Re(F·conj(iωq)).
      (sum, f, i) => sum + 0.5 * omega * (f.im * q[i]!.re - f.re * q[i]!.im),
      0,
    );
    const square = (z: { re: number; im: number }) => z.re ** 2 + z.im ** 2;
    const cross = q[1]!.re * q[2]!.re + q[1]!.im * q[2]!.im;
    const { damping } = water();
    const lost =
      0.5 *
      omega ** 2 *
      (30 * square(q[0]!) + damping[0] * square(q[1]!) + damping[2] * square(q[2]!) + 2 * damping[1] * cross);
    expect(power / lost).toBeCloseTo(1, 9);
  });
});

describe('harmonics', () => {
  it('give a smooth series back', () => {
    const series = Array.from(
      { length: 32 },
      (_, i) => 3 + Math.cos((2 * Math.PI * i) / 32) - 2 * Math.sin((6 * Math.PI * i) / 32),
    );
    const back = seriesOf(harmonicsOf(series, 5), 32);
    expect(Math.max(...back.map((value, i) => Math.abs(value - series[i]!)))).toBeLessThan(1e-12);
  });
});

describe('bowMotion of the example single', () => {
  const fit = exampleFit();
  const report = evaluateFit(fit);
  const crew = strokeOfFit(fit, report);
  const afloat = report.afloat.ready;
  if (afloat.kind !== 'afloat') throw new Error(afloat.kind);
  const asked = { ratePerMin: 60, speed: 4.2, surgeDamping: 28 };
  const motion = bowMotion(crew, afloat, asked)!;

  it('has a natural pitch period of about 0.56 s (an independent strip computation), not 0.67', () => {
    const { value, sd } = motion.naturalPeriods.pitch;
    expect(value).toBeGreaterThan(0.52);
    expect(value).toBeLessThan(0.6);
    // T ∝ √(I + A): 15 % more of A, which is at most the whole of I + A, is at most 7.5 % more of T.
    expect(sd).toBeGreaterThan(0);
    expect(sd).toBeLessThan(0.075 * value);
  });

  it('lifts the bow in the drive by the couple of blade and drag, more than the moving weight swings it', () => {
    expect(motion.swing.value).toBeGreaterThan(motion.stillSwing);
    const highest = motion.bow.indexOf(Math.max(...motion.bow)) / INSTANTS_PER_STROKE;
    expect(highest).toBeGreaterThan(0.15);
    expect(highest).toBeLessThan(motion.exitAt + 0.2);
  });

  it('follows five harmonics of the stroke and no more', () => {
    const sizes = harmonicsOf(motion.bow, 7).map(({ re, im }) => Math.hypot(re, im));
    expect(sizes[5]!).toBeGreaterThan(1e-6);
    expect(Math.max(...sizes.slice(6))).toBeLessThan(1e-12);
  });

  it('says how far it may be off, and is an estimate', () => {
    expect(motion.kind).toBe('estimate');
    expect(motion.swing.sd).toBeGreaterThan(0.001);
    expect(Math.min(...motion.sd)).toBeGreaterThanOrEqual(0);
    expect(motion.bow).toHaveLength(INSTANTS_PER_STROKE);
  });

  it('swings with the strength of the stroke', () => {
    const weak = {
      ...crew,
      seats: crew.seats.map(
        (s) => s && { ...s, seat: { ...s.seat, stroke: { ...s.seat.stroke, driveForceN: 60 } } },
      ),
    };
    expect(bowMotion(weak, afloat, asked)!.swing.value).toBeLessThan(motion.swing.value);
  });

  it('is null without a stroke', () => {
    expect(bowMotion(crew, afloat, { ...asked, ratePerMin: 0 })).toBeNull();
    expect(bowMotion({ ...crew, seats: [null] }, afloat, asked)).toBeNull();
  });
});

it('the bow at rest at every instant is where floating the boat at each puts it, in a hull full at one end', () => {
  const stations = Array.from({ length: 41 }, (_, i) => {
    const share = i / 20 - 1;
    const plan = 0.2 * (1 - share ** 2) * (1 - 0.85 * share);
    const section = [0, 0.25, 0.5, 0.75, 1].map((t): [number, number] => [plan * Math.sqrt(t), 0.3 * t]);
    return { xM: 2.6 * share, section };
  });
  const fit = exampleFit();
  const boat = { ...fit.boat, hull: { kind: 'offsets' as const, stations } };
  // No blade: the body's weight alone moves the boat.
  const stroke = { driveForceN: 1e-9 };
  const own = { ...fit, boat, seats: fit.seats.map((seat) => ({ ...seat, stroke })) };
  const report = evaluateFit(own);
  const rest = report.afloat.ready;
  if (rest.kind !== 'afloat') throw new Error(rest.kind);
  expect(rest.waterplane.lcf).toBeLessThan(-0.25);
  const crew = strokeOfFit(own, report);
  const bows = strokeCycle(crew, 24).map(({ afloat }) => {
    if (afloat.kind !== 'afloat') throw new Error(afloat.kind);
    return 2.6 * Math.tan(afloat.trim) - afloat.draft;
  });
  const motion = bowMotion(crew, rest, { ratePerMin: 60, speed: 4.2, surgeDamping: 28 })!;
  expect(motion.stillSwing / (Math.max(...bows) - Math.min(...bows))).toBeCloseTo(1, 1);
});
