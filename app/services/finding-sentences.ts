import type { Findings } from '../store/open-safely.ts';
import type { DamageCause, Rebuilding } from '../store/rebuild.ts';

const FOUND: Readonly<Record<DamageCause, string>> = {
  missing: 'The data file was missing.',
  empty: 'The data file was empty.',
  damaged: 'The data file was damaged.',
  foreign: "Another program's file lay in the place of the data file.",
  swapped: "Another store's file lay in the place of the data file.",
  older: 'The data file was an older one than this program left here.',
};

/** What to say after a store was put together again. `backupAt`: the newest good backup's instant. */
export function rebuildingSentence(rebuilding: Rebuilding, backupAt: string | null): string {
  const { cause, setAsideAt, base, complete } = rebuilding;
  const aside = setAsideAt ? ` It was set aside unchanged at ${setAsideAt}.` : '';
  const from = base ? `the backup of ${base.takenAt.slice(0, 10)} and the journal` : 'the journal';
  if (complete) {
    return `${FOUND[cause]}${aside} The store was put together again from ${from}: everything that had been kept is there.`;
  }
  return [`${FOUND[cause]}${aside}`, builtOn(rebuilding), ...remainder(rebuilding, backupAt)].join(' ');
}

function builtOn({ base }: Rebuilding): string {
  return base
    ? `The store was put together again from the backup of ${base.takenAt.slice(0, 10)} and what the journal held.`
    : 'The store was put together again from what could be read.';
}

function remainder({ salvaged, unreadable, base, pages }: Rebuilding, backupAt: string | null): string[] {
  const { athletes, boats, fits, revisions, trials } = salvaged;
  const saved = `${athletes.added} athletes, ${boats.added} boats and ${fits.added} fits with ${revisions.added} revisions and ${trials.added} trials`;
  const next = backupAt
    ? `A backup of ${backupAt.slice(0, 10)} is good: bring back from it what is missing.`
    : 'There is no good backup here; if you have a bundle elsewhere, import it.';
  return [
    `From the damaged file itself came ${saved}.`,
    ...(pages ? [pagesSentence(pages)] : []),
    ...(unreadable > 0 ? [`${unreadable} rows could not be read.`] : []),
    'The last edits may be missing: look at what you worked on last.',
    ...(base ? [] : [next]),
  ];
}

function pagesSentence({ rows, unreadableRows, unreadablePages }: NonNullable<Rebuilding['pages']>): string {
  const lost =
    unreadableRows + unreadablePages === 0
      ? 'No page of it was unreadable.'
      : `${unreadableRows} rows and ${unreadablePages} pages of it could not be read: what stood there is lost.`;
  return `The beginning of the file was lost, so it was read page by page: ${rows} rows were found. ${lost}`;
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
  const were = renewed.length > 1 ? 'were' : 'was';
  const said: [boolean, string, string][] = [
    [
      broughtBack > 0,
      'brought-back',
      `The data file had lost its last changes; ${broughtBack} were brought back from the journal. Nothing is missing.`,
    ],
    [
      restoredRows > 0,
      'restored-rows',
      `${restoredRows} records in the data file were no longer as they had been kept. They were restored from the journal or a backup. Check the disk if this happens again.`,
    ],
    [
      lostRows.length > 0,
      'lost-rows',
      `${lostRows.length} records in the data file are no longer as they had been kept, and no backup holds them. Look at what you worked on last, and check the disk.`,
    ],
    [
      missing > 0 && !rebuilding,
      'missing',
      `The data file is older than it was: at least ${missing} changes are missing, and the journal does not hold them. If you have a newer copy or bundle elsewhere, import it.`,
    ],
    [
      renewed.length > 0,
      'renewed',
      `The ${renewed.join(' and the ')} beside the data file ${were} missing or damaged, and begun anew. The data file itself is as it was kept; a backup is taken soon.`,
    ],
    [
      oddBackups.length > 0,
      'odd-backups',
      `${oddBackups.length} backups are gone or no longer as they were written. The data file itself is not affected. Take a backup now, and check the disk.`,
    ],
  ];
  return said.flatMap(([found, about, sentence]) => (found ? [[about, sentence]] : []));
}
