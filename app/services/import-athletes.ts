import type { CallOutput, ParsedInput } from '../contract/contract.ts';
import type { CallResult } from '../contract/result.ts';
import { athletes } from '../store/roster.ts';
import { atomically } from '../store/store.ts';
import { done, type Program } from './program.ts';
import { backUp } from './safekeeping.ts';

/** Keeps many athletes at once: a backup first, then all of them in one transaction. */
export function importAthletes(
  program: Program,
  { athletes: taken, opened }: ParsedInput<'athletes.import'>,
): Promise<CallResult<CallOutput<'athletes.import'>>> {
  const { store, turn, writeLock } = program;
  const before = new Map(opened.map((athlete) => [athlete.id, athlete]));
  return turn.alone(async () => {
    const presentKeptAs = await backUp(program, 'before-import');
    return writeLock.alone(async () => {
      atomically(store, () => {
        for (const athlete of taken) athletes.save(store, athlete, before.get(athlete.id));
      });
      return done({ saved: taken.length, presentKeptAs });
    });
  });
}
