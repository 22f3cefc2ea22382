import type { Hull } from '../hull/hull.ts';
import { hullOfBoat } from '../hull/hull-of-boat.ts';
import type { FixingHole, Part } from '../parts/part.ts';
import { inPart } from '../parts/part.ts';
import { skinUnder } from './block-bed.ts';
import { frontWedge } from './front-foot.ts';
import { hollowSolid } from './hollow-solid.ts';
import { loft, type SolidMesh, type SolidPoint } from './mesh.ts';
import { restProfile } from './rest-block.ts';
import type { SeatSetOut } from './set-out.ts';
import { millimetres } from './sheet-length.ts';
import type { MillimetrePoint } from './template-drawing.ts';
import { workParts } from './work-parts.ts';

/** Blocks that a machine can cut. */
export const SOLID_IDS = ['pad-block', 'rear-rest', 'front-wedge'] as const;
/** A block by what it is for. */
export type SolidId = (typeof SOLID_IDS)[number];

/**
 * A block as a body and what is taken out of it: hollow, holes, the hull's side. Millimetres; x forward along the block's axis from
 * its bearing point, y to port, z up from the lowest point of its base. The bodies overlap what they are cut from by a little.
 */
export interface BlockSolid {
  readonly id: SolidId;
  readonly body: SolidMesh;
  readonly away: readonly SolidMesh[];
  /** How high the frame's z = 0 lies over the floorboard at the seat's mark: slope of the board and rails. */
  readonly baseOverFloor: number;
}

/** Corners of a hole's round: true to r (1 − cos π/64), 0.004 mm at 3.25 mm. */
const ROUND = 64;
/** Readings of the hull's side along and across a block's base. */
const GRID = 40;
/** What is cut away reaches past the block by so much, millimetres. */
const PAST_MM = 3;

/** The blocks of a seat that are to be made, each as a solid: wood with the foam's offset, holes in; none that lies on the shelf. */
export function blockSolids(out: SeatSetOut): BlockSolid[] {
  const { shelf } = out.work;
  const hull = hullOfBoat(out.work.boat);
  return [
    ...(shelf.pad ? [] : [padSolid(out, hull)]),
    ...(shelf.rest ? [] : [restSolid(out, hull)]),
    ...wedgeSolid(out),
  ];
}

function padSolid(out: SeatSetOut, hull: Hull): BlockSolid {
  const { pad } = out.fittings;
  const { foreEnd, aftEnd, bedFore, bedAft, topHeight, halfWidth } = pad;
  const lowest = Math.min(bedFore, bedAft);
  const part = workParts(out.work).kneePad;
  const profile: MillimetrePoint[] = [
    [foreEnd, bedFore],
    [foreEnd, topHeight],
    [aftEnd, topHeight],
    [aftEnd, bedAft],
  ];
  const foam = millimetres(out.work.options.foamM);
  const hollow = hollowSolid(pad.recess, { foam, over: pad.bearingHeight - lowest });
  const cut = out.bases.kneePad.cutMm > 0 ? [hullSolid(out, { part, hull, lowest, top: topHeight })] : [];
  return {
    id: 'pad-block',
    body: drawnOut(profile, halfWidth, lowest),
    away: [...(hollow ? [hollow] : []), ...holesOf(out, part, lowest), ...cut],
    baseOverFloor: lowest,
  };
}

function restSolid(out: SeatSetOut, hull: Hull): BlockSolid {
  const { rest } = out.fittings;
  const lowest = Math.min(rest.bedFore, rest.bedAft);
  const part = workParts(out.work).rearRest;
  const cut = out.bases.rearRest.cutMm > 0 ? [hullSolid(out, { part, hull, lowest, top: rest.height })] : [];
  return {
    id: 'rear-rest',
    body: drawnOut(restProfile(rest), rest.halfWidth, lowest),
    away: [...holesOf(out, part, lowest), ...cut],
    baseOverFloor: lowest,
  };
}

function wedgeSolid(out: SeatSetOut): BlockSolid[] {
  const wedge = frontWedge(out.fittings.foot);
  if (wedge.kind !== 'wedge') return [];
  const body = drawnOut(wedge.profile, wedge.halfWidth, 0);
  return [{ id: 'front-wedge', body, away: [], baseOverFloor: 0 }];
}

/** A side profile (x forward, y up) drawn out across, its heights counted from `lowest`. Either way round, convex. */
function drawnOut(profile: readonly MillimetrePoint[], half: number, lowest: number): SolidMesh {
  const area = profile.reduce((sum, [x, z], k) => {
    const [nextX, nextZ] = profile[(k + 1) % profile.length]!;
    return sum + x * nextZ - nextX * z;
  }, 0);
  // Seen from port (from +y) x runs to the left, so that a ring going round there looks clockwise in x and z.
  const round = area > 0 ? profile.toReversed() : profile;
  const at = (y: number) => round.map(([x, z]): SolidPoint => [x, y, z - lowest]);
  return loft([at(-half), at(half)]);
}

/** The holes of a part's bolts or screws in its block, from below. */
function holesOf(out: SeatSetOut, part: Part, lowest: number): SolidMesh[] {
  const floor = out.work.frame.floorZ;
  return part.holes.map((hole) => cylinder(part, hole, (z) => millimetres(z - floor) - lowest));
}

function cylinder(part: Part, { to, diameterM }: FixingHole, height: (z: number) => number): SolidMesh {
  const { along, across } = inPart(part.place, to);
  const [x, y, r] = [millimetres(along), millimetres(across), millimetres(diameterM) / 2];
  const top = height(to.z);
  const ring = (z: number) =>
    Array.from({ length: ROUND }, (_, k): SolidPoint => {
      const turn = (2 * Math.PI * k) / ROUND;
      return [x + r * Math.cos(turn), y + r * Math.sin(turn), z];
    });
  // From below upward: the rings go round counter-clockwise as seen from above, where the loft looks from.
  return loft([ring(Math.min(-PAST_MM, top - 1)), ring(top)]);
}

/** What lies outside the hull's inner face under a block, from below its base up to its top. */
function hullSolid(
  out: SeatSetOut,
  { part, hull, lowest, top }: { part: Part; hull: Hull; lowest: number; top: number },
): SolidMesh {
  const { baseFore, baseAft, half } = part.shape;
  const [fore, aft, side] = [baseFore, baseAft, half].map(millimetres) as [number, number, number];
  const skin = skinUnder(out.work, part, hull);
  const rings = Array.from({ length: GRID + 1 }, (_, i) => {
    const x = aft - PAST_MM + ((fore - aft + 2 * PAST_MM) * i) / GRID;
    return Array.from({ length: GRID + 1 }, (_, j) => {
      const y = -side - PAST_MM + ((2 * side + 2 * PAST_MM) * j) / GRID;
      return [x, y, Math.max(-PAST_MM, skin(x, y, top + PAST_MM) - lowest)] as const;
    });
  });
  return terrain(rings, -2 * PAST_MM);
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
