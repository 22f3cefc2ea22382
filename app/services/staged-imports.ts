import { faultForLog } from '../shell/log-file.ts';
import { erasedButHere } from '../store/erased-people.ts';
import type { MergeCounts } from '../store/merge-counts.ts';
import { openStaged, stagedSteps } from '../store/staged-import.ts';
import type { Program } from './program.ts';
import { backUp, eraseEntry } from './safekeeping.ts';
import { SENTENCES } from './sentences.ts';

/**
 * Imports what is staged, while edits go on; null if nothing is. Cut short, it is done again from its beginning at the next
 * start: what is in already is met again and changes nothing.
 */
export async function takeStagedIn(program: Program): Promise<MergeCounts | null> {
  const { store, work } = program;
  const staged = openStaged(store.folder);
  if (!staged) return null;
  let changes: MergeCounts;
  try {
    const order = { what: 'import', of: staged.items, mustEnd: true } as const;
    changes = await work.run(order, stagedSteps(store, staged));
  } catch (error) {
    staged.close();
    throw error;
  }
  staged.remove();
  // Whoever was erased elsewhere goes here too, and from every copy: that of the present as well.
  for (const entry of erasedButHere(store.db)) await eraseEntry(program, entry, 'full-names');
  if (store.safeguard.needsBackup()) await backUp(program, 'daily');
  return changes;
}

/** At the start: an import that was cut short is brought to its end, and that is reported. */
export async function finishImport(program: Program): Promise<void> {
  const { store, turn, log, notices } = program;
  try {
    const changes = await turn.alone(() => takeStagedIn(program));
    if (changes) notices.set('import', SENTENCES['import-finished']);
  } catch (error) {
    // The program has ended meanwhile; the next start goes on.
    if (store.db.open) log.write(`import: ${faultForLog(error)}`);
  }
}
