/** Whom to erase. */
export interface Person {
  readonly id: string;
  readonly name: string;
}

interface LooseSeat {
  readonly athlete?: { readonly id?: unknown; readonly name?: unknown } | null;
}

/** A fit as stored by any version, read no further than an erasure needs. */
export interface LooseFit {
  readonly name?: unknown;
  readonly notes?: unknown;
  readonly seats?: readonly LooseSeat[];
}

/** Stands where a name stood. */
const NAME_GONE = '(erased)';
/** Parts of a name shorter than this are left in free text: they are too often words of their own. */
const SHORTEST_PART = 3;

/** Whether a seat is this person's: by identifier, or by name where the seat's copy has no identifier. */
export function isOf({ athlete }: LooseSeat, person: Person): boolean {
  if (!athlete) return false;
  return athlete.id === person.id || (athlete.id === undefined && athlete.name === person.name);
}

/** A fit with this person's seats empty, what was set for this body taken out, and the name gone from all words. */
export function withoutPerson<F extends LooseFit>(fit: F, person: Person): F {
  const words = (text: unknown) => (typeof text === 'string' ? withoutName(text, person.name) : text);
  return {
    ...fit,
    ...('name' in fit ? { name: words(fit.name) } : {}),
    ...('notes' in fit ? { notes: words(fit.notes) } : {}),
    ...(Array.isArray(fit.seats)
      ? {
          seats: fit.seats.map((seat: LooseSeat) =>
            isOf(seat, person) ? { ...seat, athlete: null, pins: {}, bands: [], stroke: {} } : seat,
          ),
        }
      : {}),
  };
}

/** A text with a name, and every part of it that is long enough to be told from a word, taken out. */
export function withoutName(text: string, name: string): string {
  const parts = name.split(/\s+/).filter((part) => part.length >= SHORTEST_PART);
  return [name, ...parts].reduce(
    (left, part) => left.replace(new RegExp(`(?<!\\p{L})${escaped(part)}(?!\\p{L})`, 'giu'), NAME_GONE),
    text,
  );
}

function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
}
