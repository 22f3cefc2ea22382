import type { CallOutput } from '../contract/contract.ts';
import { listQuarantine } from '../store/quarantine.ts';
import type { Program } from './program.ts';

/** What a page needs to know when it opens. */
export function programState(program: Program): CallOutput<'program.state'> {
  const { store, shell, version, recovery, notices, cutShort } = program;
  return {
    version,
    shell: shell.kind,
    empty: isEmpty(program),
    cutShort,
    problems: listQuarantine(store),
    recovery,
    notices: [...notices.values()],
    dataFolder: store.folder,
  };
}

/** Whether the store holds no athlete, no boat and no fit, archived ones included. */
export function isEmpty({ store }: Pick<Program, 'store'>): boolean {
  const any = store.db
    .prepare<[], number>(
      'SELECT EXISTS (SELECT 1 FROM athletes) OR EXISTS (SELECT 1 FROM boats) OR EXISTS (SELECT 1 FROM fits)',
    )
    .pluck();
  return any.get() === 0;
}
