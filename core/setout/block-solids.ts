import { type BlockForm, type BlockHole, blockForms, PAST_MM, type SolidId } from './block-forms.ts';
import { hollowSolid } from './hollow-solid.ts';
import { loft, type SolidMesh, type SolidPoint } from './mesh.ts';
import type { SeatSetOut } from './set-out.ts';
import type { MillimetrePoint } from './template-drawing.ts';

/** A block as a body and what is taken out of it: hollow, holes, the hull's side. The bodies overlap what they are cut from by a little. */
export interface BlockSolid {
  /** Names the file. */
  readonly id: SolidId;
  /** The block before anything is cut out of it. */
  readonly body: SolidMesh;
  /** What is cut away: recess, holes, the hull's skin under the base. */
  readonly away: readonly SolidMesh[];
  /** How high the frame's z = 0 lies over the floorboard at the seat's mark: slope of the board and rails. */
  readonly baseOverFloor: number;
}

/** Corners of a hole's round: true to r (1 − cos π/64), 0.004 mm at 3.25 mm. */
const ROUND = 64;

/** The blocks of a seat that are to be made, each as meshes. Millimetres, the frame of `BlockForm`. */
export function blockSolids(out: SeatSetOut): BlockSolid[] {
  return blockForms(out).map(solidOf);
}

/** The meshes of one block, body and cuts, each closed. */
function solidOf({ id, profile, half, hollow, holes, skin, baseOverFloor }: BlockForm): BlockSolid {
  const carved = hollow && hollowSolid(hollow.recess, hollow);
  return {
    id,
    body: drawnOut(profile, half),
    away: [
      ...(carved ? [carved] : []),
      ...holes.map(cylinder),
      ...(skin ? [terrain(skin, -2 * PAST_MM)] : []),
    ],
    baseOverFloor,
  };
}

/** A side profile (x forward, z up) drawn out across. Either way round, convex. */
function drawnOut(profile: readonly MillimetrePoint[], half: number): SolidMesh {
  const area = profile.reduce((sum, [x, z], k) => {
    const [nextX, nextZ] = profile[(k + 1) % profile.length]!;
    return sum + x * nextZ - nextX * z;
  }, 0);
  // Seen from port (from +y) x runs to the left, so that a ring going round there looks clockwise in x and z.
  const round = area > 0 ? profile.toReversed() : profile;
  const at = (y: number) => round.map(([x, z]): SolidPoint => [x, y, z]);
  return loft([at(-half), at(half)]);
}

/** A hole from under the block to its top. */
function cylinder({ x, y, radius: r, top }: BlockHole): SolidMesh {
  const ring = (z: number) =>
    Array.from({ length: ROUND }, (_, k): SolidPoint => {
      const turn = (2 * Math.PI * k) / ROUND;
      return [x + r * Math.cos(turn), y + r * Math.sin(turn), z];
    });
  // From below upward: the rings go round counter-clockwise as seen from above, where the loft looks from.
  return loft([ring(Math.min(-PAST_MM, top - 1)), ring(top)]);
}

/** The closed surface under a field of heights, down to a level. Rows along x, places across by growing y. */
function terrain(rows: readonly (readonly SolidPoint[])[], under: number): SolidMesh {
  const across = rows[0]!.length;
  const top = rows.flat();
  const points = [...top, ...top.map(([x, y]): SolidPoint => [x, y, under])];
  const at = (i: number, j: number) => i * across + j;
  const low = (place: number) => place + top.length;
  const triangles: [number, number, number][] = [];
  for (let i = 0; i + 1 < rows.length; i++) {
    for (let j = 0; j + 1 < across; j++) {
      const [a, b, c, d] = [at(i, j), at(i + 1, j), at(i + 1, j + 1), at(i, j + 1)];
      triangles.push([a, b, c], [a, c, d], [low(a), low(c), low(b)], [low(a), low(d), low(c)]);
    }
  }
  const wall = (from: number, to: number) => triangles.push([from, low(from), low(to)], [from, low(to), to]);
  for (let i = 0; i + 1 < rows.length; i++) {
    wall(at(i, 0), at(i + 1, 0));
    wall(at(i + 1, across - 1), at(i, across - 1));
  }
  for (let j = 0; j + 1 < across; j++) {
    wall(at(rows.length - 1, j), at(rows.length - 1, j + 1));
    wall(at(0, j + 1), at(0, j));
  }
  return { points, triangles };
}
