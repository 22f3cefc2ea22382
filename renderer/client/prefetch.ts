import type { CallInput, CallName, CallOutput } from '../../app/contract/contract.ts';
import type { CallResult } from '../../app/contract/result.ts';
import { sessionHeader } from './session-header.ts';
import '../../app/contract/bridge.ts';

/** A call that was sent, and its input. */
interface Sent {
  readonly asks: string;
  readonly answer: Promise<unknown>;
}

/** Calls sent ahead whose answers nobody has taken yet. */
let waiting: readonly Sent[] = [];

const asksOf = (name: string, input: unknown) => JSON.stringify([name, input]);

/** Sends a call to the program; under Electron through the preload's bridge, else over the loopback address. Rejects if it is gone. */
export async function send<N extends CallName>(
  name: N,
  input: CallInput<N>,
): Promise<CallResult<CallOutput<N>>> {
  if (window.kneelwright) return window.kneelwright.call(name, input);
  const response = await fetch('/call', {
    method: 'POST',
    headers: { 'content-type': 'application/json', ...sessionHeader() },
    body: JSON.stringify({ name, input }),
  });
  return (await response.json()) as CallResult<CallOutput<N>>;
}

/** Sends the page's first calls while its scripts are still loading. Valid until another page is opened. */
export function prefetchCall<N extends CallName>(name: N, input: CallInput<N>): void {
  const answer = send(name, input);
  // The caller that takes the answer gets the error.
  answer.catch(() => {});
  waiting = [...waiting, { asks: asksOf(name, input), answer }];
  window.addEventListener('hashchange', forget, { once: true });
}

/** The answer to a call that was sent ahead, once; null if it was not. */
export function takePrefetched<N extends CallName>(
  name: N,
  input: CallInput<N>,
): Promise<CallResult<CallOutput<N>>> | null {
  if (waiting.length === 0) return null;
  const asks = asksOf(name, input);
  const found = waiting.find((sent) => sent.asks === asks);
  waiting = waiting.filter((sent) => sent !== found);
  return found ? (found.answer as Promise<CallResult<CallOutput<N>>>) : null;
}

function forget(): void {
  waiting = [];
}
