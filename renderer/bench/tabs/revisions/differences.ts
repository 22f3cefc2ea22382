import type { Format } from '../../../../app/language/format.ts';
import { FITTING_COORDINATES } from '../../../../core/document/coordinates.ts';
import type { Fit } from '../../../../core/document/fit-schema.ts';
import { coordinateOf } from '../../../../core/document/fitting-coordinate.ts';
import { quantityDefinition } from '../../../../core/evaluation/quantities.ts';
import type { Report } from '../../../../core/evaluation/report.ts';
import { say } from '../../../language/messages.ts';
import { quantityName } from '../../../language/sentences.ts';
import { amountText, signedAmountText } from '../../change-text.ts';
import { coordinateName } from '../../coordinate-name.ts';

/** One row of the table of differences. */
export interface Difference {
  readonly what: string;
  readonly older: string;
  readonly now: string;
  /** From then to now, with its sign; empty where the values are no numbers to be taken from one another. */
  readonly change: string;
}

/** What differs in a seat and in the boat between an older state and the one drawn: measures first, then judged values. */
export function differencesOf(
  older: { fit: Fit; report: Report },
  drawn: { fit: Fit; report: Report },
  { seat, format }: { seat: number; format: Format },
): Difference[] {
  const was = older.fit.seats[seat];
  const is = drawn.fit.seats[seat];
  const measures = FITTING_COORDINATES.flatMap((c): Difference[] => {
    if (!was || !is || coordinateOf(was, c) === coordinateOf(is, c)) return [];
    const text = (at: typeof is) => amountText(c, coordinateOf(at, c), format);
    const change = signedAmountText(c, coordinateOf(is, c) - coordinateOf(was, c), format);
    return [{ what: coordinateName(c), older: text(was), now: text(is), change }];
  });
  return [...measures, ...valueDifferences(older.report, drawn.report, { seat, format })];
}

/**
 * Judged values are told to the usual step, not to their doubt: both states share nearly all of it. The change is that between the
 * two values as they are reported, so that the line adds up.
 */
function valueDifferences(
  older: Report,
  drawn: Report,
  { seat, format }: { seat: number; format: Format },
): Difference[] {
  const before = new Map(older.quantities.map((q) => [`${q.id} ${q.seat}`, q]));
  return drawn.quantities.flatMap((now): Difference[] => {
    const then = before.get(`${now.id} ${now.seat}`);
    const definition = quantityDefinition(now.id);
    if (!then || !definition || definition.source === 'as-set' || (now.seat !== null && now.seat !== seat))
      return [];
    const write = format.quantity(now.id);
    const changed = format.quantity(now.id, { signed: true });
    const [a, b] = [write(then.value, then.unit), write(now.value, now.unit)];
    const change = changed(format.shownValue(now) - format.shownValue(then), now.unit);
    return a === b || Math.abs(then.value - now.value) < definition.step
      ? []
      : [{ what: quantityName(now.id), older: a, now: b, change }];
  });
}

/** What a table of numbers cannot say: another athlete, another boat. */
export function otherChanges(older: Fit, drawn: Fit): string[] {
  const sentences: string[] = [];
  if (JSON.stringify(older.boat) !== JSON.stringify(drawn.boat))
    sentences.push(say('revisions.boat-changed'));
  drawn.seats.forEach(({ athlete }, index) => {
    if (older.seats[index]?.athlete?.name !== athlete?.name) {
      sentences.push(say('revisions.seat-changed', { number: index + 1 }));
    }
  });
  return sentences;
}
