import type { CallInput, CallName, CallOutput } from '../../../app/contract/contract.ts';
import type { CallResult } from '../../../app/contract/result.ts';

/** The program as a page meets it, whichever shell it runs in. */
export interface WayIn {
  call<N extends CallName>(name: N, input: CallInput<N>): Promise<CallResult<CallOutput<N>>>;
  /** A call that need not be one: any name, any input that can be sent. */
  send(name: unknown, input: unknown): Promise<CallResult<unknown>>;
  /** Fetches a delivered file's bytes. */
  fetchDelivery(delivery: CallOutput<'bundle.export'>): Promise<Uint8Array>;
  /** Hands a file over for the next call that takes one; gives what to pass as `upload`. */
  offer(bytes: Uint8Array): Promise<string | null>;
  /** Whether the shell has been asked to end the program. */
  quitAsked(): boolean;
  close(): Promise<void>;
}

/** A call's value; fails the test with the refusal if it was refused. */
export function value<T>(result: CallResult<T>): T {
  if (!result.ok)
    throw new Error(`${result.error.code}: ${result.error.message} ${JSON.stringify(result.error.problems)}`);
  return result.value;
}
