import type { CallOutput, ParsedInput } from '../contract/contract.ts';
import type { CallResult } from '../contract/result.ts';
import { entriesOfPerson, joinEntries } from '../store/join-people.ts';
import { done, missing, type Program, refused } from './program.ts';
import { SENTENCES } from './sentences.ts';

/** Joins one entry of a person to another; gives the entries of the one it is now shown with. */
export function joinPerson(
  { store }: Program,
  { id, into }: ParsedInput<'athletes.join'>,
): CallResult<CallOutput<'athletes.join'>> {
  const joined = joinEntries(store, { id, into });
  if (joined === 'none') return missing('athlete');
  if (joined === 'circle') return refused('not-allowed', SENTENCES['join-circle']);
  return done(entriesOfPerson(store, into));
}
