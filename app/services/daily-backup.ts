import { BackupDamaged, listBackups } from '../store/backups.ts';
import { suspectStore } from '../store/open-store.ts';
import type { Program } from './program.ts';
import { isEmpty } from './program-state.ts';
import { backUp } from './safekeeping.ts';
import { SENTENCES } from './sentences.ts';

/** The first look comes a little after the start, so that the bench is up before the disk is asked to work. */
const FIRST_LOOK_MS = 20_000;
const LOOK_MS = 30 * 60_000;

/** Takes a backup on each day the program is used; gives the function that stops it. */
export function keepDailyBackups(program: Program): () => void {
  const look = () => void backUpOnceADay(program);
  const first = setTimeout(look, FIRST_LOOK_MS).unref();
  const later = setInterval(look, LOOK_MS).unref();
  return () => {
    clearTimeout(first);
    clearInterval(later);
  };
}

/** Takes today's backup if there is none yet and there is something to back up. A failure becomes a notice. */
export async function backUpOnceADay(program: Program): Promise<void> {
  const { store, turn, notices } = program;
  const today = new Date(store.clock()).toISOString().slice(0, 10);
  try {
    await turn.alone(async () => {
      const already = listBackups(store.folder).some(
        ({ cause, takenAt }) => cause === 'daily' && takenAt.startsWith(today),
      );
      const due = !already || store.safeguard.needsBackup();
      if (due && !isEmpty(program)) await backUp(program, 'daily');
    });
    notices.delete('backup');
  } catch (error) {
    if (error instanceof BackupDamaged) {
      suspectStore(store);
      notices.set('backup', SENTENCES['store-suspect']);
      return;
    }
    const detail = error instanceof Error ? error.message : String(error);
    notices.set('backup', SENTENCES['backup-failed'](detail));
  }
}
