import type { Ball, Solid } from '../../../core/figure/figure-solids.ts';
import { along, norm, subtract } from '../../../core/frame/vec3.ts';

type Level = readonly Ball[];
type Hulls = Solid['hulls'];

/**
 * The same chain of hulls with those levels left out that lie on the straight way between their neighbours to
 * `tolerance` (metres): a limb is told in many levels so that it is fair at any scale, and on the screen half of them
 * move no pixel. Hulls that are no chain of equal levels are given back as they are.
 */
export function fewerHulls(hulls: Hulls, tolerance: number): Hulls {
  return chainsOf(hulls).flatMap((levels) => {
    if (levels.length <= 2) return [levels.flat()];
    const kept = keptLevels(levels, tolerance);
    return kept.slice(1).map((level, k) => [...kept[k]!, ...level]);
  });
}

/** Runs of hulls of which each begins with the balls that the one before ended with; others stand alone. */
function chainsOf(hulls: Hulls): Level[][] {
  const chains: Level[][] = [];
  for (const hull of hulls) {
    const half = hull.length / 2;
    const last = chains.at(-1);
    const end = last?.at(-1);
    if (last && end?.length === half && end.every((ball, k) => ball === hull[k])) last.push(hull.slice(half));
    else chains.push(Number.isInteger(half) ? [hull.slice(0, half), hull.slice(half)] : [hull]);
  }
  return chains;
}

function keptLevels(levels: readonly Level[], tolerance: number): Level[] {
  const kept: Level[] = [levels[0]!];
  let from = 0;
  for (let to = 2; to < levels.length; to++) {
    const between = levels.slice(from + 1, to);
    if (between.every((level) => liesOn([levels[from]!, levels[to]!], level, tolerance))) continue;
    from = to - 1;
    kept.push(levels[from]!);
  }
  kept.push(levels.at(-1)!);
  return kept;
}

/** Whether every ball of a level lies on the way from its like in one level to its like in another. */
function liesOn([a, b]: readonly [Level, Level], level: Level, tolerance: number): boolean {
  return level.every((ball, k) => {
    const [from, to] = [a[k]!, b[k]!];
    const whole = norm(subtract(to.at, from.at));
    const share = whole > 1e-9 ? norm(subtract(ball.at, from.at)) / whole : 0;
    const off = norm(subtract(ball.at, along(from.at, to.at, share)));
    const thicker = Math.abs(ball.radius - from.radius - (to.radius - from.radius) * share);
    return off + thicker <= tolerance;
  });
}
