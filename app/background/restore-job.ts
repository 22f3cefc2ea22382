import { prepareRestored } from '../store/restore.ts';
import type { JobHooks, Jobs } from './job.ts';

/** Prepares aside what the store is to be. Edits go on meanwhile. */
export function restoreAside(
  input: Jobs['restore-aside']['input'],
  hooks: JobHooks,
): Jobs['restore-aside']['output'] {
  return prepareRestored(input, hooks);
}
