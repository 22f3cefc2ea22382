import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { COORDINATES } from '../../core/document/coordinates.ts';
import { coordinateOf } from '../../core/document/fitting-coordinate.ts';
import { violation, placeable } from '../../core/optimise/objective.ts';
import { costOf, pointAt, type Search } from '../../core/optimise/search.ts';

const MOVE_WEIGHT = 0.02;
/** No coordinate goes farther from where it was, in scales: the search's own box. */
const FARTHEST = 25;

/**
 * Least cost that a general-purpose least-squares library (Levenberg–Marquardt) finds for a proposal's search in so many
 * iterations: its residuals are the troubles of every finding and the weighed moves, to be brought to zero.
 */
export function costByLibrary(search: Search, maxIterations: number): number {
  const ids = placeable(search.held.findings).map((f) => f.id);
  const residualsAt = (x: readonly number[]) => {
    const { findings } = pointAt(search, x).report;
    const troubles = new Map(placeable(findings).map((f) => [f.id, violation(f)]));
    return [...ids.map((id) => troubles.get(id) ?? 0), ...x.map((d) => MOVE_WEIGHT * d)];
  };
  const ends = search.places.map(({ seat, coordinate }) => {
    const {
      usual: [least, most],
      moveUnit: scale,
    } = COORDINATES[coordinate];
    const from = coordinateOf(search.fit.seats[seat]!, coordinate);
    return [Math.max(-FARTHEST, (least - from) / scale), Math.min(FARTHEST, (most - from) / scale)] as const;
  });
  const rows = Array.from({ length: ids.length + ends.length }, (_, i) => i);
  const { parameterValues } = levenbergMarquardt(
    { x: rows, y: rows.map(() => 0) },
    (x: number[]) => {
      const residuals = residualsAt(x);
      return (row: number) => residuals[row]!;
    },
    {
      initialValues: ends.map(() => 0),
      minValues: ends.map(([least]) => least),
      maxValues: ends.map(([, most]) => most),
      gradientDifference: 0.05,
      centralDifference: true,
      damping: 0.1,
      maxIterations,
      errorTolerance: 0,
    },
  );
  return costOf(pointAt(search, parameterValues).report, parameterValues);
}
