import type { CallOutput, ParsedInput } from '../contract/contract.ts';
import type { CallResult } from '../contract/result.ts';
import { decideConflict, listConflicts } from '../store/conflicts.ts';
import { recordTitle } from '../store/record-title.ts';
import { storeId } from '../store/store-identity.ts';
import { done, type Program, refused } from './program.ts';
import { SENTENCES } from './sentences.ts';

type Conflicts = CallOutput<'conflicts.list'>;

/** Every field that waits for a decision. */
export function openConflicts({ store }: Program): Conflicts {
  const here = storeId(store);
  return listConflicts(store).map(({ kind, id, path, values }) => ({
    kind,
    id,
    path,
    title: recordTitle(store, { kind, id }),
    values: values.map(({ value, at, store: by }) => ({ value, at, here: by === here })),
  }));
}

/** Lets one of a field's values stand; gives what is left to decide. */
export function decide(program: Program, choice: ParsedInput<'conflicts.decide'>): CallResult<Conflicts> {
  const decided = decideConflict(program.store, choice);
  if (decided === 'none') return refused('conflict', SENTENCES['conflict-gone']);
  if (decided === 'unsound') return refused('not-allowed', SENTENCES['conflict-unsound']);
  return done(openConflicts(program));
}
