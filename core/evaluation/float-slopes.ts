import type { Afloat, FloatResult, PointMass } from '../hydrostatics/afloat.ts';
import { combinedMass } from '../hydrostatics/combined-mass.ts';
import { floatAtRest } from '../hydrostatics/float-at-rest.ts';
import type { BoatState } from './boat-state.ts';

/** Steps of the differences: kilograms and metres of the common centre. Large against the search's 1e-9 m, small against a hull. */
const STEPS = { mass: 0.5, x: 0.004, y: 0.004, z: 0.01 } as const;
/** What the boat carries: mass and the three coordinates of its centre. */
type Total = keyof typeof STEPS;

/** Numbers of a floating boat that quantities are computed from, and that answer its load. */
const LEVELS = [
  'draft',
  'trim',
  'bowOverStern',
  'massKg',
  'freeboardBow',
  'freeboardStern',
  'transverseGm',
  'massPerCentimetre',
] as const satisfies readonly (keyof Afloat)[];

/** Those numbers in their order, the least freeboard last. */
type Level = Float64Array;

/** A floating boat and its response to the load: its state under a slightly different load, without a search. */
export interface FloatSlopes {
  /** The boat under its own load. */
  readonly base: FloatResult;
  /** All masses aboard as one. */
  readonly load: PointMass;
  /** Change of every level for each kilogram or metre. */
  readonly slopes: Readonly<Record<Total, Level>>;
}

/**
 * Response of a floating boat to the mass and the common centre of all aboard, by differences of the equilibrium: four more
 * searches (five at a heel) serve every doubt of every seat. Both ends of a difference use the waterplane's steady sums: the
 * fine ones jump by 1e-7 of the area from one attitude to the next, over so short a step a five-hundredth of the slope. No
 * slopes where the boat does not float. SI, boat frame.
 */
export function floatSlopes(state: BoatState, masses: readonly PointMass[], base: FloatResult): FloatSlopes {
  const load = combinedMass(masses);
  const none = { mass: STILL, x: STILL, y: STILL, z: STILL };
  if (base.kind !== 'afloat') return { base, load, slopes: none };
  const levelUnder = (mass: PointMass): Level | null => {
    const { hull, density: waterDensity, heel } = state;
    const there = floatAtRest(hull, { masses: [mass], waterDensity, heel, start: base, ends: 'steady' });
    return there.kind === 'afloat' ? levelOf(there) : null;
  };
  const before = levelUnder(load);
  const slopeTo = (total: Total): Level => {
    if (total === 'y' && state.heel === 0) return STILL;
    const after = levelUnder({ ...load, [total]: load[total] + STEPS[total] });
    return before && after ? after.map((value, i) => (value - before[i]!) / STEPS[total]) : STILL;
  };
  return {
    base,
    load,
    slopes: { mass: slopeTo('mass'), x: slopeTo('x'), y: slopeTo('y'), z: slopeTo('z') },
  };
}

/** No change at all. */
const STILL: Level = new Float64Array(LEVELS.length + 1);

/** The figures of a floating boat as one row of numbers. */
function levelOf(afloat: Afloat): Level {
  const level = new Float64Array(LEVELS.length + 1);
  LEVELS.forEach((name, i) => {
    level[i] = afloat[name];
  });
  level[LEVELS.length] = afloat.leastFreeboard.value;
  return level;
}

/** The boat under a load near its own, to first order: only what quantities are computed from answers. SI, boat frame. */
export function floatNear({ base, load, slopes }: FloatSlopes, now: PointMass): FloatResult {
  if (base.kind !== 'afloat') return base;
  const there = levelOf(base);
  for (const total of TOTALS) {
    const by = now[total] - load[total];
    if (by === 0) continue;
    const slope = slopes[total];
    for (let i = 0; i < there.length; i++) there[i]! += by * slope[i]!;
  }
  const [draft, trim, bowOverStern, massKg, freeboardBow, freeboardStern, gm, perCentimetre, least] = there;
  return {
    ...base,
    draft: draft!,
    trim: trim!,
    bowOverStern: bowOverStern!,
    massKg: massKg!,
    freeboardBow: freeboardBow!,
    freeboardStern: freeboardStern!,
    transverseGm: gm!,
    massPerCentimetre: perCentimetre!,
    leastFreeboard: { ...base.leastFreeboard, value: least! },
  };
}

/** In the order in which slopes are summed. */
const TOTALS = ['mass', 'x', 'y', 'z'] as const;
