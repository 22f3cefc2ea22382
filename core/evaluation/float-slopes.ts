import type { Afloat, FloatResult, PointMass } from '../hydrostatics/afloat.ts';
import { combinedMass } from '../hydrostatics/combined-mass.ts';
import { floatAtRest } from '../hydrostatics/float-at-rest.ts';
import type { BoatState } from './boat-state.ts';

/** Steps of the differences: kilograms and metres of the common centre. Large against the search's 1e-9 m, small against a hull. */
const STEPS = { mass: 0.5, x: 0.004, y: 0.004, z: 0.01 } as const;
type Total = keyof typeof STEPS;

/** Numbers of a floating boat that answer its load, by their names. */
type Level = Readonly<Record<string, number>>;

/** A floating boat and how it answers its load: what it would be under a slightly other load, without a search. */
export interface FloatSlopes {
  readonly base: FloatResult;
  readonly load: PointMass;
  readonly slopes: Readonly<Record<Total, Level>>;
}

/**
 * How a floating boat answers the mass and the common centre of what is aboard, by differences of the equilibrium: four more
 * searches (five at a heel) serve every doubt of every seat. Both ends of a difference take the waterplane's steady sums: the
 * fine ones jump by 1e-7 of the area from one attitude to the next, over so short a step a five-hundredth of the slope. Empty
 * slopes where the boat does not float. SI, boat frame.
 */
export function floatSlopes(state: BoatState, masses: readonly PointMass[], base: FloatResult): FloatSlopes {
  const load = combinedMass(masses);
  const none = { mass: {}, x: {}, y: {}, z: {} };
  if (base.kind !== 'afloat') return { base, load, slopes: none };
  const levelUnder = (mass: PointMass): Level | null => {
    const { hull, density: waterDensity, heel } = state;
    const there = floatAtRest(hull, { masses: [mass], waterDensity, heel, start: base, ends: 'steady' });
    return there.kind === 'afloat' ? levelOf(there) : null;
  };
  const before = levelUnder(load);
  const slopeTo = (total: Total): Level => {
    if (total === 'y' && state.heel === 0) return {};
    const after = levelUnder({ ...load, [total]: load[total] + STEPS[total] });
    if (!before || !after) return {};
    return Object.fromEntries(
      Object.entries(before).map(([name, value]) => [name, (after[name]! - value) / STEPS[total]]),
    );
  };
  return {
    base,
    load,
    slopes: { mass: slopeTo('mass'), x: slopeTo('x'), y: slopeTo('y'), z: slopeTo('z') },
  };
}

function levelOf(afloat: Afloat): Level {
  const numbers = Object.entries(afloat).filter(([, value]) => typeof value === 'number');
  return { ...Object.fromEntries(numbers), leastFreeboardValue: afloat.leastFreeboard.value };
}

/** The boat under a load near its own, to first order. SI, boat frame. */
export function floatNear({ base, load, slopes }: FloatSlopes, now: PointMass): FloatResult {
  if (base.kind !== 'afloat') return base;
  const there: Record<string, number> = { ...levelOf(base) };
  for (const total of ['mass', 'x', 'y', 'z'] as const) {
    const by = now[total] - load[total];
    if (by === 0) continue;
    for (const [name, slope] of Object.entries(slopes[total])) there[name]! += by * slope;
  }
  const { leastFreeboardValue, ...numbers } = there;
  return { ...base, ...numbers, leastFreeboard: { ...base.leastFreeboard, value: leastFreeboardValue! } };
}
