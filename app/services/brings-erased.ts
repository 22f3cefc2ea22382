import type { CallName } from '../contract/contract.ts';
import { listErased, wasErased } from '../store/erased-people.ts';
import type { Program } from './program.ts';

/** Calls that bring documents in which athletes stand. */
const BRINGS_PEOPLE: ReadonlySet<CallName> = new Set<CallName>([
  'athletes.save',
  'fits.create',
  'drafts.save',
  'revisions.save',
  'trials.save',
  'measurings.save',
  'photos.add',
]);

/** Whether a call would bring back somebody who was erased: a page that was open before still has the person. */
export function bringsErased({ store }: Program, name: CallName, input: unknown): boolean {
  if (!BRINGS_PEOPLE.has(name)) return false;
  const erased = listErased(store.db);
  return erased.length > 0 && peopleIn(input).some((id) => wasErased(erased, id));
}

/** Identifiers of athletes in a call's input, wherever they stand. */
function peopleIn(value: unknown): string[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inside]) => {
    if (key === 'athleteId' && typeof inside === 'string') return [inside];
    const id = key === 'athlete' && inside && (inside as { id?: unknown }).id;
    return typeof id === 'string' ? [id] : peopleIn(inside);
  });
}
