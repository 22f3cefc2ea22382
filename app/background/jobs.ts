import { backup, settleBackup } from './backup-job.ts';
import { decryptBundle, previewBundle, stageBundle } from './bundle-jobs.ts';
import { eraseAside, eraseCopies, eraseJournal, erasePreview, eraseStore } from './erase-jobs.ts';
import { exportEverything } from './export-job.ts';
import type { JobHooks, JobName, Jobs } from './job.ts';
import { restoreAside } from './restore-job.ts';
import { modelBlocks } from './step-job.ts';

/** One function for each job. */
export const jobs: {
  readonly [N in JobName]: (
    input: Jobs[N]['input'],
    hooks: JobHooks,
  ) => Jobs[N]['output'] | Promise<Jobs[N]['output']>;
} = {
  backup,
  export: exportEverything,
  'bundle-decrypt': decryptBundle,
  'bundle-preview': previewBundle,
  'bundle-stage': stageBundle,
  'restore-aside': restoreAside,
  'erase-aside': eraseAside,
  'erase-preview': erasePreview,
  'erase-store': eraseStore,
  'erase-copies': eraseCopies,
  'erase-journal': eraseJournal,
  'settle-backup': settleBackup,
  'model-blocks': modelBlocks,
};
