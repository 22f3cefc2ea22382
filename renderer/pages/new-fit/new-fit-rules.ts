import { z } from 'zod';
import type { AthleteRecord, BoatRecord } from '../../../app/contract/records.ts';
import type { Athlete } from '../../../core/document/athlete-schema.ts';
import { fitSchema } from '../../../core/document/fit-schema.ts';
import { say } from '../../language/messages.ts';
import type { FormRules } from '../../ui/form/form-rules.ts';
import type { ChosenSeat, NewFitValues } from './chosen.ts';
import { fitName } from './fit-name.ts';
import type { Starter } from './make-fit.ts';

/** The boats and athletes that a new fit can be made of. */
export interface FitChoices {
  readonly boats: readonly BoatRecord[];
  readonly athletes: readonly AthleteRecord[];
}

export const UNCHOSEN: ChosenSeat = { athleteId: undefined, side: null };

/** What has been chosen so far, with what follows from it. */
export interface ChosenFit {
  /** The only boat is chosen by itself. */
  readonly record: BoatRecord | null;
  readonly starters: readonly Starter[];
  /** The name entered, or one of athletes and boat. */
  readonly named: string;
}

const CHOSEN = z.object({
  boatId: z.string().min(1),
  seats: z.array(z.object({ athleteId: z.string().nullable() })),
  name: fitSchema.shape.name,
});

/** What the choices of a new fit come to. */
export function chosenFit({ boatId, seats, name }: NewFitValues, { boats, athletes }: FitChoices): ChosenFit {
  const record = boats.find(({ id }) => id === boatId) ?? (boats.length === 1 ? boats[0]! : null);
  const starters = record ? startersOf(record, seats, athletes) : [];
  const names = starters.flatMap(({ athlete }) => athlete?.name ?? []);
  return { record, starters, named: record ? (name ?? fitName(record.boat.name, names)) : '' };
}

function startersOf(
  record: BoatRecord,
  seats: readonly ChosenSeat[],
  athletes: readonly AthleteRecord[],
): Starter[] {
  return record.boat.seats.map((_, i) => {
    const { athleteId, side } = seats[i] ?? UNCHOSEN;
    const found = athletes.find(({ id }) => id === athleteId);
    const athlete = found ? { ...found.athlete, id: found.id } : null;
    return { athlete, side: side ?? athlete?.side ?? 'left' };
  });
}

/** A boat, a name, and somebody or nobody in each seat; nobody twice. */
export function newFitRules(listed: FitChoices): FormRules<NewFitValues, z.infer<typeof CHOSEN>> {
  return {
    schema: CHOSEN,
    documentOf: (values) => {
      const { record, named } = chosenFit(values, listed);
      const seats = record?.boat.seats.map((_, i) => ({ athleteId: values.seats[i]?.athleteId }));
      // Without a boat there is no entry for a name.
      return { boatId: record?.id, seats: seats ?? [], name: record ? named.trim() : '–' };
    },
    wordsFor: (path) => {
      if (path === 'boatId' && listed.boats.length === 0) return say('boats.empty');
      return path.startsWith('seats.') && listed.athletes.length === 0 ? say('new-fit.no-athlete') : null;
    },
    check: (values) => {
      const { starters } = chosenFit(values, listed);
      return Object.fromEntries(
        starters.map(({ athlete }, i) => [`seats.${i}.athleteId`, twice(starters, athlete, i)]),
      );
    },
  };
}

/** Says that somebody in a seat is in an earlier one as well; null for everybody else. */
function twice(starters: readonly Starter[], athlete: Athlete | null, at: number): string | null {
  const before = starters.slice(0, at).some((other) => other.athlete?.id === athlete?.id);
  return athlete?.id && before ? say('new-fit.twice', { name: athlete.name }) : null;
}
