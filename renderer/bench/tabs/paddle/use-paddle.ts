import { useMemo } from 'react';
import type { Fit } from '../../../../core/document/fit-schema.ts';
import { paddleOf } from '../../../../core/evaluation/paddle-quantities.ts';
import { findQuantity, type QuantityId } from '../../../../core/evaluation/quantities.ts';
import type { Report } from '../../../../core/evaluation/report.ts';
import { hullOfBoat } from '../../../../core/hull/hull-of-boat.ts';
import type { PaddleFit } from '../../../../core/paddle/paddle-fit.ts';
import { useFit } from '../../bench-context.tsx';

/** How the paddle of one state of the fit suits; null where nobody kneels or the boat does not float. */
export type PaddleReader = (fit: Fit, report: Report) => PaddleFit | null;

/** Reads the paddle of the seat worked on out of any state of the fit; each report is worked out once. */
export function usePaddleReader(): PaddleReader {
  const seat = useFit((state) => state.seat);
  const boat = useFit(({ fit }) => fit.boat);
  return useMemo(() => {
    const known = new WeakMap<Report, PaddleFit | null>();
    return (fit, report) => {
      const seen = known.get(report);
      if (seen !== undefined) return seen;
      const solved = report.seats[seat];
      const made = solved
        ? paddleOf({ ...solved, seat: fit.seats[seat]! }, { hull: hullOfBoat(boat) }, report.afloat.ready)
        : null;
      known.set(report, made);
      return made;
    };
  }, [seat, boat]);
}

/** Standard deviation of one of the seat's quantities, metres; zero where none is known. */
export function sdOf(report: Report, id: QuantityId, seat: number): number {
  return findQuantity(report.quantities, id, seat)?.sd ?? 0;
}
