import { useSyncExternalStore } from 'react';

/** Where the person is. `id: 'new'` makes one. */
export type Route =
  | { readonly page: 'home' }
  | { readonly page: 'fits' }
  | { readonly page: 'new-fit' }
  | {
      readonly page: 'fit';
      readonly id: string;
      /** The leaf of the margin that is opened; left out, the notes. */
      readonly leaf?: 'trials' | 'growth' | 'revisions';
      readonly trial?: string;
    }
  | { readonly page: 'trial'; readonly id: string; readonly trial?: string }
  | { readonly page: 'transfer'; readonly id: string }
  | { readonly page: 'set-out'; readonly id: string }
  | { readonly page: 'show'; readonly id: string }
  | { readonly page: 'crew-sheet'; readonly id: string }
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
  | { readonly page: 'help' };

/** A route as the part of the address after the #. */
export function hrefOf(route: Route): string {
  switch (route.page) {
    case 'home':
      return '#/';
    case 'fit':
      return ['#/fits', route.id, route.leaf, route.trial].filter(Boolean).join('/');
    case 'trial':
      return `#/fits/${route.id}/trial/${route.trial ?? 'new'}`;
    case 'transfer':
      return `#/fits/${route.id}/transfer`;
    case 'timeline':
      return `#/athletes/${route.id}/timeline`;
    case 'set-out':
    case 'show':
      return `#/fits/${route.id}/${route.page}`;
    case 'crew-sheet':
      return `#/fits/${route.id}/crew`;
    case 'athlete':
      return `#/athletes/${route.id}`;
    case 'measure':
      return `#/athletes/${route.id}/measure`;
    case 'athletes-table':
      return '#/athletes/table';
    case 'boat':
      return `#/boats/${route.id}`;
    case 'hull':
      return `#/boats/${route.id}/lines`;
    case 'paddles':
      return ['#/paddles', route.id].filter(Boolean).join('/');
    case 'new-fit':
      return '#/fits/new';
    default:
      return `#/${route.page}`;
  }
}

/** The route that an address names; anything unknown is home. */
export function routeOf(hash: string): Route {
  const [folder, id, ...rest] = hash.replace(/^#\/?/, '').split('/');
  if (folder === 'boats' && id && rest.length === 1 && rest[0] === 'lines') return { page: 'hull', id };
  const [leaf] = rest;
  if (folder === 'fits' && id && rest.length === 1 && (leaf === 'set-out' || leaf === 'show')) {
    return { page: leaf, id };
  }
  if (folder === 'fits' && id && rest.length === 1 && rest[0] === 'crew') return { page: 'crew-sheet', id };
  if (folder === 'fits' && id && rest.length > 0) return ofFit(id, rest);
  if (folder === 'athletes' && id && rest.length === 1 && rest[0] === 'timeline') {
    return { page: 'timeline', id };
  }
  if (folder === 'athletes' && id && rest.length === 1 && rest[0] === 'measure')
    return { page: 'measure', id };
  if (rest.length > 0) return { page: 'home' };
  if (folder === 'athletes' && id === 'table') return { page: 'athletes-table' };
  if (folder === 'fits') {
    if (id === 'new') return { page: 'new-fit' };
    return id ? { page: 'fit', id } : { page: 'fits' };
  }
  if ((folder === 'archive' || folder === 'help') && !id) return { page: folder };
  if (folder === 'athletes') return id ? { page: 'athlete', id } : { page: 'athletes' };
  if (folder === 'paddles') return id ? { page: 'paddles', id } : { page: 'paddles' };
  if (folder === 'boats') return id ? { page: 'boat', id } : { page: 'boats' };
  return { page: 'home' };
}

/** A leaf of a fit's bench, or a page about a fit. */
function ofFit(id: string, [leaf, trial, ...rest]: readonly string[]): Route {
  if (rest.length > 0) return { page: 'home' };
  if (leaf === 'trials') return trial ? { page: 'fit', id, leaf, trial } : { page: 'fit', id, leaf };
  if (leaf === 'trial' && trial)
    return trial === 'new' ? { page: 'trial', id } : { page: 'trial', id, trial };
  if (trial === undefined && (leaf === 'growth' || leaf === 'revisions')) return { page: 'fit', id, leaf };
  if (trial === undefined && leaf === 'transfer') return { page: 'transfer', id };
  return { page: 'home' };
}

export function go(route: Route): void {
  window.location.hash = hrefOf(route);
}

const listen = (changed: () => void) => {
  window.addEventListener('hashchange', changed);
  return () => window.removeEventListener('hashchange', changed);
};

/** The present route; the component is drawn again when it changes. */
export function useRoute(): Route {
  const hash = useSyncExternalStore(listen, () => window.location.hash);
  return routeOf(hash);
}
