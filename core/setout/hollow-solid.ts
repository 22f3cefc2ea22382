import { floorLevel, halfWidthAt, type KneeRecess, legAt } from './knee-recess.ts';
import { loft, type SolidMesh, type SolidPoint } from './mesh.ts';

/** Sections along the shin and round the front of the knee, and places round each: chords lie within 0.05 mm of the curve. */
const BEHIND = 24;
/** More than behind: the front of a knee is round, a shin nearly straight. */
const BEFORE = 48;
/** Places round each section. */
const ROUND = 64;
/** The hollow reaches past the block's aft end and above its top by so much, millimetres. */
const PAST_MM = 4;
/** Share of the front round at which the last, all but pointed section lies. */
const LAST = 0.998;

/**
 * What is carved out of a block: knee and shin lowered from above, as one closed solid without an undercut. `over` is how high the
 * bottom of the finished recess lies in the block, `foam` widens and deepens it for the wood. Null where the hollow is nowhere
 * deeper than its rim. Millimetres, the block's frame.
 */
export function hollowSolid(
  recess: KneeRecess,
  { foam, over }: { foam: number; over: number },
): SolidMesh | null {
  const front = recess.kneeDepth + foam;
  if (recess.depth + foam <= 0) return null;
  const aft = recess.aftEnd - PAST_MM;
  const xs = [
    ...Array.from({ length: BEHIND }, (_, k) => aft * (1 - k / BEHIND)),
    ...Array.from({ length: BEFORE + 1 }, (_, k) => front * Math.sin((Math.PI / 2) * LAST * (k / BEFORE))),
  ];
  const top =
    over + recess.depth + PAST_MM + Math.max(recess.kneeDepth, recess.kneeDepth + recess.shankRise, 0);
  return loft(xs.map((x) => sectionAt(recess, { x, foam, over, top })));
}

/** The hollow across the axis at x: its lower half round, its sides straight up. Counter-clockwise as seen from ahead. */
function sectionAt(
  recess: KneeRecess,
  { x, foam, over, top }: { x: number; foam: number; over: number; top: number },
): SolidPoint[] {
  const bottom = floorLevel(recess, x, foam) ?? 0;
  // At the level of the leg's middle it is at its broadest; any level above has the same half-width.
  const half = halfWidthAt(recess, x, { level: Number.MAX_SAFE_INTEGER, foam }) ?? 0;
  const deep = legAt(recess, x).middle - bottom;
  const round = Array.from({ length: ROUND + 1 }, (_, k): SolidPoint => {
    const turn = Math.PI * (k / ROUND - 0.5);
    return [x, half * Math.sin(turn), over + bottom + deep * (1 - Math.cos(turn))];
  });
  // From ahead port is on the right: from starboard under to port, then over the top, goes round counter-clockwise.
  return [...round, [x, half, top], [x, -half, top]];
}
