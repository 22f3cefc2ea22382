import Database from 'better-sqlite3';
import { sealCopy } from '../store/backups.ts';
import { keepManifest, shortenJournal } from '../store/keep-manifest.ts';
import { openBeside } from '../store/open-beside.ts';
import type { JobHooks, Jobs } from './job.ts';

/** Pages copied between two looks at whether to stop: 4 MB. */
const PAGES = 1024;

/** Copies the store as it is at this moment, and checks the copy whole. */
export async function backup(
  { file, to }: Jobs['backup']['input'],
  hooks: JobHooks,
): Promise<Jobs['backup']['output']> {
  const db = new Database(file, { readonly: true });
  try {
    // Holding a snapshot, or each edit meanwhile would begin the copy again.
    db.exec('BEGIN');
    db.prepare('SELECT count(*) FROM sqlite_schema').get();
    await db.backup(to, {
      progress({ totalPages, remainingPages }) {
        hooks.progress(totalPages - remainingPages, totalPages);
        hooks.goOn();
        return PAGES;
      },
    });
  } finally {
    db.close();
  }
  return sealCopy(to);
}

/** After a backup: shortens the journal and notes the backup. The main thread writes nothing meanwhile. */
export function settleBackup({
  folder,
  at,
}: Jobs['settle-backup']['input']): Jobs['settle-backup']['output'] {
  const store = openBeside(folder, () => at);
  try {
    const settled = shortenJournal(store);
    keepManifest(store);
    return { settled, needsBackup: false };
  } finally {
    store.safeguard.close();
    store.db.close();
  }
}
