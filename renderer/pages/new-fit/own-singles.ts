import type { KneltFit } from '../../../app/contract/records.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { call } from '../../client/client.ts';
import type { Starter } from './make-fit.ts';

/** The fit in a single among those in which an athlete kneels, last changed first; null where there is none. Archived ones do not count. */
export function ownSingle(fits: readonly KneltFit[]): Fit | null {
  return fits.find(({ fit, archived }) => !archived && fit.seats.length === 1)?.fit ?? null;
}

/** The starters of a crew, each with the athlete's own single where the store has one. */
export function withSingles(starters: readonly Starter[]): Promise<Starter[]> {
  return Promise.all(
    starters.map(async (starter) => {
      const id = starter.athlete?.id;
      if (!id) return starter;
      const fits = await call('athletes.fits', { id });
      return { ...starter, single: fits.ok ? ownSingle(fits.value) : null };
    }),
  );
}
