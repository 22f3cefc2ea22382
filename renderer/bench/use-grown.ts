import { useMemo } from 'react';
import type { AthleteRecord } from '../../app/contract/records.ts';
import type { Athlete } from '../../core/document/athlete-schema.ts';
import type { Seat } from '../../core/document/seat-schema.ts';
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

/** Everybody in the fit who has been measured otherwise since the fit took its copy, or who is due to be. */
export function useGrown(): readonly Grown[] {
  const seats = useFit(({ fit }) => fit.seats);
  // No canoe has more than four seats; the number of hooks never changes.
  const one = useAthleteOf(seats[0]);
  const two = useAthleteOf(seats[1]);
  const three = useAthleteOf(seats[2]);
  const four = useAthleteOf(seats[3]);
  return useMemo(() => {
    const records = [one, two, three, four];
    return seats.flatMap(({ athlete }, seat): Grown[] => {
      const record = records[seat];
      // While another athlete's answer is awaited, the earlier one stays.
      if (!athlete || !record || record.id !== athlete.id) return [];
      const who = { seat, athleteId: record.id, name: record.athlete.name };
      const { newest, due, difference } = comparedBody(athlete, record.athlete);
      return difference ? [{ ...who, newest, due, difference }] : [];
    });
  }, [seats, one, two, three, four]);
}

/** What is kept of whoever kneels in a seat; null for nobody, and for one typed into the fit alone. */
function useAthleteOf(seat: Seat | undefined): AthleteRecord | null {
  const id = seat?.athlete?.id;
  return useCall('athletes.open', id ? { id } : null).value;
}
