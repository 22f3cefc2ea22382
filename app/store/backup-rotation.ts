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

/** Kept of the daily ones: the newest of each of the last 7 days, 5 weeks and 12 months. All others: 30 days. */
const ROTATION = { days: 7, weeks: 5, months: 12, otherDays: 30 } as const;

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

  const regular = newestFirst.filter(({ cause }) => cause === 'daily');
  keepNewestOfEach(regular, kept, (b) => (ageDays(b) < ROTATION.days ? `day ${ageDays(b)}` : null));
  keepNewestOfEach(regular, kept, (b) => {
    const week = weekOf(nowMs) - weekOf(Date.parse(b.takenAt));
    return week < ROTATION.weeks ? `week ${week}` : null;
  });
  keepNewestOfEach(regular, kept, (b) => {
    const month = monthOf(nowMs) - monthOf(Date.parse(b.takenAt));
    return month < ROTATION.months ? `month ${month}` : null;
  });
  for (const backup of newestFirst) {
    if (!regular.includes(backup) && ageDays(backup) < ROTATION.otherDays) kept.add(backup);
  }
  return newestFirst.filter((backup) => !kept.has(backup));
}

function keepNewestOfEach(
  newestFirst: readonly DatedBackup[],
  kept: Set<DatedBackup>,
  period: (backup: DatedBackup) => string | null,
): void {
  const seen = new Set<string>();
  for (const backup of newestFirst) {
    const key = period(backup);
    if (key === null || seen.has(key)) continue;
    seen.add(key);
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
