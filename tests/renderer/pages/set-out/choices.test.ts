import { describe, expect, it } from 'vitest';
import { TEMPLATE_IDS } from '../../../../core/setout/template-ids.ts';
import { firstChoices, takenSeats } from '../../../../renderer/pages/set-out/choices.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../../../core/example/example-fit.ts';

describe('first choices of a boatbuilder', () => {
  it('are millimetres on A4 for those who read centimetres, inches on Letter for those who read inches', () => {
    expect(firstChoices(0, 'cm')).toMatchObject({ paper: 'A4', options: { units: 'mm' } });
    expect(firstChoices(0, 'mm')).toMatchObject({ paper: 'A4', options: { units: 'mm' } });
    expect(firstChoices(1, 'in')).toMatchObject({ seat: 1, paper: 'Letter', options: { units: 'in' } });
  });

  it('are every template, and nothing of how the seat is made: that is kept with athlete, pad and boat', () => {
    expect(firstChoices(0, 'cm').templates).toEqual([...TEMPLATE_IDS]);
    expect(firstChoices(0, 'cm').options).toEqual({ units: 'mm' });
  });
});

describe('seats to choose from', () => {
  it('are those that somebody kneels in, by name', () => {
    const fit = exampleFit([
      exampleSeat({ athlete: null }),
      exampleSeat({ athlete: exampleAthlete({ name: 'Ylva' }) }),
    ]);
    expect(takenSeats(fit)).toEqual([{ index: 1, name: 'Ylva' }]);
    expect(takenSeats(exampleFit([exampleSeat({ athlete: null })]))).toEqual([]);
  });
});
