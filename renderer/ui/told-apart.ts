import type { AthleteRecord, BoatRecord } from '../../app/contract/records.ts';
import type { Format } from '../../app/language/format.ts';
import { hullLengthOf } from '../../core/hull/hull-length.ts';
import { dateText } from '../language/dates.ts';
import { words } from '../language/messages.ts';

interface Named {
  readonly value: string;
  readonly name: string;
  /** What tells it from another of the same name. */
  readonly more: string;
}

/** Choices whose names differ: where two records share one, each says more of itself. */
function toldApart(choices: readonly Named[]) {
  const count = new Map<string, number>();
  for (const { name } of choices) count.set(name, (count.get(name) ?? 0) + 1);
  return choices.map(({ value, name, more }) => ({
    value,
    name: count.get(name) !== 1 ? words().beside([name, more]) : name,
  }));
}

/** Athletes to choose from; of the same name by birth date and stature. */
export function athleteChoices(records: readonly AthleteRecord[], format: Format) {
  return toldApart(
    records.map(({ id, athlete: { name, bornOn, statureM } }) => ({
      value: id,
      name,
      more: words().beside([dateText(bornOn), format.length(statureM)]),
    })),
  );
}

/** Boats to choose from; of the same name by class, length and mass. */
export function boatChoices(records: readonly BoatRecord[], format: Format) {
  return toldApart(
    records.map(({ id, boat: { name, boatClass, hull, massKg } }) => ({
      value: id,
      name,
      more: words().beside([
        boatClass === 'none' ? '' : boatClass,
        format.length(hullLengthOf(hull)),
        format.mass(massKg),
      ]),
    })),
  );
}
