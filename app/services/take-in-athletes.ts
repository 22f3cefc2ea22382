import type { CallOutput, ParsedInput } from '../contract/contract.ts';
import type { CallResult } from '../contract/result.ts';
import { takeBackup } from '../store/backups.ts';
import { athletes } from '../store/roster.ts';
import { atomically } from '../store/store.ts';
import { done, type Program } from './program.ts';

/** Keeps many athletes at once: a backup first, then all of them in one transaction. */
export function takeInAthletes(
  { gate, store }: Program,
  { athletes: taken }: ParsedInput<'athletes.takeIn'>,
): Promise<CallResult<CallOutput<'athletes.takeIn'>>> {
  return gate.alone(async () => {
    const presentKeptAs = await takeBackup(store, 'before-import');
    atomically(store, () => {
      for (const athlete of taken) athletes.save(store, athlete);
    });
    return done({ saved: taken.length, presentKeptAs });
  });
}
