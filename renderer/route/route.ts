import { useSyncExternalStore } from 'react';
import { hrefOf, type Route, routeOf } from './addresses.ts';

export { hrefOf, type Route, routeOf } from './addresses.ts';

export function go(route: Route): void {
  window.location.hash = hrefOf(route);
}

/** Replaces the present place in the history, so that *back* skips it. */
export function replaceRoute(route: Route): void {
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
