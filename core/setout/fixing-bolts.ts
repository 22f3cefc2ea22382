import { type BlockFrame, toFloor } from './block-frame.ts';
import { type PadBlock, padCorners } from './pad-block.ts';
import type { RestBlock } from './rest-block.ts';
import type { MillimetrePoint } from './template-drawing.ts';

/** Wood left between a bolt and the edge of its block, millimetres: three diameters of a 6 mm bolt (common practice). */
const EDGE_MM = 20;
/** Bolts farther apart than this gain nothing: half of it, each side of the bearing line, millimetres. */
const WIDEST_HALF_MM = 45;
/** Bolts closer together than this do not stop a block from turning; one is used, and the builder told. */
const NARROWEST_HALF_MM = 15;

/**
 * Bolts of a block as floor points, millimetres. For holes at a pitch there is one row on each side (or one in the middle
 * of a narrow block), both bolts of a pair straight across from each other, so that the block moves from hole to hole.
 */
export function pairAcross(
  place: BlockFrame,
  base: { x: number; halfLength: number; halfWidth: number },
): MillimetrePoint[] {
  const [cos, sin] = [Math.abs(Math.cos(place.turn)), Math.abs(Math.sin(place.turn))];
  const half = Math.min(
    WIDEST_HALF_MM,
    (base.halfWidth - EDGE_MM) / Math.max(cos, 1e-6),
    (base.halfLength - EDGE_MM) / Math.max(sin, 1e-6),
  );
  const [x, y] = toFloor(place, [base.x, 0]);
  if (half < NARROWEST_HALF_MM) return [[x, y]];
  return [
    [x, y + half],
    [x, y - half],
  ];
}

/** Bolts of the pad for a row of holes: straight across under the knee's bearing point. Floor points, millimetres. */
export function padBolts({ place, foreEnd, aftEnd, halfWidth }: PadBlock): MillimetrePoint[] {
  return pairAcross(place, { x: 0, halfLength: Math.min(foreEnd, -aftEnd), halfWidth });
}

/** Bolts of the rest for a row of holes: straight across under the middle of its base. Floor points, millimetres. */
export function restBolts({ place, footAhead, depthBehind, halfWidth }: RestBlock): MillimetrePoint[] {
  const x = (footAhead - depthBehind) / 2;
  return pairAcross(place, { x, halfLength: (footAhead + depthBehind) / 2, halfWidth });
}

/** Screws of the pad where they may go anywhere: near its four corners. Floor points, millimetres. */
export function padScrews(block: PadBlock): MillimetrePoint[] {
  return padCorners(block).map(([x, y]) =>
    toFloor(block.place, [inward(x, block.foreEnd), inward(y, block.halfWidth)]),
  );
}

/** Screws of the rest where they may go anywhere: along its own middle, near its ends. Floor points, millimetres. */
export function restScrews({ place, footAhead, depthBehind, halfWidth }: RestBlock): MillimetrePoint[] {
  const x = (footAhead - depthBehind) / 2;
  return [halfWidth, -halfWidth].map((y) => toFloor(place, [x, inward(y, halfWidth)]));
}

/** A coordinate of an edge moved inward by the edge distance, or to the half of it in a small block. */
function inward(edge: number, reach: number): number {
  return Math.sign(edge) * Math.max(Math.abs(edge) - EDGE_MM, Math.min(Math.abs(edge), reach) / 2);
}
