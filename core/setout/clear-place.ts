import type { Text } from '../graphics/shape.ts';
import { boundsOf } from './drawing-bounds.ts';
import { drawnParts, partShows } from './drawn-parts.ts';
import { type MillimetrePoint, type TemplateLayer, type TemplateShape, textAt } from './template-drawing.ts';

/** The same words at the places where they may stand, best first. */
export type NamePlaces = readonly Text<TemplateLayer>[];

/** Distances from a point at which its name is tried, millimetres. */
const OFF_MM = [2, 5, 9] as const;
/** A hole's number: beside the upright arm of its cross and over the hole, millimetres. */
const BESIDE_MM = 1.2;
const ABOVE_MM = 1.6;
/** Steps along an edge and distances from it at which words are tried, millimetres. */
const ALONG_MM = 6;
const STEPS = 40;
const IN_MM = [5, 15, 25] as const;

/** A drawing with names over it, each at the first of its places that covers nothing; at the first of all where there is none. */
export function withNames(drawn: readonly TemplateShape[], names: readonly NamePlaces[]): TemplateShape[] {
  const parts = drawnParts(drawn);
  const chosen = names.map((places) => {
    const clear = places.find((place) => {
      const box = boundsOf([place]);
      return !parts.some((part) => partShows(part, box));
    });
    const name = clear ?? places[0]!;
    parts.push(...drawnParts([name]));
    return name;
  });
  return [...drawn, ...chosen];
}

/** Places for a point's name of a height: the four corners beside it, then farther off. Millimetres. */
export function besidePoint(name: string, [x, y]: MillimetrePoint, height: number): NamePlaces {
  return OFF_MM.flatMap((off) => [
    textAt(name, [x + off, y + off], { height }),
    textAt(name, [x + off, y - off - height], { height }),
    textAt(name, [x - off, y + off], { height, anchor: 'end' }),
    textAt(name, [x - off, y - off - height], { height, anchor: 'end' }),
  ]);
}

/** Places for a hole's number of a height: at its four corners, as near as the hole's cross leaves room. Millimetres. */
export function besideHole(number: string, [x, y]: MillimetrePoint, at: HoleNumber): NamePlaces {
  const { radius, height } = at;
  const [over, under] = [y + radius + ABOVE_MM, y - radius - ABOVE_MM - height];
  return [over, under].flatMap((level) => [
    textAt(number, [x + BESIDE_MM, level], { height }),
    textAt(number, [x - BESIDE_MM, level], { height, anchor: 'end' }),
  ]);
}

/** A hole's radius and the height of its number, millimetres. */
interface HoleNumber {
  readonly radius: number;
  readonly height: number;
}

/** Places for words beside a long edge, near its start first: `level` says how high they stand there, so far in from the edge. */
export function alongEdge(
  text: string,
  from: number,
  level: (x: number, inMm: number) => number,
): NamePlaces {
  return IN_MM.flatMap((inMm) =>
    Array.from({ length: STEPS }, (_, k) => from + ALONG_MM * (k + 1)).map((x) =>
      textAt(text, [x, level(x, inMm)]),
    ),
  );
}
