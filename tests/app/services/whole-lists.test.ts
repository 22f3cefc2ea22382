import { expect, it } from 'vitest';
import { dispatch } from '../../../app/services/dispatch.ts';
import { createFit, setFitArchived } from '../../../app/store/fits.ts';
import { athletes, boats } from '../../../app/store/roster.ts';
import { atomically } from '../../../app/store/store.ts';
import { inventedAthlete, inventedBoat, inventedFit } from '../invented.ts';
import { openedProgram } from '../opened-program.ts';
import { temporaryFolder } from '../temporary.ts';

const ATHLETES = 1010;
const FITS = 110;

it('leaves nobody out of a list, and nothing out of the fits of one athlete or boat, however many there are', async () => {
  const { program, close } = openedProgram(temporaryFolder());
  const { store } = program;
  const { athlete, boatId, open } = atomically(store, () => {
    for (let i = 1; i < ATHLETES; i++) athletes.save(store, inventedAthlete(`Paddler ${i}`));
    const one = athletes.save(store, inventedAthlete('Zoltán Zempléni')).athlete;
    const boat = boats.save(store, inventedBoat());
    const fit = { ...inventedFit({ athlete: one }), boat: { ...boat.boat, id: boat.id } };
    // The only one in use was changed before all the archived ones.
    const first = createFit(store, fit).id;
    for (let i = 1; i < FITS; i++) setFitArchived(store, createFit(store, fit).id, true);
    return { athlete: one, boatId: boat.id, open: first };
  });
  const call = async (name: string, input: object) => {
    const result = await dispatch(program, name, input);
    return (result.ok ? result.value : []) as { id: string; archived: boolean }[];
  };
  expect(await call('athletes.list', {})).toHaveLength(ATHLETES);
  expect((await call('athletes.list', {})).at(-1)?.id).toBe(athlete.id);
  expect(await call('athletes.list', { limit: 5, offset: ATHLETES - 3 })).toHaveLength(3);
  const ofAthlete = await call('athletes.fits', { id: athlete.id });
  expect(ofAthlete.filter(({ archived }) => !archived).map(({ id }) => id)).toEqual([open]);
  for (const fits of [ofAthlete, await call('boats.fits', { id: boatId })]) expect(fits).toHaveLength(FITS);
  close();
});
