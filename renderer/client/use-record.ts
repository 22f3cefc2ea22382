import type { AthleteRecord, BoatRecord } from '../../app/contract/records.ts';
import type { CallError } from '../../app/contract/result.ts';
import { useCall } from './use-call.ts';

interface Found<T> {
  /** Null when it is not in the store; undefined while the answer is awaited. */
  readonly record: T | null | undefined;
  readonly error: CallError | null;
}

/** More than any club has. */
const EVERYBODY = 1000;

/** The roster has no call for one: it is small, and the list is what a form needs anyway. `new` finds nothing. */
function useOneOf<T extends { readonly id: string }>(
  name: 'athletes.list' | 'boats.list',
  id: string,
): Found<T> {
  const inUse = useCall(name, { limit: EVERYBODY });
  const aside = useCall(name, { limit: EVERYBODY, archived: true });
  const error = inUse.error ?? aside.error;
  if (id === 'new') return { record: null, error };
  const find = (list: unknown) => (list as T[] | null)?.find((record) => record.id === id);
  const record = find(inUse.value) ?? find(aside.value);
  return { record: record ?? (inUse.value && aside.value ? null : undefined), error };
}

/** All athletes, those in use and those set aside. */
export interface Everybody {
  readonly inUse: readonly AthleteRecord[];
  readonly aside: readonly AthleteRecord[];
  /** Whether both are known. */
  readonly ready: boolean;
  readonly error: CallError | null;
  readonly reload: () => void;
}

export function useEverybody(): Everybody {
  const inUse = useCall('athletes.list', { limit: EVERYBODY });
  const aside = useCall('athletes.list', { limit: EVERYBODY, archived: true });
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

export const useAthlete = (id: string) => useOneOf<AthleteRecord>('athletes.list', id);
export const useBoat = (id: string) => useOneOf<BoatRecord>('boats.list', id);
