import { randomUUID } from 'node:crypto';
import { dispatch } from '../../../app/services/dispatch.ts';
import type { Program } from '../../../app/services/program.ts';
import { listFits, openFit } from '../../../app/store/fits.ts';
import { damageOf } from '../../../app/store/integrity.ts';
import { listQuarantine } from '../../../app/store/quarantine.ts';
import { listRevisions, openRevision } from '../../../app/store/revisions.ts';
import { athletes } from '../../../app/store/roster.ts';
import type { Store } from '../../../app/store/store.ts';
import { listTrials } from '../../../app/store/trials.ts';
import { inventedAthlete, inventedFit } from '../invented.ts';

/** One save, and what became of it as far as the program said. */
export interface Saved {
  readonly kind: 'create' | 'draft' | 'revision' | 'athlete' | 'trial';
  /** Stands in what was saved, and nowhere else. */
  readonly mark: string;
  /** The fit or athlete saved to. */
  readonly target: string;
  readonly outcome: 'kept' | string;
  /** A revision's identifier, when it was kept. */
  readonly id: string | null;
}

/** Ways of saving, in an order in which each meets what the others have done. */
const SCRIPT = ['draft', 'create', 'revision', 'athlete', 'draft', 'trial', 'revision', 'draft'] as const;

/** Saves in every way there is, on into failure; gives what the program said of each. */
export async function saveInEveryWay(
  program: Program,
  on: { fitId: string; athleteId: string },
): Promise<Saved[]> {
  const saved: Saved[] = [];
  for (const [i, kind] of SCRIPT.entries()) {
    const mark = `${kind} ${i}`;
    const fit = {
      ...inventedFit({ name: kind === 'create' ? mark : 'First try' }),
      notes: mark.padEnd(3000, '.'),
    };
    const target = kind === 'athlete' ? on.athleteId : on.fitId;
    const revisionId = newestRevisionId(program, on.fitId);
    const trial = { seat: 0, heldOn: '2026-03-04', observations: [], notes: mark.padEnd(3000, '.') };
    const calls = {
      draft: ['drafts.save', { id: on.fitId, fit }],
      create: ['fits.create', { fit }],
      revision: ['revisions.save', { fitId: on.fitId, fit, name: mark }],
      trial: ['trials.save', { revisionId, trial }],
      athlete: ['athletes.save', { athlete: inventedAthlete(mark, { id: on.athleteId }) }],
    } as const;
    const [name, input] = calls[kind];
    const result = await dispatch(program, name, input);
    const id = result.ok ? ((result.value as { id?: string }).id ?? null) : null;
    saved.push({ kind, mark, target, outcome: result.ok ? 'kept' : result.error.code, id });
  }
  return saved;
}

/** The revision that a trial is kept of; one that is not there where a full disk has kept none yet. */
function newestRevisionId({ store }: Program, fitId: string): string {
  return listRevisions(store, fitId)[0]?.id ?? randomUUID();
}

/**
 * Holds a store against what was said of the saves: what was kept is there whole, what was refused left no trace, and
 * the file is sound. Gives what is wrong.
 */
export function wrongsIn(store: Store, saved: readonly Saved[]): string[] {
  const wrongs: string[] = [];
  const damage = damageOf(store.db, 'whole');
  if (damage !== null) wrongs.push(`damaged: ${damage}`);
  if (listQuarantine(store).length > 0) wrongs.push('a row does not read');
  const text = JSON.stringify([
    store.db.prepare('SELECT fit FROM drafts').all(),
    store.db.prepare('SELECT name, fit FROM revisions').all(),
    store.db.prepare('SELECT athlete FROM athletes').all(),
    store.db.prepare('SELECT name FROM fits').all(),
    store.db.prepare('SELECT trial FROM trials').all(),
    store.db.prepare('SELECT search FROM revision_words').all(),
  ]);
  for (const { mark, outcome } of saved) {
    if (outcome !== 'kept' && text.includes(mark))
      wrongs.push(`${mark} was refused (${outcome}) and left a trace`);
  }
  const kept = saved.filter(({ outcome }) => outcome === 'kept');
  const last = kept.findLast(({ kind }) => kind === 'draft' || kind === 'revision');
  if (last) {
    const opened = openFit(store, last.target);
    if (typeof opened === 'string' || !opened.fit.notes.startsWith(`${last.mark}.`))
      wrongs.push(`${last.mark} is gone`);
    else if ((opened.draftSavedAt === null) !== (last.kind === 'revision'))
      wrongs.push(`${last.mark} is half kept`);
  }
  for (const { kind, mark, target, id } of kept) {
    if (kind === 'revision' && typeof openRevision(store, id!) === 'string') wrongs.push(`${mark} is gone`);
    if (kind === 'athlete' && athletes.get(store, target)?.athlete.name !== mark)
      wrongs.push(`${mark} is gone`);
    if (
      kind === 'trial' &&
      !listTrials(store, target).some(({ trial }) => trial.notes.startsWith(`${mark}.`))
    )
      wrongs.push(`${mark} is gone`);
    const page = { archived: false, search: mark, limit: 9, offset: 0 };
    if (kind === 'create' && listFits(store, page).length !== 1) wrongs.push(`${mark} is gone`);
  }
  return wrongs;
}
