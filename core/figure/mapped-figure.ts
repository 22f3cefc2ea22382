import { norm, scale, subtract, type Vec3 } from '../frame/vec3.ts';
import type { Oval } from '../graphics/oval.ts';
import type { BodyPart, Flesh, Opening } from './body-part.ts';
import type { Figure } from './figure.ts';
import type { Head } from './head.ts';
import type { PaddleShape } from './paddle-shape.ts';

/** A smooth map of space, metres. */
export type SpaceMap = (point: Vec3) => Vec3;

/** Step at which the slopes of a map are taken, metres: small beside every limb. */
const STEP = 1e-3;

/**
 * A figure as a smooth map has it: points are mapped, ovals and the head by the map's slopes at their middles. With the map of a
 * camera, the mapped figure seen in a plain view is the figure in the camera's picture. Metres.
 */
export function mappedFigure({ parts, head, paddle, fineness }: Figure, map: SpaceMap): Figure {
  return {
    parts: parts.map((part) => mappedPart(part, map)),
    head: mappedHead(head, map),
    paddle: paddle && mappedPaddle(paddle, map),
    fineness,
  };
}

/** Where the map takes a small vector that stands at a point. */
function mappedVector(vector: Vec3, at: Vec3, map: SpaceMap): Vec3 {
  const by = scale(vector, STEP);
  const ahead = map({ x: at.x + by.x, y: at.y + by.y, z: at.z + by.z });
  const behind = map(subtract(at, by));
  return scale(subtract(ahead, behind), 1 / (2 * STEP));
}

/** An oval moved, its axes taken along as the map turns and stretches them at its middle. */
function mappedOval({ at, axes: [a, b, c] }: Oval, map: SpaceMap): Oval {
  return {
    at: map(at),
    axes: [mappedVector(a, at, map), mappedVector(b, at, map), mappedVector(c, at, map)],
  };
}

/** Flesh moved oval by oval. */
function mappedFlesh({ chains, hulls, ...flesh }: Flesh, map: SpaceMap): Flesh {
  const all = (groups: readonly (readonly Oval[])[]) =>
    groups.map((ovals) => ovals.map((oval) => mappedOval(oval, map)));
  return { ...flesh, chains: all(chains), ...(hulls && { hulls: all(hulls) }) };
}

/** A part with all that has a place moved; names and covers stay. */
function mappedPart(part: BodyPart, map: SpaceMap): BodyPart {
  return {
    ...part,
    bones: part.bones.map(([from, to]) => [map(from), map(to)] as const),
    flesh: part.flesh.map((flesh) => mappedFlesh(flesh, map)),
    joins: part.joins.map((flesh) => mappedFlesh(flesh, map)),
    ...(part.joinsAlong && { joinsAlong: [map(part.joinsAlong[0]), map(part.joinsAlong[1])] as const }),
    ...(part.opens && { opens: part.opens.map((opening) => mappedOpening(opening, map)) }),
    ...(part.lines && { lines: part.lines.map((line) => line.map(map)) }),
  };
}

/** A round end takes the largest radius that the map gives it in any direction. */
function mappedOpening({ at, radius, ...opening }: Opening, map: SpaceMap): Opening {
  const directions = [
    { x: radius, y: 0, z: 0 },
    { x: 0, y: radius, z: 0 },
    { x: 0, y: 0, z: radius },
  ];
  const mapped = directions.map((direction) => norm(mappedVector(direction, at, map)));
  return { ...opening, at: map(at), radius: Math.max(...mapped) };
}

/** The head keeps its height; its three axes are mapped. */
function mappedHead({ at, height, ahead, port, up, hair }: Head, map: SpaceMap): Head {
  return {
    hair,
    at: map(at),
    height,
    ahead: mappedVector(ahead, at, map),
    port: mappedVector(port, at, map),
    up: mappedVector(up, at, map),
  };
}

/** The paddle moved point by point. */
function mappedPaddle({ shaft, spine, grip, blade }: PaddleShape, map: SpaceMap): PaddleShape {
  return {
    shaft: [map(shaft[0]), map(shaft[1])],
    spine: map(spine),
    grip: [map(grip[0]), map(grip[1])],
    blade: blade.map(map),
  };
}
