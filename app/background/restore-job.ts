import { openBeside } from '../store/open-beside.ts';
import { restoreBackup } from '../store/restore.ts';
import type { JobHooks, Jobs } from './job.ts';

/** Restores a backup, in one transaction. The main thread writes nothing meanwhile. */
export function restore(
  { folder, at, name, how }: Jobs['restore']['input'],
  hooks: JobHooks,
): Jobs['restore']['output'] {
  const store = openBeside(folder, () => at);
  try {
    const restored = restoreBackup(store, { name, how }, hooks);
    return { restored, needsBackup: store.safeguard.needsBackup() };
  } finally {
    store.safeguard.close();
    store.db.close();
  }
}
