/** Where the person is. `id: 'new'` makes one. */
export type Route =
  | { readonly page: 'home' }
  | { readonly page: 'fits' }
  | { readonly page: 'new-fit' }
  | {
      readonly page: 'fit';
      readonly id: string;
      /** The tab of the margin that is opened; if left out, the findings. */
      readonly tab?: 'trials' | 'growth' | 'revisions';
      readonly trial?: string;
    }
  | { readonly page: 'trial'; readonly id: string; readonly trial?: string }
  | { readonly page: 'transfer'; readonly id: string }
  | { readonly page: 'set-out'; readonly id: string }
  | { readonly page: 'show'; readonly id: string }
  | { readonly page: 'crew-sheet'; readonly id: string }
  | { readonly page: 'full-size'; readonly id: string }
  | { readonly page: 'photograph'; readonly id: string }
  | { readonly page: 'athletes' }
  | { readonly page: 'athlete'; readonly id: string }
  | { readonly page: 'timeline'; readonly id: string }
  | { readonly page: 'measure'; readonly id: string }
  | { readonly page: 'athletes-table' }
  | { readonly page: 'boats' }
  | { readonly page: 'boat'; readonly id: string }
  | { readonly page: 'hull'; readonly id: string }
  | { readonly page: 'paddles'; readonly id?: string }
  | { readonly page: 'archive' }
  | { readonly page: 'help' }
  | { readonly page: 'help-files' };

/** The tabs of a bench's margin that an address can open. */
const TABS = ['trials', 'growth', 'revisions'];

/** Every address and its page; a part after a colon is a field of the route. The first that fits holds. */
const ADDRESSES: readonly (readonly [address: string, page: Route['page']])[] = [
  ['', 'home'],
  ['fits', 'fits'],
  ['fits/new', 'new-fit'],
  ['fits/:id', 'fit'],
  ['fits/:id/set-out', 'set-out'],
  ['fits/:id/show', 'show'],
  ['fits/:id/crew', 'crew-sheet'],
  ['fits/:id/full-size', 'full-size'],
  ['fits/:id/photograph', 'photograph'],
  ['fits/:id/transfer', 'transfer'],
  ['fits/:id/trial/new', 'trial'],
  ['fits/:id/trial/:trial', 'trial'],
  ['fits/:id/:tab', 'fit'],
  ['fits/:id/:tab/:trial', 'fit'],
  ['athletes', 'athletes'],
  ['athletes/table', 'athletes-table'],
  ['athletes/:id', 'athlete'],
  ['athletes/:id/timeline', 'timeline'],
  ['athletes/:id/measure', 'measure'],
  ['boats', 'boats'],
  ['boats/:id', 'boat'],
  ['boats/:id/lines', 'hull'],
  ['paddles', 'paddles'],
  ['paddles/:id', 'paddles'],
  ['archive', 'archive'],
  ['help', 'help'],
  ['help/files', 'help-files'],
];

/** A route as the part of the address after the #. */
export function hrefOf(route: Route): string {
  const { page, ...rest } = route;
  const fields = Object.entries(rest).filter(([, value]) => value !== undefined);
  const [address] = ADDRESSES.find(([parts, of]) => of === page && fieldsOf(parts) === fields.length)!;
  return `#/${fields.reduce((filled, [name, value]) => filled.replace(`:${name}`, value), address)}`;
}

const fieldsOf = (address: string) => address.split(':').length - 1;

/** The route that an address names; anything unknown is home. */
export function routeOf(hash: string): Route {
  const given = hash.replace(/^#\/?/, '').split('/');
  for (const [address, page] of ADDRESSES) {
    const fields = matched(address.split('/'), given);
    if (fields) return { page, ...fields } as Route;
  }
  return { page: 'home' };
}

/** The fields that an address's parts give; null where they are those of another. */
function matched(parts: readonly string[], given: readonly string[]): Record<string, string> | null {
  if (parts.length !== given.length) return null;
  const fields: Record<string, string> = {};
  for (const [i, part] of parts.entries()) {
    const value = given[i]!;
    if (part === ':tab' && !TABS.includes(value)) return null;
    if (part.startsWith(':') && value) fields[part.slice(1)] = value;
    else if (part !== value) return null;
  }
  return fields;
}
