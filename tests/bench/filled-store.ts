import { randomUUID } from 'node:crypto';
import { createFit } from '../../app/store/fits.ts';
import { saveRevision } from '../../app/store/revisions.ts';
import { athletes } from '../../app/store/roster.ts';
import { atomically, type Store } from '../../app/store/store.ts';
import { inventedAthlete, inventedFit } from '../app/invented.ts';

/** Fits of each athlete, and revisions of each fit. */
const EACH = { fits: 2, revisions: 25 };
const FIRST = ['Ada', 'Bojan', 'Céline', 'Dagný', 'Eero', 'Fiadh', 'Gergő', 'Ħanna', 'Ilir', 'Jūratė'];
const LAST = [
  'Alderwick',
  'Brzask',
  'Çelebin',
  'Đorić',
  'Eskerod',
  'Fjellvik',
  'Grünhalm',
  'Høyland',
  'Ionesku',
];

/** What a measuring of the store opens: something that was put in last. */
export interface Filled {
  readonly fitId: string;
  readonly revisionId: string;
  readonly athleteId: string;
}

/** Invented athletes with so many fits and revisions `each`, until there are `to` revisions where there were `from`. */
export function fill(
  store: Store,
  { from, to, each: one = EACH }: { from: number; to: number; each?: typeof EACH },
): Filled {
  const each = one.fits * one.revisions;
  store.db.pragma('synchronous = OFF');
  const last = atomically(store, () => {
    let found: Filled | null = null;
    for (let i = from / each; i < to / each; i++) found = addAthlete(store, i, one);
    return found;
  });
  store.db.pragma('synchronous = FULL');
  // Waits until all of it lies on the disk, or whoever writes next would wait for it.
  store.db.pragma('wal_checkpoint(TRUNCATE)');
  if (!last) throw new Error(`nothing was added between ${from} and ${to} revisions`);
  return last;
}

function addAthlete(store: Store, i: number, { fits, revisions }: typeof EACH): Filled {
  const name = `${FIRST[i % FIRST.length]} ${LAST[Math.floor(i / FIRST.length) % LAST.length]} ${i}`;
  const { athlete } = athletes.save(store, inventedAthlete(name, { id: randomUUID() }));
  let last: Filled = { fitId: '', revisionId: '', athleteId: '' };
  for (let f = 0; f < fits; f++) {
    const fit = inventedFit({ name: `Fit ${f}`, athlete });
    const { id } = createFit(store, fit);
    const saved = saveRevision(store, { fitId: id, fit, name: 'Revision 0', reason: '' });
    if (saved === 'conflict' || saved === 'none') throw new Error(`a revision was not saved: ${saved}`);
    for (let r = 1; r < revisions; r++) copyRevision(store, saved.id, r);
    last = { fitId: id, revisionId: saved.id, athleteId: athlete.id! };
  }
  return last;
}

/** The same revision once more, as a row: saving each one takes minutes for a large store. */
function copyRevision({ db }: Store, of: string, nth: number): void {
  const id = randomUUID();
  db.prepare(
    `INSERT INTO revisions (id, fit_id, number, name, reason, saved_at, fit)
     SELECT ?, fit_id, number + ?, ?, reason, saved_at, fit FROM revisions WHERE id = ?`,
  ).run(id, nth, `Revision ${nth}`, of);
  db.prepare(
    `INSERT INTO revision_words (revision_id, answers, athlete_ids, search, saved_at)
     SELECT ?, answers, athlete_ids, replace(search, 'revision 0', ?), saved_at FROM revision_words WHERE revision_id = ?`,
  ).run(id, `revision ${nth}`, of);
}
