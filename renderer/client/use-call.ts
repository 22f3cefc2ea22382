import { useCallback, useEffect, useState } from 'react';
import type { CallInput, CallName, CallOutput } from '../../app/contract/contract.ts';
import type { CallError } from '../../app/contract/result.ts';
import { useArrivals } from './arrivals.ts';
import { call } from './client.ts';

/** What a page knows of an answer it asked for. While a later answer is awaited, the earlier one stays. */
export interface CallState<T> {
  readonly value: T | null;
  readonly error: CallError | null;
  readonly reload: () => void;
  /** Increases with each answer. */
  readonly round: number;
}

type Answered<T> = Omit<CallState<T>, 'reload'>;

/** Asks once when shown, and again when the input changes or on `reload`. Without an input nothing is asked. */
export function useCall<N extends CallName>(name: N, input: CallInput<N> | null): CallState<CallOutput<N>> {
  const [answer, setAnswer] = useState<Answered<CallOutput<N>>>({ value: null, error: null, round: 0 });
  const [round, setRound] = useState(0);
  const sent = input && JSON.stringify(input);
  const arrivals = useArrivals(name);
  // biome-ignore lint/correctness/useExhaustiveDependencies: `round` and `arrivals` ask again without a new input
  useEffect(() => {
    if (sent === null) return;
    let wanted = true;
    void call(name, JSON.parse(sent) as CallInput<N>).then((result) => {
      if (!wanted) return;
      setAnswer((before) => ({
        value: result.ok ? result.value : null,
        error: result.ok ? null : result.error,
        round: before.round + 1,
      }));
    });
    return () => {
      wanted = false;
    };
  }, [name, sent, round, arrivals]);
  const reload = useCallback(() => setRound((n) => n + 1), []);
  return { ...answer, reload };
}
