import { useMemo } from 'react';
import type { Athlete } from '../../../core/fit/athlete-schema.ts';
import { type BodyDifference, bodyDifference } from '../../../core/growth/body-difference.ts';
import { useCall } from '../../client/use-call.ts';
import { useFit } from '../bench/bench-context.tsx';

/** Somebody in the fit on the bench whose body is another than the fit's copy of it. */
export interface Grown {
  readonly seat: number;
  readonly name: string;
  readonly newest: Athlete;
  readonly difference: BodyDifference;
}

const EVERYBODY = { limit: 1000 };

/** Everybody in the fit who has been measured otherwise since the fit took its copy. */
export function useGrown(): readonly Grown[] {
  const { value } = useCall('athletes.list', EVERYBODY);
  const seats = useFit(({ fit }) => fit.seats);
  return useMemo(
    () =>
      seats.flatMap(({ athlete }, seat): Grown[] => {
        const newest = athlete?.id && value?.find(({ id }) => id === athlete.id)?.athlete;
        const difference = athlete && newest ? bodyDifference(athlete, newest) : null;
        return newest && difference ? [{ seat, name: newest.name, newest, difference }] : [];
      }),
    [seats, value],
  );
}
