import { describe, expect, it } from 'vitest';
import { dispatch } from '../../../app/services/dispatch.ts';
import { athletes, boats, paddles } from '../../../app/store/roster.ts';
import { inventedAthlete, inventedBoat, inventedPaddle } from '../invented.ts';
import { openedProgram } from '../opened-program.ts';
import { temporaryFolder } from '../temporary.ts';

const { program } = openedProgram(temporaryFolder());
const { store } = program;

async function save(name: string, input: object): Promise<void> {
  const result = await dispatch(program, name, input);
  if (!result.ok) throw new Error(result.error.message);
}

const tape = (valueM: number) => ({ valueM, sdM: 0.005 });

describe('a record saved from a page that was opened before somebody else changed it', () => {
  it('has the changes of both, field by field', async () => {
    const { athlete: opened } = athletes.save(
      store,
      inventedAthlete('Ada', { tape: { footLength: tape(0.24), sittingHeight: tape(0.88) } }),
    );
    const id = opened.id!;
    const { sittingHeight } = opened.tape;
    athletes.save(store, {
      ...opened,
      massKg: 64,
      tape: { footLength: tape(0.25), sittingHeight: sittingHeight!, biacromialBreadth: tape(0.38) },
    });
    // The page knows nothing of it: it has another name, and no sitting height any more.
    const { sittingHeight: _, ...left } = opened.tape;
    await save('athletes.save', { athlete: { ...opened, name: 'Ada B.', tape: left }, opened });
    const { athlete } = athletes.get(store, id)!;
    expect(athlete).toMatchObject({ name: 'Ada B.', massKg: 64 });
    expect(athlete.tape).toEqual({ footLength: tape(0.25), biacromialBreadth: tape(0.38) });
  });

  it('has the page’s own value where both changed the same field', async () => {
    const { paddle: opened } = paddles.save(store, inventedPaddle());
    paddles.save(store, { ...opened, lengthM: 1.66, note: 'cut' });
    await save('paddles.save', { paddle: { ...opened, lengthM: 1.64 }, opened });
    expect(paddles.get(store, opened.id!)!.paddle).toMatchObject({ lengthM: 1.64, note: 'cut' });
  });

  it('is a sound boat, with the mass of one and the skin of the other', async () => {
    const { boat: opened } = boats.save(store, inventedBoat());
    boats.save(store, { ...opened, name: 'Heron', massKg: 16 });
    const before = boats.get(store, opened.id!)!.boat;
    await save('boats.save', { boat: { ...opened, skinM: 0.006 }, opened });
    expect(boats.get(store, opened.id!)!.boat).toEqual({ ...before, skinM: 0.006 });
  });

  it('is what the page has where nobody else changed anything', async () => {
    const { boat: opened } = boats.save(store, inventedBoat('Kept'));
    const made = { ...opened, massKg: 13.5, seats: [{ ...opened.seats[0]!, stationM: 0.1 }] };
    await save('boats.save', { boat: made, opened });
    expect(boats.get(store, opened.id!)!.boat).toEqual(made);
  });
});
