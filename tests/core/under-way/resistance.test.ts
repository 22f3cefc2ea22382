import { describe, expect, it } from 'vitest';
import { floatAtRest } from '../../../core/hydrostatics/float-at-rest.ts';
import { speedAtPower, towPower } from '../../../core/under-way/equal-power.ts';
import { ittcFriction } from '../../../core/under-way/friction.ts';
import { FORM_FACTOR, type Running, resistance } from '../../../core/under-way/resistance.ts';
import { sampleHull } from '../../reference/hydro-sample-hulls.ts';

const hull = sampleHull('single');
const water = { waterDensity: 1000, kinematicViscosity: 1.14e-6 };

function lying(massKg: number, shift = 0): Running {
  const rest = floatAtRest(hull, { masses: [{ mass: massKg, x: shift, y: 0, z: 0.3 }], waterDensity: 1000 });
  if (rest.kind !== 'afloat') throw new Error(rest.kind);
  return { draft: rest.draft, trim: rest.trim, speed: 4.2, ...water };
}

const median = lying(95);
const total = (running: Running) => resistance(hull, running).total;

describe('resistance of the sample single', () => {
  it('is friction by hand: ½ρU²S·(1 + k)·C_F', () => {
    const r = resistance(hull, median);
    const length = 5.2;
    const byHand = 0.5 * 1000 * 4.2 ** 2 * r.wettedSurface * ittcFriction((4.2 * length) / 1.14e-6);
    expect(r.friction / (byHand * (1 + FORM_FACTOR.value))).toBeCloseTo(1, 2);
  });

  it('is about 55 N in the water at 4.2 m/s with 95 kg: 42 of friction, 13 of waves (an independent computation)', () => {
    const { friction, wave } = resistance(hull, median);
    expect(friction).toBeGreaterThan(40);
    expect(friction).toBeLessThan(47);
    expect(wave).toBeGreaterThan(10);
    expect(wave).toBeLessThan(16);
  });

  it('hardly knows trim: 35 mm of bow up or down are under 1.2 %', () => {
    for (const mm of [-35, 35]) {
      const trim = Math.atan(mm / 1000 / 5.2);
      const rest = total({ ...median, trim: 0 });
      expect(Math.abs(total({ ...median, trim }) / rest - 1)).toBeLessThan(0.012);
    }
  });

  it('knows ten kilograms: 6 to 10 %', () => {
    const more = total(lying(105)) / total(median) - 1;
    expect(more).toBeGreaterThan(0.06);
    expect(more).toBeLessThan(0.1);
  });

  it('hardly knows heel: 10° change the wetted surface by under 1 %', () => {
    const heeled = resistance(hull, { ...median, heel: Math.PI / 18 }).wettedSurface;
    expect(Math.abs(heeled / resistance(hull, median).wettedSurface - 1)).toBeLessThan(0.01);
  });

  it('takes no heel for less weight: 10° at the same weight change the whole by its wetted surface alone, 0.1 %', () => {
    const masses = [{ mass: 95, x: 0, y: 0, z: 0.3 }];
    const rest = floatAtRest(hull, { masses, waterDensity: 1000, heel: Math.PI / 18 });
    if (rest.kind !== 'afloat') throw new Error(rest.kind);
    const { draft, trim, heel } = rest;
    const heeled = resistance(hull, { ...median, draft, trim, heel });
    expect(heeled.wave / resistance(hull, median).wave).toBeCloseTo(1, 3);
    expect(heeled.total).toBeGreaterThan(total(median));
    expect(heeled.total / total(median)).toBeLessThan(1.002);
  });

  it('adds up, grows with speed, and is 0 at rest', () => {
    const r = resistance(hull, median);
    expect(r.total).toBeCloseTo(r.friction + r.wave + r.air, 12);
    // Root of the sum of squares of three stated doubts: form factor ± 0.04 of plain friction, waves ± 15 %, air ± 30 %.
    const plate = r.friction / (1 + FORM_FACTOR.value);
    expect(r.sd).toBeCloseTo(Math.hypot(0.04 * plate, 0.15 * r.wave, 0.3 * r.air), 9);
    expect(total({ ...median, speed: 0 })).toBe(0);
    const speeds = [1, 2, 3, 4, 5, 6].map((speed) => total({ ...median, speed }));
    for (let i = 1; i < speeds.length; i++) expect(speeds[i]!).toBeGreaterThan(speeds[i - 1]!);
  });

  it.each([-1, Number.NaN, Number.POSITIVE_INFINITY])('refuses a speed of %f', (speed) => {
    expect(() => resistance(hull, { ...median, speed })).toThrow(RangeError);
  });

  it('refuses water of no depth', () => {
    expect(() => resistance(hull, { ...median, depth: 0 })).toThrow(RangeError);
  });

  it('takes a lighter boat faster at equal power', () => {
    const watts = towPower(hull, median);
    expect(speedAtPower(hull, median, watts)).toBeCloseTo(4.2, 6);
    const light = lying(85);
    const speed = speedAtPower(hull, light, watts);
    expect(towPower(hull, { ...light, speed }) / watts).toBeCloseTo(1, 5);
    expect(speed).toBeGreaterThan(4.2);
  });
});
