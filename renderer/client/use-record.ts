import type { AthleteRecord } from '../../app/contract/records.ts';
import type { CallError } from '../../app/contract/result.ts';
import { type CallState, useCall } from './use-call.ts';

interface Found<T> {
  /** Null when it is not in the store; undefined while the answer is awaited. */
  readonly record: T | null | undefined;
  readonly error: CallError | null;
  /** Asks for the record again, after it was changed. */
  readonly reload: () => void;
}

/** What a page asks for: nothing while the record is yet to be made. */
const wanted = (id: string) => (id === 'new' ? null : { id });

/** An id from an address may not exist or not be valid. */
const NO_RECORD: readonly string[] = ['not-found', 'bad-input'];

function foundOf<T>(id: string, { value, error, reload }: CallState<T>): Found<T> {
  if (id === 'new' || (error && NO_RECORD.includes(error.code))) return { record: null, error: null, reload };
  return { record: value ?? undefined, error, reload };
}

/** All athletes, those in use and archived ones. */
export interface AllAthletes {
  readonly inUse: readonly AthleteRecord[];
  readonly aside: readonly AthleteRecord[];
  /** Whether both are known. */
  readonly ready: boolean;
  readonly error: CallError | null;
  readonly reload: () => void;
}

export function useAllAthletes(): AllAthletes {
  const inUse = useCall('athletes.list', {});
  const aside = useCall('athletes.list', { archived: true });
  return {
    inUse: inUse.value ?? NOBODY,
    aside: aside.value ?? NOBODY,
    ready: inUse.value !== null && aside.value !== null,
    error: inUse.error ?? aside.error,
    reload: () => {
      inUse.reload();
      aside.reload();
    },
  };
}

const NOBODY: readonly AthleteRecord[] = [];

/** One record by its id, archived or not. */
export const useAthlete = (id: string) => foundOf(id, useCall('athletes.open', wanted(id)));
export const useBoat = (id: string) => foundOf(id, useCall('boats.open', wanted(id)));
export const usePaddle = (id: string) => foundOf(id, useCall('paddles.open', wanted(id)));
