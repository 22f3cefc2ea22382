import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readDemo } from '../../../app/demo/scenario.ts';
import { bodyOfAthlete } from '../../../core/body/body-of-athlete.ts';
import { athleteSchema } from '../../../core/document/athlete-schema.ts';
import type { Boat } from '../../../core/document/boat-schema.ts';
import { fitSchema } from '../../../core/document/fit-schema.ts';
import { USUAL_CLASSES } from '../../../core/document/usual-classes.ts';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { innerHalfBreadth } from '../../../core/hull/inner-half-breadth.ts';
import { usualHull } from '../../../core/hull/usual-hull.ts';
import { movedAft, usualSetting } from '../../../core/optimise/usual-setting.ts';
import { valuesOf } from '../example/values-of.ts';

const demo = readDemo(join(import.meta.dirname, '../../../assets'));
const boats: readonly Boat[] = [...demo.boats, ...USUAL_CLASSES.map((boatClass) => usualHull({ boatClass }))];

/** Medians of the 2012 survey's release (see `core/body/survey-table.ts`), and two of an athlete's build, invented. */
const PADDLERS = [
  { name: 'median woman', sex: 'female', statureM: 1.63, massKg: 66 },
  { name: 'median man', sex: 'male', statureM: 1.76, massKg: 85 },
  { name: 'lean woman', sex: 'female', statureM: 1.7, massKg: 62 },
  { name: 'lean man', sex: 'male', statureM: 1.83, massKg: 80 },
] as const;

/** Every seat with the same paddler at the usual places, the knee this far behind its mark. */
function trimAtRest(boat: Boat, paddler: (typeof PADDLERS)[number], kneeAft: number): number {
  const athlete = athleteSchema.parse({ ...paddler, side: 'left' });
  const seats = boat.seats.map((_, i) => {
    const usual = usualSetting(bodyOfAthlete(athlete), boat.seats.length, i % 2 ? 'right' : 'left');
    return { ...movedAft(usual, kneeAft - usual.kneePad.aftM), athlete };
  });
  const fit = fitSchema.parse({ format: 'kneelwright-fit/1', name: 'rule', boat, seats });
  return valuesOf(fit).quantities.find(({ id }) => id === 'trimRest')!.value;
}

/**
 * The trade's rule, knee 15 to 20 cm behind the boat's centre (common practice, no source), holds in the sample boats and
 * the usual hulls: in the middle of it the bow lies a few millimetres to 2 cm over the stern.
 */
describe.each(boats.map((boat) => ({ name: boat.name, boat })))('$name', ({ boat }) => {
  it('has its mark amidships, or its seats evenly about mid-length', () => {
    expect(boat.seats.reduce((sum, s) => sum + s.stationM, 0)).toBeCloseTo(0, 9);
  });

  it.each(PADDLERS)('floats bow slightly up under a $name, knee 17.5 cm behind the mark', (paddler) => {
    const trim = trimAtRest(boat, paddler, 0.175);
    expect(trim).toBeGreaterThan(0.002);
    expect(trim).toBeLessThan(0.02);
  });

  it('has a floorboard that lies within its hull from end to end, edges and underside', () => {
    const hull = hullOfBoat(boat);
    const { aftEndXM, foreEndXM, heightM, widthM, thicknessM } = boat.floorboard;
    for (let k = 0; k <= 100; k++) {
      const x = aftEndXM + ((foreEndXM - aftEndXM) * k) / 100;
      const inner = innerHalfBreadth(hull, { x, z: heightM - thicknessM }, boat.skinM);
      expect(inner ?? 0).toBeGreaterThanOrEqual(widthM / 2);
    }
  });
});
