import type { Hull } from '../hull/hull.ts';
import { type Resistance, type Running, towed } from './resistance.ts';

/** Steps of the secant that are enough for a speed to a hundredth of a millimetre a second. */
const MOST_STEPS = 12;
/** The hundredth of a millimetre a second, in m/s. */
const CLOSE = 1e-5;

/** Power that goes into the water and air at a speed, watts: resistance × speed. Errors as `resistance`. */
export function towPower(hull: Hull, running: Running): number {
  return towed(hull, running)(running.speed).total * running.speed;
}

/**
 * The speed, m/s, at which a hull lying like this takes `watts` to tow; it is sought from `running.speed` on. Over one
 * course, equal power is a fair way to compare two settings: time = distance / speed.
 * @throws RangeError for a power that is not above 0.
 */
export function speedAtPower(hull: Hull, running: Running, watts: number): number {
  return speedFor(towed(hull, running), { watts, from: running.speed });
}

/** The same of a hull whose resistance by speed is known already. */
export function speedFor(
  at: (speed: number) => Resistance,
  { watts, from }: { watts: number; from: number },
): number {
  if (!(watts > 0 && Number.isFinite(watts))) throw new RangeError('power must be above 0, watts');
  // Power grows about like the cube of speed: cube roots make the secant nearly straight.
  const wanted = Math.cbrt(watts);
  const root = (speed: number) => Math.cbrt(at(speed).total * speed);
  let before = from > 0 ? from : 1;
  let valueBefore = root(before);
  let here = (before * wanted) / valueBefore;
  for (let step = 0; step < MOST_STEPS && Math.abs(here - before) > CLOSE; step++) {
    const value = root(here);
    const next = here + ((wanted - value) * (here - before)) / (value - valueBefore);
    [before, valueBefore, here] = [here, value, next];
  }
  return here;
}
