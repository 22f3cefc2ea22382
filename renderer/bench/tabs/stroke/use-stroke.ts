import { useMemo } from 'react';
import { type StrokeCrew, type StrokeRow, strokeCycle } from '../../../../core/stroke/stroke-cycle.ts';
import { strokeOfFit } from '../../../../core/stroke/stroke-of-fit.ts';
import { useFit } from '../../bench-context.tsx';

/** A fit's crew and its whole stroke, computed once per change of the fit. */
export interface StrokeOfBench {
  readonly crew: StrokeCrew;
  readonly rows: readonly StrokeRow[];
}

/** Rows between two instants: enough that a plot's line bends smoothly in 300 pixels. */
export const ROWS_PER_LEG = 8;

export function useStroke(): StrokeOfBench {
  const fit = useFit((state) => state.fit);
  const report = useFit((state) => state.report);
  return useMemo(() => {
    const crew = strokeOfFit(fit, report);
    return { crew, rows: strokeCycle(crew, ROWS_PER_LEG) };
  }, [fit, report]);
}
