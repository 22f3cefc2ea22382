import { describe, expect, it } from 'vitest';
import { boatSchema } from '../../../core/document/boat-schema.ts';
import { USUAL_CLASSES } from '../../../core/document/usual-classes.ts';
import { hullSpread } from '../../../core/evaluation/hull-spread.ts';
import { narrowedBy } from '../../../core/evaluation/narrowed-by.ts';
import { type FamilyLines, familyStations } from '../../../core/hull/hull-family.ts';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { usualHull } from '../../../core/hull/usual-hull.ts';
import { USUAL_NUMBERS, usualLines } from '../../../core/hull/usual-lines.ts';
import type { Afloat, PointMass } from '../../../core/hydrostatics/afloat.ts';
import { floatAtRest } from '../../../core/hydrostatics/float-at-rest.ts';
import { cases } from '../../cases.ts';
import { exampleBoat } from '../example/example-fit.ts';
import { madeHull } from './made-hull.ts';

/** Hulls drawn of each family: the spread of 100 is known to 7 %. */
const DRAWN = cases(100, 300);

const CREW = { C1: 1, C2: 2, C4: 4, training: 1 } as const;

function afloatIn(lines: FamilyLines, masses: PointMass[]): Afloat | null {
  const hull = madeHull({ name: 'drawn', stations: familyStations(lines), between: 'chords' });
  const rest = floatAtRest(hull, { masses, waterDensity: 1000 });
  return rest.kind === 'afloat' ? rest : null;
}

/** Normal deviates from a small generator, the same on every run. */
function deviates(seed: number): () => number {
  let state = seed;
  const uniform = () => {
    state = (state * 1103515245 + 12345) % 2147483648;
    return (state + 0.5) / 2147483648;
  };
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}

describe.each(USUAL_CLASSES)('usual hull, %s', (boatClass) => {
  const boat = usualHull({ boatClass });
  const numbers = USUAL_NUMBERS[boatClass];

  it('is a whole boat document with the class’s numbers, marked as an estimate with its doubt', () => {
    expect(boatSchema.parse(boat)).toEqual(boat);
    expect(boat.hull).toMatchObject({ kind: 'usual', boatClass, lengthM: numbers.lengthM });
    expect(boat.hull.kind === 'usual' && boat.hull.doubt.volume).toBeGreaterThan(0);
    expect(boat.massKg).toBe(numbers.massKg);
    expect(boat.seats).toHaveLength(CREW[boatClass]);
    expect(boat.boatClass).toBe(boatClass === 'training' ? 'none' : boatClass);
  });

  it('has the length and the greatest beam asked for, and convex waterlines', () => {
    const hull = hullOfBoat(
      usualHull({ boatClass, lengthM: numbers.lengthM * 0.95, beamM: numbers.beamM * 0.9 }),
    );
    expect(hull.length).toBeCloseTo(numbers.lengthM * 0.95, 12);
    expect(2 * Math.max(...hull.rows.y)).toBeCloseTo(numbers.beamM * 0.9, 4);
    for (let j = 1; j < hull.loft.points; j++) {
      for (let i = 1; i + 1 < hull.loft.count; i++) {
        const [a, b, c] = [i - 1, i, i + 1].map((k) => hull.loft.y[k * hull.loft.points + j]!);
        expect(a! - 2 * b! + c!).toBeLessThan(1e-9);
      }
    }
  });

  it('its stated spread is that of the family drawn over: within a factor of 1.6 for draft, trim and breadth', () => {
    const mass = numbers.massKg + 83 * CREW[boatClass];
    const masses = [{ mass, x: 0.02, y: 0, z: 0.5 }];
    const base = usualLines(numbers);
    const middle = afloatIn(base, masses)!;
    const draw = deviates(5);
    const squares = { draft: 0, trim: 0, beam: 0 };
    let drawn = 0;
    for (let n = 0; n < DRAWN; n++) {
      const one = afloatIn(
        {
          ...base,
          planFore: base.planFore + 0.2 * draw(),
          planAft: base.planAft + 0.2 * draw(),
          flatness: base.flatness * Math.exp(0.15 * draw()),
          bilge: base.bilge * Math.exp(0.1 * draw()),
          flare: Math.max(0, base.flare + 0.06 * draw()),
          rockerM: Math.max(0, base.rockerM + 0.012 * draw()),
          depthM: base.depthM * Math.exp(0.05 * draw()),
        },
        masses,
      );
      if (!one) continue;
      drawn++;
      squares.draft += (one.draft - middle.draft) ** 2;
      squares.trim += (one.bowOverStern - middle.bowOverStern) ** 2;
      squares.beam += (one.waterplane.beam / middle.waterplane.beam - 1) ** 2;
    }
    const sd = (sum: number) => Math.sqrt(sum / drawn);
    const stated = hullSpread(boat, middle);
    const near = (told: number, found: number) => {
      expect(told / found).toBeGreaterThan(1 / 1.6);
      expect(told / found).toBeLessThan(1.6);
    };
    expect(drawn).toBeGreaterThan(0.8 * DRAWN);
    near(stated.draft, sd(squares.draft));
    near(stated.trimRest, sd(squares.trim));
    near((2 * stated.halfBreadth) / numbers.beamM, sd(squares.beam));
  });
});

describe('what better data narrow', () => {
  const usual = usualHull({ boatClass: 'C1' });

  it('a tape: draft, trim and breadth, by about half and more', () => {
    const taped = { ...usual, hull: exampleBoat().hull };
    const gains = narrowedBy(usual, taped);
    expect(gains.map(({ figure }) => figure)).toEqual(
      expect.arrayContaining(['draft', 'trimRest', 'transverseGm', 'halfBreadth']),
    );
    for (const { before, after } of gains) expect(after).toBeLessThan(before * 0.7);
    expect(narrowedBy(taped, usual)).toEqual([]);
  });

  it('a float check: how it floats, not how broad it is', () => {
    const correction = { fullness: 0.05, foreAftFullness: 0.01, residualM: 0.002 };
    const figures = narrowedBy(usual, { ...usual, correction }).map(({ figure }) => figure);
    expect(figures).toEqual(expect.arrayContaining(['draft', 'trimRest']));
    expect(figures).not.toContain('halfBreadth');
  });

  it('nothing new narrows nothing', () => {
    expect(narrowedBy(usual, usual)).toEqual([]);
  });
});

describe('odd numbers', () => {
  it('refuses a boat of no size', () => {
    expect(() => usualHull({ boatClass: 'C1', lengthM: 0.5 })).toThrow();
    expect(() => usualHull({ boatClass: 'C1', massKg: 0 })).toThrow();
  });

  it('narrow and short boats still get a board within them', () => {
    const boat = usualHull({ boatClass: 'C1', lengthM: 4.2, beamM: 0.34 });
    expect(boat.floorboard.widthM).toBeGreaterThan(0.1);
  });
});
