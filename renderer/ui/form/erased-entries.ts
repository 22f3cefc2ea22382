import { call } from '../../client/client.ts';
import { ENTRIES } from './use-form-values.ts';

const IDENTIFIER = /[\da-f]{8}-[\da-f]{4}-[\da-f]{4}-[\da-f]{4}-[\da-f]{12}/g;
/** As many as one call takes. */
const MOST = 1000;

/** Forgets unfinished entries of an erased athlete: those under the identifier or with it, and those that give exactly the name. */
export function forgetEntriesOf({ id, name }: { id: string; name?: string }): void {
  for (const [place, text] of keptEntries())
    if (text.includes(id) || (name && text.includes(JSON.stringify(name)))) localStorage.removeItem(place);
}

/** Forgets unfinished entries of athletes who were erased elsewhere since they were entered. */
export async function forgetErasedEntries(): Promise<void> {
  const ids = new Set(keptEntries().flatMap(([, text]) => text.match(IDENTIFIER) ?? []));
  if (ids.size === 0) return;
  const erased = await call('athletes.erased', { ids: [...ids].slice(0, MOST) });
  if (erased.ok) for (const id of erased.value) forgetEntriesOf({ id });
}

/** Each place with its text, which begins with the place. */
function keptEntries(): (readonly [string, string])[] {
  try {
    return Object.entries<string>({ ...localStorage })
      .filter(([place]) => place.startsWith(ENTRIES))
      .map(([place, text]) => [place, `${place} ${text}`]);
  } catch {
    // A page without storage has kept nothing.
    return [];
  }
}
