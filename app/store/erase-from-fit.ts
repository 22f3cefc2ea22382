import { fullNames, nameParts, type Person } from './person.ts';

interface LooseSeat {
  readonly athlete?: { readonly id?: unknown; readonly name?: unknown } | null;
  readonly pinReadings?: unknown;
}

/** A fit as stored by any version, read no further than an erasure needs. */
export interface LooseFit {
  readonly name?: unknown;
  readonly notes?: unknown;
  readonly seats?: readonly LooseSeat[];
}

/** Stands where a name stood. */
const NAME_GONE = '(erased)';

/** Whether a seat is this person's: by identifier, or by name where the seat's copy has no identifier. */
export function isOf({ athlete }: LooseSeat, person: Person): boolean {
  if (!athlete) return false;
  if (athlete.id !== undefined) return athlete.id === person.id;
  return [person.name, ...person.formerNames].includes(String(athlete.name));
}

/** A fit with this person's seats empty, what was set for this body taken out, and the name gone from all words. */
export function withoutPerson<F extends LooseFit>(fit: F, person: Person): F {
  const words = (text: unknown) => (typeof text === 'string' ? withoutName(text, person) : text);
  return {
    ...fit,
    ...('name' in fit ? { name: words(fit.name) } : {}),
    ...('notes' in fit ? { notes: words(fit.notes) } : {}),
    ...(Array.isArray(fit.seats)
      ? {
          seats: fit.seats.map((seat: LooseSeat) => (isOf(seat, person) ? withoutBody(seat) : seat)),
        }
      : {}),
  };
}

/** A seat without its athlete and without what was set or read for this body. */
function withoutBody({ pinReadings: _, ...seat }: LooseSeat) {
  return { ...seat, athlete: null, pins: {}, bands: [], stroke: {} };
}

/**
 * A text with a person's names and guardians taken out; and, unless only full names are meant, every part of a name that is
 * long enough to be told from a word.
 */
export function withoutName(text: string, person: Person, how: NamesMeant = 'parts-too'): string {
  return nameCleaner(person, how)(text);
}

/** Which words of a name are meant. */
export type NamesMeant = 'full-names' | 'parts-too';

/** The same for many texts: the names are looked at once. */
export function nameCleaner(person: Person, how: NamesMeant): (text: string) => string {
  const words = [...fullNames(person), ...(how === 'parts-too' ? nameParts(person) : [])];
  if (words.length === 0) return (text) => text;
  const pattern = new RegExp(`(?<!\\p{L})(?:${words.map(escaped).join('|')})(?!\\p{L})`, 'giu');
  return (text) => text.replace(pattern, NAME_GONE);
}

/** A word as it is looked for: every sign stands for itself, any space for any other. */
function escaped(word: string): string {
  return word.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&').replace(/\s+/g, '\\s+');
}
