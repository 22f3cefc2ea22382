import type { Hull } from '../hull/hull.ts';
import { hullOfBoat } from '../hull/hull-of-boat.ts';
import type { Part } from '../parts/part.ts';
import { inPart } from '../parts/part.ts';
import { millimetres } from '../text/sheet-length.ts';
import { skinUnder } from './block-bed.ts';
import { frontWedge } from './front-foot.ts';
import type { KneeRecess } from './knee-recess.ts';
import type { SolidPoint } from './mesh.ts';
import { restProfile } from './rest-block.ts';
import type { SeatSetOut } from './set-out.ts';
import type { MillimetrePoint } from './template-drawing.ts';
import { workParts } from './work-parts.ts';

/** Blocks that a machine can cut. */
export const SOLID_IDS = ['pad-block', 'rear-rest', 'front-wedge'] as const;
/** A block by what it is for. */
export type SolidId = (typeof SOLID_IDS)[number];

/** A hole for a bolt or screw, from below up to `top`. Millimetres, the block's frame. */
export interface BlockHole {
  /** Middle in the block's own frame. */
  readonly x: number;
  /** To port in the block's own frame. */
  readonly y: number;
  /** Half the diameter of the hole. */
  readonly radius: number;
  /** How high it goes. */
  readonly top: number;
}

/** The hollow of a pad: its recess, the foam's thickness, and how high the finished bottom lies in the block. Millimetres. */
export interface BlockHollow {
  /** The finished hollow. */
  readonly recess: KneeRecess;
  /** Thickness of the foam that will line it: the wood is cut deeper by that. */
  readonly foam: number;
  /** How far above the block's top the solid that cuts it goes on. */
  readonly over: number;
}

/**
 * A block as the forms that make it, exact: a side profile drawn out across, and what is taken from it. Millimetres; x forward along
 * the block's axis from its bearing point, y to port, z up from the lowest point of its base. Meshes and solids for machines are both
 * made from it.
 */
export interface BlockForm {
  /** Names the file. */
  readonly id: SolidId;
  /** Side profile, x forward and z up, convex, either way round. */
  readonly profile: readonly MillimetrePoint[];
  /** Half the block's width: the profile is drawn out to both sides by it. */
  readonly half: number;
  /** Null for a block without a recess. */
  readonly hollow: BlockHollow | null;
  readonly holes: readonly BlockHole[];
  /** The hull's inner face under the base as a field of heights, rows along x and places across by growing y; null where it is clear. */
  readonly skin: readonly (readonly SolidPoint[])[] | null;
  /** How high the frame's z = 0 lies over the floorboard at the seat's mark: slope of the board and rails. */
  readonly baseOverFloor: number;
}

/** Readings of the hull's side along and across a block's base. */
const GRID = 40;
/** What is cut away reaches past the block by so much, millimetres. */
export const PAST_MM = 3;

/** The blocks of a seat that are to be made: wood with the foam's offset, holes in; none that lies on the shelf. */
export function blockForms(out: SeatSetOut): BlockForm[] {
  const { shelf } = out.work;
  const hull = hullOfBoat(out.work.boat);
  return [
    ...(shelf.pad ? [] : [padForm(out, hull)]),
    ...(shelf.rest ? [] : [restForm(out, hull)]),
    ...wedgeForm(out),
  ];
}

/** The knee's block: a box on its bed with the recess in its top. */
function padForm(out: SeatSetOut, hull: Hull): BlockForm {
  const { pad } = out.fittings;
  const { foreEnd, aftEnd, bedFore, bedAft, topHeight, halfWidth } = pad;
  const lowest = Math.min(bedFore, bedAft);
  const part = workParts(out.work).kneePad;
  const foam = millimetres(out.work.options.foamM);
  const cut = out.bases.kneePad.cutMm > 0;
  return {
    id: 'pad-block',
    profile: over(lowest, [
      [foreEnd, bedFore],
      [foreEnd, topHeight],
      [aftEnd, topHeight],
      [aftEnd, bedAft],
    ]),
    half: halfWidth,
    hollow:
      pad.recess.depth + foam > 0 ? { recess: pad.recess, foam, over: pad.bearingHeight - lowest } : null,
    holes: holesOf(out, part, lowest),
    skin: cut ? skinField(out, { part, hull, lowest, top: topHeight }) : null,
    baseOverFloor: lowest,
  };
}

/** The rear rest: its side profile drawn out to its width. */
function restForm(out: SeatSetOut, hull: Hull): BlockForm {
  const { rest } = out.fittings;
  const lowest = Math.min(rest.bedFore, rest.bedAft);
  const part = workParts(out.work).rearRest;
  const cut = out.bases.rearRest.cutMm > 0;
  return {
    id: 'rear-rest',
    profile: over(lowest, restProfile(rest)),
    half: rest.halfWidth,
    hollow: null,
    holes: holesOf(out, part, lowest),
    skin: cut ? skinField(out, { part, hull, lowest, top: rest.height }) : null,
    baseOverFloor: lowest,
  };
}

/** The wedge under the front foot, where there is one. */
function wedgeForm(out: SeatSetOut): BlockForm[] {
  const wedge = frontWedge(out.fittings.foot);
  if (wedge.kind !== 'wedge') return [];
  const { profile, halfWidth: half } = wedge;
  return [{ id: 'front-wedge', profile, half, hollow: null, holes: [], skin: null, baseOverFloor: 0 }];
}

/** A profile with its heights counted from a level. */
function over(level: number, profile: readonly MillimetrePoint[]): MillimetrePoint[] {
  return profile.map(([x, z]) => [x, z - level]);
}

/** The holes of a part's bolts or screws in its block, from below. */
function holesOf(out: SeatSetOut, part: Part, lowest: number): BlockHole[] {
  const floor = out.work.frame.floorZ;
  return part.holes.map(({ to, diameterM }) => {
    const { along, across } = inPart(part.place, to);
    return {
      x: millimetres(along),
      y: millimetres(across),
      radius: millimetres(diameterM) / 2,
      top: millimetres(to.z - floor) - lowest,
    };
  });
}

/** The hull's inner face under a block, a little past its base all round. */
function skinField(
  out: SeatSetOut,
  { part, hull, lowest, top }: { part: Part; hull: Hull; lowest: number; top: number },
): SolidPoint[][] {
  const { baseFore, baseAft, half } = part.shape;
  const [fore, aft, side] = [baseFore, baseAft, half].map(millimetres) as [number, number, number];
  const skin = skinUnder(out.work, part, hull);
  return Array.from({ length: GRID + 1 }, (_, i) => {
    const x = aft - PAST_MM + ((fore - aft + 2 * PAST_MM) * i) / GRID;
    return Array.from({ length: GRID + 1 }, (_, j) => {
      const y = -side - PAST_MM + ((2 * side + 2 * PAST_MM) * j) / GRID;
      return [x, y, Math.max(-PAST_MM, skin(x, y, top + PAST_MM) - lowest)] as const;
    });
  });
}
