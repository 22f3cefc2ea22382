import type { CallOutput, ParsedInput } from '../contract/contract.ts';
import type { CallResult } from '../contract/result.ts';
import { askedOnce, decideConflict, listConflicts, sameQuestions } from '../store/conflicts.ts';
import { recordTitle } from '../store/record-title.ts';
import { atomically } from '../store/store.ts';
import { storeId } from '../store/store-identity.ts';
import { done, type Program, refused } from './program.ts';
import { SENTENCES } from './sentences.ts';

type Conflicts = CallOutput<'conflicts.list'>;

/** Every field that waits for a decision. */
export function openConflicts({ store }: Program): Conflicts {
  const here = storeId(store);
  return askedOnce(listConflicts(store)).map(({ kind, id, path, values }) => ({
    kind,
    id,
    path,
    title: recordTitle(store, { kind, id }),
    values: values.map(({ value, at, store: by }) => ({ value, at, here: by === here })),
  }));
}

/** Lets one of a field's values stand; gives what is left to decide. */
export function decide(program: Program, choice: ParsedInput<'conflicts.decide'>): CallResult<Conflicts> {
  const { store } = program;
  const decided = atomically(store, () => {
    const twins = sameQuestions(listConflicts(store), choice);
    const outcome = decideConflict(store, choice);
    if (outcome === 'decided')
      for (const twin of twins) decideConflict(store, { ...twin, value: choice.value });
    return outcome;
  });
  if (decided === 'none') return refused('conflict', SENTENCES['conflict-gone']);
  if (decided === 'unsound') return refused('not-allowed', SENTENCES['conflict-unsound']);
  return done(openConflicts(program));
}
