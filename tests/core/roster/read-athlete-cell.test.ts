import { describe, expect, it } from 'vitest';
import { ATHLETE_COLUMNS, type AthleteColumn } from '../../../core/roster/athlete-columns.ts';
import { readAthleteCell } from '../../../core/roster/read-athlete-cell.ts';

const column = (name: string): AthleteColumn => ATHLETE_COLUMNS.find((one) => one.name === name)!;
const read = (name: string, text: string) => readAthleteCell(text, column(name));

describe('a cell', () => {
  it.each([
    ['Stature', '172', 1.72],
    ['Stature', '172,5', 1.725],
    ['Stature', '1.72 m', 1.72],
    ['Stature', '5 ft 8 in', 1.7272],
    ['Mass', '61.5', 61.5],
    ['Mass', '135 lb', 61.234_97],
    ['Foot length', '25.1', 0.251],
    ['Foot length: spread', '2.5', 0.0025],
    ['Side', 'L', 'left'],
    ['Side', 'Right', 'right'],
    ['Sex', 'f', 'female'],
    ['Sex', 'unsaid', 'unspecified'],
    ['Born on', '2012-11-05', '2012-11-05'],
    ['Born on', '5.11.2012', '2012-11-05'],
    ['Born on', '25/11/2012', '2012-11-25'],
    ['Born on', '11/25/2012', '2012-11-25'],
    ['Born on', '5/5/2012', '2012-05-05'],
    ['Name', '  Νεφέλη Ρεματάκη ', 'Νεφέλη Ρεματάκη'],
    ['Name', "'=Anna", '=Anna'],
    ['Name', "'t Hooft", "'t Hooft"],
    ['Mass', '   ', null],
  ])('%s “%s” reads as %j', (name, text, value) => {
    const cell = read(name, text);
    expect(cell.ok && typeof value === 'number' ? Number(cell.value).toFixed(5) : cell).toEqual(
      typeof value === 'number' ? value.toFixed(5) : { ok: true, value },
    );
  });

  it.each([
    ['Stature', 'tall', { code: 'measure', problem: { code: 'not-a-number', text: 'tall' } }],
    ['Stature', '172 kg', { code: 'measure', problem: { code: 'unknown-unit', text: 'kg' } }],
    ['Stature', '1,2,3', { code: 'measure', problem: { code: 'unclear-separator' } }],
    ['Stature', '17.2', { code: 'outside', min: 0.8, max: 2.6, kind: 'length' }],
    ['Mass', '640', { code: 'outside', value: 640, min: 15, max: 250, kind: 'mass' }],
    ['Side', 'both', { code: 'choice', allowed: ['left', 'right'] }],
    ['Sex', 'constructor', { code: 'choice', allowed: ['female', 'male', 'unspecified'] }],
    ['Born on', '2012-02-30', { code: 'date' }],
    ['Born on', 'last May', { code: 'date' }],
    ['Born on', '31.4.2012', { code: 'date' }],
    ['Born on', '3/4/2012', { code: 'date-unclear' }],
    ['Name', 'x'.repeat(121), { code: 'too-long', most: 120 }],
  ])('%s “%s” is refused with its reason', (name, text, problem) => {
    expect(read(name, text)).toMatchObject({ ok: false, problem });
  });

  it('is in its heading’s unit when it names none', () => {
    expect(readAthleteCell('68', { ...column('Stature'), unit: 'in' })).toEqual({ ok: true, value: 1.7272 });
  });
});
