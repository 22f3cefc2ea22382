import { describe, expect, it } from 'vitest';
import { athletesToTable } from '../../../core/roster/athletes-to-table.ts';
import { exampleAthlete } from '../example/example-fit.ts';

describe('athletes written as a table', () => {
  it('have the headings that a new row needs, even when there is nobody', () => {
    expect(athletesToTable([])).toEqual([
      ['Name', 'Side', 'Sex', 'Born on', 'Stature [cm]', 'Mass [kg]', 'Measured on'],
    ]);
  });

  it('are in centimetres, kilograms and millimetres of spread, with columns only for what somebody has', () => {
    const tape = { footLength: { valueM: 0.2515, sdM: 0.0025 } };
    const [heading, first, second] = athletesToTable([
      exampleAthlete({ name: 'One', bornOn: '2010-02-03', tape }),
      exampleAthlete({ name: 'Two', statureM: 1.725 }),
    ]);
    expect(heading!.slice(7)).toEqual(['Foot length [cm]', 'Foot length: spread [mm]']);
    expect(first).toEqual(['One', 'left', 'male', '2010-02-03', '180', '80', '', '25.15', '2.5']);
    expect(second).toEqual(['Two', 'left', 'male', '', '172.5', '80', '', '', '']);
  });
});
