import type { CallInput, CallName, CallOutput } from '../../app/contract/contract.ts';
import type { CallResult } from '../../app/contract/result.ts';
import { say } from '../language/messages.ts';
import { sessionHeader } from './session-header.ts';
import '../../app/contract/bridge.ts';

/**
 * Asks the program for something; under Electron through the preload's bridge, else over the loopback address. Never
 * rejects: a program that is gone is a refusal like any other.
 */
export async function call<N extends CallName>(
  name: N,
  input: CallInput<N>,
): Promise<CallResult<CallOutput<N>>> {
  try {
    return await (window.kneelwright ? window.kneelwright.call(name, input) : callOver(name, input));
  } catch {
    return {
      ok: false,
      error: {
        code: 'internal',
        message: say('error.gone', { saved: say('error.saved') }),
        problems: [],
      },
    };
  }
}

async function callOver<N extends CallName>(
  name: N,
  input: CallInput<N>,
): Promise<CallResult<CallOutput<N>>> {
  const response = await fetch('/call', {
    method: 'POST',
    headers: { 'content-type': 'application/json', ...sessionHeader() },
    body: JSON.stringify({ name, input }),
  });
  return (await response.json()) as CallResult<CallOutput<N>>;
}
