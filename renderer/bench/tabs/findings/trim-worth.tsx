import { useMemo } from 'react';
import { trimIsForHandling, usualSpeed } from '../../../../core/under-way/under-way-of-fit.ts';
import { useJobOn } from '../../../jobs/use-job.ts';
import { say } from '../../../language/messages.ts';
import { useFit } from '../../bench-context.tsx';

/** What trim is worth in this boat, at its usual speed in deep water: handling or speed too. Nothing until it is known. */
export function TrimWorth() {
  const fit = useFit((state) => state.fit);
  const question = useMemo(
    () => ({ fit, speed: usualSpeed(fit.seats.length), depth: null, against: null }),
    [fit],
  );
  const state = useJobOn('underWayOf', question);
  if (state.kind !== 'done' || !state.result) return null;
  return <span> {say(trimIsForHandling(state.result) ? 'notes.trim.handling' : 'notes.trim.speed')}</span>;
}
