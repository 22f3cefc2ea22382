import { LIVE_REGION_ID } from './announce.ts';

/** The one live region of the page. It stays mounted, so that screen readers know it before it first speaks. */
export function LiveRegion() {
  return <output id={LIVE_REGION_ID} className="only-spoken" aria-live="polite" />;
}
