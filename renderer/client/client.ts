import type { CallInput, CallName, CallOutput } from '../../app/contract/contract.ts';
import type { CallResult } from '../../app/contract/result.ts';
import { say } from '../language/messages.ts';
import { send, takePrefetched } from './prefetch.ts';

/** Calls the program. Never rejects: if the program is gone, the result is a refusal. */
export async function call<N extends CallName>(
  name: N,
  input: CallInput<N>,
): Promise<CallResult<CallOutput<N>>> {
  try {
    return await (takePrefetched(name, input) ?? send(name, input));
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
