/** Why a backup was made. */
export const BACKUP_CAUSES = ['daily', 'asked', 'before-restore', 'before-import'] as const;
export type BackupCause = (typeof BACKUP_CAUSES)[number];

/** When and why a backup was made. */
export interface DatedBackup {
  readonly name: string;
  /** ISO 8601 in UTC. */
  readonly takenAt: string;
  readonly cause: BackupCause;
}

/**
 * Kept of the daily ones: the newest of each of the last 7 days, 5 weeks and 12 months that have one. All others: 30
 * days, and the newest ten in any case. Nothing goes by its date alone: a clock that is years ahead makes no backup old.
 */
const ROTATION = { days: 7, weeks: 5, months: 12, otherDays: 30, others: 10 } as const;

const DAY_MS = 86_400_000;

/**
 * The backups that the rotation lets go. The newest of all is always kept, and so is any that claims to be from the
 * future: the clock may be wrong, the backup is not. `nowMs`: milliseconds since 1970.
 */
export function outdatedBackups(backups: readonly DatedBackup[], nowMs: number): DatedBackup[] {
  const newestFirst = [...backups].sort((a, b) => b.takenAt.localeCompare(a.takenAt));
  const ageDays = (backup: DatedBackup) => dayOf(nowMs) - dayOf(Date.parse(backup.takenAt));
  const kept = new Set<DatedBackup>(newestFirst.slice(0, 1));
  for (const backup of newestFirst) if (ageDays(backup) < 0) kept.add(backup);

  const regular = newestFirst.filter((backup) => backup.cause === 'daily' && ageDays(backup) >= 0);
  const at = (backup: DatedBackup) => Date.parse(backup.takenAt);
  keepNewestOfEach(regular, kept, { period: (b) => dayOf(at(b)), most: ROTATION.days });
  keepNewestOfEach(regular, kept, { period: (b) => weekOf(at(b)), most: ROTATION.weeks });
  keepNewestOfEach(regular, kept, { period: (b) => monthOf(at(b)), most: ROTATION.months });
  const others = newestFirst.filter(({ cause }) => cause !== 'daily');
  for (const [rank, backup] of others.entries()) {
    if (rank < ROTATION.others || ageDays(backup) < ROTATION.otherDays) kept.add(backup);
  }
  return newestFirst.filter((backup) => !kept.has(backup));
}

/** Keeps the newest of each period that has a backup, for so many periods. */
function keepNewestOfEach(
  newestFirst: readonly DatedBackup[],
  kept: Set<DatedBackup>,
  { period, most }: { period: (backup: DatedBackup) => number; most: number },
): void {
  const seen = new Set<number>();
  for (const backup of newestFirst) {
    if (seen.has(period(backup)) || seen.size >= most) continue;
    seen.add(period(backup));
    kept.add(backup);
  }
}

/** Days, weeks (from Monday) and months since the start of 1970, UTC. */
function dayOf(ms: number): number {
  return Math.floor(ms / DAY_MS);
}
function weekOf(ms: number): number {
  // 1 January 1970 was a Thursday, three days into its week.
  return Math.floor((dayOf(ms) + 3) / 7);
}
function monthOf(ms: number): number {
  const date = new Date(ms);
  return date.getUTCFullYear() * 12 + date.getUTCMonth();
}
