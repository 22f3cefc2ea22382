import { describe, expect, it } from 'vitest';
import { immersedSums } from '../../../core/hull/immersed-sums.ts';
import { SUM } from '../../../core/hull/section-rows.ts';
import { floatAtRest } from '../../../core/hydrostatics/float-at-rest.ts';
import { leastFreeboard } from '../../../core/hydrostatics/freeboard.ts';
import { cases } from '../../cases.ts';
import { notEmpty } from '../../not-empty.ts';
import { type SampleHull, sampleHull } from '../../reference/hydro-sample-hulls.ts';

const FINE = ['volume', 'plane', 'planeX', 'planeXx', 'planeYy', 'shell'] as const;
const HULLS: readonly SampleHull[] = ['single', 'training', 'pair', 'four'];

/** Drafts of a sweep, metres: from a boat with nobody in it until the water stands at its sheer. */
const FROM = 0.05;
const STEP = 0.001;

/** How many of the places where the sums bend most are looked at closely. */
const LOOKED_AT = 4;

/**
 * A sweep of drafts finds where a sum bends most; halving there, always on the side that changes more, ends at two neighbouring numbers:
 * what is between them is a jump. Sums are told against their own size over the sweep.
 */
function greatestJump(name: SampleHull, alongSlope: number): number {
  const hull = sampleHull(name);
  const plane = (draft: number) => ({ draft, alongSlope, acrossSlope: 0 });
  const at = (draft: number) => {
    const sums = immersedSums(hull, plane(draft), 'fine');
    return FINE.map((sum) => sums[SUM[sum]]!);
  };
  const drafts: number[] = [];
  for (let draft = FROM; leastFreeboard(hull, plane(draft)).value > 0; draft += STEP) drafts.push(draft);
  const swept = drafts.map(at);
  const sizes = FINE.map((_, k) => Math.max(...swept.map((sums) => Math.abs(sums[k]!))));
  const apart = (a: readonly number[], b: readonly number[]) =>
    Math.max(...a.map((value, k) => Math.abs(value - b[k]!) / sizes[k]!));
  const bends = swept.slice(2).map((sums, i) => {
    const straight = swept[i + 1]!.map((value, k) => 2 * value - swept[i]![k]!);
    return { by: apart(sums, straight), from: drafts[i]!, to: drafts[i + 2]! };
  });
  const most = notEmpty(bends.sort((a, b) => b.by - a.by).slice(0, LOOKED_AT));
  return Math.max(...most.map(({ from, to }) => jumpBetween(from, to)));

  function jumpBetween(low: number, high: number): number {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) return apart(at(low), at(high));
    const here = at(middle);
    return apart(here, at(low)) > apart(here, at(high))
      ? jumpBetween(low, middle)
      : jumpBetween(middle, high);
  }
}

describe('what is told of a boat does not jump as its load grows', () => {
  it.each(HULLS.slice(0, cases(1, HULLS.length)))(
    '%s: no fine sum by 1e-6 while the sheer is over the water',
    (name) => {
      for (const slope of [0, 0.004, -0.01]) expect(greatestJump(name, slope), `${slope}`).toBeLessThan(1e-6);
    },
  );

  it('and a load with which the sheer goes under, where sums do jump, is told as swamped, without figures', () => {
    const at = (mass: number) =>
      floatAtRest(sampleHull('single'), { masses: [{ mass, x: 0, y: 0, z: 0.3 }], waterDensity: 1000 });
    expect(at(332).kind).toBe('afloat');
    expect(at(338).kind).not.toBe('afloat');
  });
});
