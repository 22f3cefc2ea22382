import type { ChildProgram } from '../app/child/child-program.ts';
import { inventedAthlete, inventedFit } from '../app/invented.ts';
import { value } from '../app/shells/way-in.ts';

/** What was acknowledged of one fit, and what was under way when the program was killed. */
interface KnownFit {
  readonly id: string;
  /** The mark in the newest state that was acknowledged. */
  acknowledged: string;
  /** A mark that was sent and not answered: it may be there or not. */
  sent: string | null;
  readonly revisions: Map<string, string>;
}

interface KnownAthlete {
  readonly id: string;
  acknowledged: string;
  sent: string | null;
}

/** Fits that the script goes on editing; older ones rest, and are looked at again at the end. */
const AT_HAND = 4;

/** Longest wait for a killed process to be gone, milliseconds. */
const GONE_LIMIT_MS = 30_000;

/** A script that edits as a coach would, and remembers what the program said it had kept. */
export interface ScriptedEditor {
  acknowledged(): number;
  /** Edits until the program is gone: has it killed once so many edits are acknowledged, and goes on. */
  edit(program: ChildProgram, end: { after: number; kill: () => void }): Promise<void>;
  /** Counts acknowledged edits that are no longer there. Looks at those touched last, or at all of them. */
  lost(program: ChildProgram, which: 'touched' | 'all'): Promise<string[]>;
}

/** `random` gives numbers from 0 to 1; the same numbers give the same script. */
export function scriptedEditor(random: () => number): ScriptedEditor {
  const fits: KnownFit[] = [];
  const athletes: KnownAthlete[] = [];
  let count = 0;
  let mark = 0;
  const nextMark = () => {
    mark += 1;
    return `edit ${mark}`;
  };
  const fitWith = (text: string) => ({ ...inventedFit({ padAftM: 0.1 + 0.2 * random() }), notes: text });
  const pick = <T>(list: readonly T[]) => list[Math.floor(random() * list.length)]!;

  async function createFit(program: ChildProgram): Promise<void> {
    const made = nextMark();
    const { id } = value(await program.call('fits.create', { fit: fitWith(made) }));
    fits.push({ id, acknowledged: made, sent: null, revisions: new Map() });
  }

  async function saveDraft(program: ChildProgram): Promise<void> {
    const fit = pick(fits.slice(-AT_HAND));
    fit.sent = nextMark();
    value(await program.call('drafts.save', { id: fit.id, fit: fitWith(fit.sent) }));
    fit.acknowledged = fit.sent;
    fit.sent = null;
  }

  async function saveRevision(program: ChildProgram): Promise<void> {
    const fit = pick(fits.slice(-AT_HAND));
    const made = nextMark();
    fit.sent = made;
    const revision = value(
      await program.call('revisions.save', { fitId: fit.id, fit: fitWith(made), name: made }),
    );
    fit.revisions.set(revision.id, made);
    fit.acknowledged = made;
    fit.sent = null;
  }

  async function saveAthlete(program: ChildProgram): Promise<void> {
    if (athletes.length < AT_HAND) {
      const name = nextMark();
      const { id } = value(await program.call('athletes.save', { athlete: inventedAthlete(name) }));
      athletes.push({ id, acknowledged: name, sent: null });
      return;
    }
    const athlete = pick(athletes);
    athlete.sent = nextMark();
    value(
      await program.call('athletes.save', { athlete: inventedAthlete(athlete.sent, { id: athlete.id }) }),
    );
    athlete.acknowledged = athlete.sent;
    athlete.sent = null;
  }

  function nextEdit() {
    const chance = random();
    if (fits.length === 0 || chance < 0.03) return createFit;
    if (chance < 0.15) return saveRevision;
    return chance < 0.25 ? saveAthlete : saveDraft;
  }

  async function lostOfFit(program: ChildProgram, fit: KnownFit): Promise<string[]> {
    const opened = await program.call('fits.open', { id: fit.id });
    if (!opened.ok) return [`fit ${fit.id}: ${opened.error.code}`];
    const lost: string[] = [];
    const found = opened.value.fit.notes;
    if (found !== fit.acknowledged && found !== fit.sent) lost.push(`${fit.acknowledged} (found ${found})`);
    for (const [id, made] of fit.revisions) {
      const revision = await program.call('revisions.open', { id });
      if (!revision.ok || revision.value.fit.notes !== made) lost.push(`revision ${made}`);
    }
    fit.acknowledged = found;
    fit.sent = null;
    return lost;
  }

  return {
    acknowledged: () => count,
    async edit(program, { after, kill }) {
      for (let made = 0; ; made++) {
        if (made === after) kill();
        try {
          await nextEdit()(program);
          count += 1;
        } catch (error) {
          // The connection breaks a moment before the process is known to be gone. Nothing more is sent after that: a
          // second edit under way would hide the mark of the first, which may have reached the disk.
          await Promise.race([program.ended, new Promise((resolve) => setTimeout(resolve, GONE_LIMIT_MS))]);
          if (program.process.signalCode === null) throw error;
          return;
        }
      }
    },
    async lost(program, which) {
      const looked = which === 'all' ? fits : fits.slice(-AT_HAND - 2);
      const lost: string[] = [];
      for (const fit of looked) lost.push(...(await lostOfFit(program, fit)));
      const listed = value(await program.call('athletes.list', { limit: 1000 }));
      for (const athlete of athletes) {
        const name = listed.find(({ id }) => id === athlete.id)?.athlete.name;
        if (name !== athlete.acknowledged && name !== athlete.sent)
          lost.push(`athlete ${athlete.acknowledged}`);
        athlete.acknowledged = name ?? athlete.acknowledged;
        athlete.sent = null;
      }
      return lost;
    },
  };
}
