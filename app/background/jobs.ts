import type { BackgroundJobName, JobHooks, Jobs } from './job.ts';

/** What does one job. */
type Job<N extends BackgroundJobName> = (
  input: Jobs[N]['input'],
  hooks: JobHooks,
) => Jobs[N]['output'] | Promise<Jobs[N]['output']>;

/** Loads the function of each job: a thread loads only what its own job needs. */
export const jobs: { readonly [N in BackgroundJobName]: () => Promise<Job<N>> } = {
  backup: async () => (await import('./backup-job.ts')).backup,
  'settle-backup': async () => (await import('./backup-job.ts')).settleBackup,
  export: async () => (await import('./export-job.ts')).exportEverything,
  'bundle-decrypt': async () => (await import('./bundle-jobs.ts')).decryptBundle,
  'bundle-preview': async () => (await import('./bundle-jobs.ts')).previewInCopy,
  'bundle-stage': async () => (await import('./bundle-jobs.ts')).stageBundle,
  'restore-aside': async () => (await import('./restore-job.ts')).restoreAside,
  'erase-aside': async () => (await import('./erase-jobs.ts')).eraseAside,
  'erase-preview': async () => (await import('./erase-jobs.ts')).erasePreview,
  'erase-store': async () => (await import('./erase-jobs.ts')).eraseStore,
  'erase-copies': async () => (await import('./erase-jobs.ts')).eraseCopies,
  'erase-journal': async () => (await import('./erase-jobs.ts')).eraseJournal,
  'model-blocks': async () => (await import('./step-job.ts')).modelBlocks,
};
