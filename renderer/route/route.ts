import { useSyncExternalStore } from 'react';

/** Where the person is. `id: 'new'` makes one. */
export type Route =
  | { readonly page: 'home' }
  | { readonly page: 'fits' }
  | { readonly page: 'new-fit' }
  | { readonly page: 'fit'; readonly id: string }
  | { readonly page: 'crew-sheet'; readonly id: string }
  | { readonly page: 'athletes' }
  | { readonly page: 'athlete'; readonly id: string }
  | { readonly page: 'boats' }
  | { readonly page: 'boat'; readonly id: string }
  | { readonly page: 'hull'; readonly id: string }
  | { readonly page: 'archive' }
  | { readonly page: 'help' };

/** A route as the part of the address after the #. */
export function hrefOf(route: Route): string {
  switch (route.page) {
    case 'home':
      return '#/';
    case 'fit':
      return `#/fits/${route.id}`;
    case 'crew-sheet':
      return `#/fits/${route.id}/crew`;
    case 'athlete':
      return `#/athletes/${route.id}`;
    case 'boat':
      return `#/boats/${route.id}`;
    case 'hull':
      return `#/boats/${route.id}/lines`;
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
  if (folder === 'fits' && id && rest.length === 1 && rest[0] === 'crew') return { page: 'crew-sheet', id };
  if (rest.length > 0) return { page: 'home' };
  if (folder === 'fits') {
    if (id === 'new') return { page: 'new-fit' };
    return id ? { page: 'fit', id } : { page: 'fits' };
  }
  if ((folder === 'archive' || folder === 'help') && !id) return { page: folder };
  if (folder === 'athletes') return id ? { page: 'athlete', id } : { page: 'athletes' };
  if (folder === 'boats') return id ? { page: 'boat', id } : { page: 'boats' };
  return { page: 'home' };
}

export function go(route: Route): void {
  window.location.hash = hrefOf(route);
}

/** Goes on without leaving the present place in the way of *back*. */
export function goInstead(route: Route): void {
  window.location.replace(hrefOf(route));
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
