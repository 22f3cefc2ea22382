import { say, words } from '../shell/say.ts';
import type { Findings } from '../store/open-safely.ts';
import type { Rebuilding } from '../store/rebuild.ts';

/** The day of an instant, `YYYY-MM-DD`. */
const dayOf = (instant: string) => instant.slice(0, 10);

/** What to say after a store was put together again. `backupAt`: the newest good backup's instant. */
export function rebuildingSentence(rebuilding: Rebuilding, backupAt: string | null): string {
  const { cause, quarantinedAt, base, complete } = rebuilding;
  const day = base ? dayOf(base.takenAt) : '';
  const whole = base ? say('found.restored.backup', { day }) : say('found.restored.journal');
  const partly = base ? say('found.partly.backup', { day }) : say('found.partly');
  return words().sentences([
    say(`found.${cause}`),
    ...(quarantinedAt ? [say('found.quarantined', { path: quarantinedAt })] : []),
    ...(complete ? [whole] : [partly, ...remainder(rebuilding, backupAt)]),
  ]);
}

function remainder({ salvaged, unreadable, base, pages }: Rebuilding, backupAt: string | null): string[] {
  const { athletes, boats, fits, revisions, trials } = salvaged;
  const next = backupAt ? say('found.good-backup', { day: dayOf(backupAt) }) : say('found.no-backup');
  return [
    say('found.counts', {
      athletes: athletes.added,
      boats: boats.added,
      fits: fits.added,
      revisions: revisions.added,
      trials: trials.added,
    }),
    ...(pages ? pagesSentences(pages) : []),
    ...(unreadable > 0 ? [say('found.unread', { count: unreadable })] : []),
    say('found.look'),
    ...(base ? [] : [next]),
  ];
}

function pagesSentences({
  rows,
  unreadableRows,
  unreadablePages,
}: NonNullable<Rebuilding['pages']>): string[] {
  const lost = unreadableRows + unreadablePages > 0;
  return [
    say('found.pages', { rows }),
    lost
      ? say('found.pages.lost', { rows: unreadableRows, pages: unreadablePages })
      : say('found.pages.none-lost'),
  ];
}

/** What to say of everything else that was found at the start, by what it is about. */
export function findingSentences({
  healing,
  renewed,
  missing,
  oddBackups,
  rebuilding,
}: Findings): [string, string][] {
  const { broughtBack = 0, restoredRows = 0, lostRows = [] } = healing ?? {};
  const parts = renewed.length > 1 ? 'both' : renewed[0];
  const said: [boolean, string, () => string][] = [
    [broughtBack > 0, 'brought-back', () => say('found.replayed', { count: broughtBack })],
    [restoredRows > 0, 'restored-rows', () => say('found.mended', { count: restoredRows })],
    [lostRows.length > 0, 'lost-rows', () => say('found.not-mended', { count: lostRows.length })],
    [missing > 0 && !rebuilding, 'missing', () => say('found.behind', { count: missing })],
    [renewed.length > 0, 'renewed', () => say('found.parts', { parts })],
    [oddBackups.length > 0, 'odd-backups', () => say('found.backups-gone', { count: oddBackups.length })],
  ];
  return said.flatMap(([found, about, sentence]) => (found ? [[about, sentence()]] : []));
}
