import { prefetchCall } from './client/prefetch.ts';
import { routeOf } from './route/addresses.ts';

/**
 * The page's first script, small: it asks for all that the first page needs at once. Otherwise each part would be asked for only
 * when the one before it had come and run.
 */
prefetchCall('display.read', {});
void import('../app/language/catalogues/en.ts');
const route = routeOf(window.location.hash);
if (route.page === 'fit') {
  prefetchCall('fits.open', { id: route.id });
  void import('./pages/bench/bench-page.tsx');
}
if (route.page === 'home') void import('./pages/home/home-page.tsx');
void import('./main.tsx');
