import { useMemo } from 'react';
import type { Athlete } from '../../core/document/athlete-schema.ts';
import type { BodyDifference } from '../../core/growth/body-difference.ts';
import type { GrowthDue } from '../../core/growth/measure-again.ts';
import { useCall } from '../client/use-call.ts';
import { useFit } from './bench-context.tsx';
import { comparedBody } from './compared-body.ts';

/** Somebody in the fit on the bench whose body is, or by now is likely to be, another than the fit's copy of it. */
export interface Grown {
  readonly seat: number;
  readonly athleteId: string;
  readonly name: string;
  /** As measured last; with `due`, as grown by what is likely since. */
  readonly newest: Athlete;
  readonly difference: BodyDifference;
  /** Why the body should be measured again; null where it has been, and is already another. */
  readonly due: GrowthDue | null;
}

const EVERYBODY = { limit: 1000 };

/** Everybody in the fit who has been measured otherwise since the fit took its copy, or who is due to be. */
export function useGrown(): readonly Grown[] {
  const { value } = useCall('athletes.list', EVERYBODY);
  const seats = useFit(({ fit }) => fit.seats);
  return useMemo(
    () =>
      seats.flatMap(({ athlete }, seat): Grown[] => {
        const record = athlete?.id && value?.find(({ id }) => id === athlete.id);
        if (!athlete || !record) return [];
        const who = { seat, athleteId: record.id, name: record.athlete.name };
        const { newest, due, difference } = comparedBody(athlete, record.athlete);
        return difference ? [{ ...who, newest, due, difference }] : [];
      }),
    [seats, value],
  );
}
