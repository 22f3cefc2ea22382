import { MOST_POINTS } from '../document/check-offsets.ts';
import { commonPlaces, openedSections } from './common-points.ts';
import type { Hull, SectionPoint, Station } from './hull.ts';
import { type SectionCurve, sectionCurve } from './section-curve.ts';

/**
 * How far the polyline that is computed with may lie from the fair curve, as a share of the hull's depth: 0.2 mm in a
 * racing single, which is about 0.1 mm of its draft.
 */
export const FAIR_WITHIN = 7e-4;

/** Most pieces that one stretch between two given points becomes. */
const MOST_PIECES = 12;

/**
 * Half-sections of equal point counts, ready for lofting: each starts on the centreline. With curves, points are added
 * between the given ones, at equal indices in every station, until the polylines lie close enough to the fair
 * sections (`sectionCurve`, `FAIR_WITHIN`); a table that is dense enough gains none. Metres; stations must be sorted and checked.
 */
export function fairSections(stations: readonly Station[], between: Hull['between']): SectionPoint[][] {
  const sections = openedSections(stations);
  const places = commonPlaces(sections);
  const curves = sections.map(between === 'curves' ? sectionCurve : chords);
  const pieces = between === 'curves' ? piecesOf(curves, places, FAIR_WITHIN * depthOf(sections)) : null;
  return curves.map((curve, i) => refined(places[i]!, pieces).map(curve));
}

/** From the lowest point of all sections to the highest, metres; above 0 in a hull that was checked. */
function depthOf(sections: readonly (readonly SectionPoint[])[]): number {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const [, z] of sections.flat()) [least, most] = [Math.min(least, z), Math.max(most, z)];
  return most - least;
}

/** The polyline itself as a curve. */
function chords(section: readonly SectionPoint[]): SectionCurve {
  return (place) => {
    const k = Math.floor(place);
    if (k === place) return section[k]!;
    const [[y0, z0], [y1, z1]] = [section[k]!, section[k + 1]!];
    return [y0 + (y1 - y0) * (place - k), z0 + (z1 - z0) * (place - k)];
  };
}

/** Pieces for each stretch between points of equal index, as many as the station that bends most there needs. */
function piecesOf(
  curves: readonly SectionCurve[],
  places: readonly (readonly number[])[],
  within: number,
): number[] | null {
  const pieces = places[0]!.slice(1).map(() => 1);
  curves.forEach((curve, i) => {
    pieces.forEach((most, j) => {
      const needed = Math.ceil(Math.sqrt(bulge(curve, places[i]![j]!, places[i]![j + 1]!) / within));
      pieces[j] = Math.min(MOST_PIECES, Math.max(most, needed));
    });
  });
  const points = 1 + pieces.reduce((sum, n) => sum + n, 0);
  return points * curves.length > MOST_POINTS ? null : pieces;
}

/** How far a curve bulges from its chord half-way between two places, metres; it falls with the square of the pieces. */
function bulge(curve: SectionCurve, from: number, to: number): number {
  const [[y0, z0], [y1, z1], [y, z]] = [curve(from), curve(to), curve((from + to) / 2)];
  return Math.hypot(y - (y0 + y1) / 2, z - (z0 + z1) / 2);
}

/** Places with each stretch divided evenly into its pieces. */
function refined(places: readonly number[], pieces: readonly number[] | null): readonly number[] {
  if (!pieces) return places;
  const out = [places[0]!];
  pieces.forEach((count, j) => {
    const [from, to] = [places[j]!, places[j + 1]!];
    for (let k = 1; k < count; k++) out.push(from + ((to - from) * k) / count);
    out.push(to);
  });
  return out;
}
