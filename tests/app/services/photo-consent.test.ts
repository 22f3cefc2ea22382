import { describe, expect, it } from 'vitest';
import { keepPhoto } from '../../../app/services/photos.ts';
import type { Program } from '../../../app/services/program.ts';
import { athletes, boats } from '../../../app/store/roster.ts';
import { inventedAthlete, inventedBoat, inventedPicture } from '../invented.ts';
import { temporaryStore } from '../temporary.ts';

/** Keeps a photograph of somebody born on a day, with or without a guardian's consent. */
function kept(bornOn: string, consented: boolean) {
  const store = temporaryStore();
  const { id: boatId } = boats.save(store, inventedBoat());
  const consent = consented ? { consent: { photographs: { by: 'A. Guardian', on: '2026-01-02' } } } : {};
  const { id: athleteId } = athletes.save(store, inventedAthlete('Junior', { bornOn, ...consent }));
  const data = inventedPicture().toString('base64');
  return keepPhoto({ store } as Program, { boatId, athleteId, caption: '', data });
}

describe('a photograph of an athlete', () => {
  it('is refused where a guardian has not consented to it, and kept where one has', () => {
    const minor = `${new Date().getUTCFullYear() - 12}-05-05`;
    const refused = kept(minor, false);
    expect(refused.ok).toBe(false);
    if (!refused.ok) expect(refused.error.message).toMatch(/guardian/);
    expect(kept(minor, true).ok).toBe(true);
    expect(kept('1990-05-05', false).ok).toBe(true);
  });
});
