import type { CallOutput } from '../contract/contract.ts';
import type { CallResult } from '../contract/result.ts';
import { type Program, refused } from './program.ts';
import { SENTENCES } from './sentences.ts';

/** Adds the demo club to an empty store; gives the fit to show first. */
export function installDemo(_program: Program): CallResult<CallOutput<'demo.install'>> {
  return refused('internal', SENTENCES['demo-broken']('not yet written'));
}
