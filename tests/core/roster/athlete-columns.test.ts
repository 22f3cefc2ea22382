import { describe, expect, it } from 'vitest';
import { TAPE_MEASURES } from '../../../core/document/athlete-schema.ts';
import { ATHLETE_COLUMNS, headingOf, readHeadings } from '../../../core/roster/athlete-columns.ts';

describe('the columns of a table of athletes', () => {
  it('have names of their own, whatever case and marks they are written in', () => {
    const plain = ATHLETE_COLUMNS.map(({ name }) => name.toLowerCase().replace(/[^a-z]/g, ''));
    expect(new Set(plain).size).toBe(plain.length);
    expect(ATHLETE_COLUMNS).toHaveLength(8 + 3 * TAPE_MEASURES.length);
  });

  it('read back from their own headings', () => {
    const read = readHeadings(ATHLETE_COLUMNS.map((column) => headingOf(column)));
    expect(read.map((heading) => heading?.ok && heading.column)).toEqual(ATHLETE_COLUMNS);
  });
});

describe('a heading', () => {
  it.each([
    ['Stature [m]', 'm'],
    ['STATURE (in)', 'in'],
    ['  stature [ mm ] ', 'mm'],
    ['stature', 'cm'],
    ['Mass [lb]', 'lb'],
    ['Knee-height SITTING (mm)', 'mm'],
  ])('%s says its unit: %s', (text, unit) => {
    expect(readHeadings([text])[0]).toMatchObject({ ok: true, column: { unit } });
  });

  it('that is not known, of no unit here, or there twice is told', () => {
    const problems = readHeadings(['Shoe size', 'Stature [kg]', 'Name', 'name', '', 'Side [cm]']);
    expect(problems).toMatchObject([
      { ok: false, text: 'Shoe size', problem: 'unknown' },
      { ok: false, text: 'Stature [kg]', problem: 'unknown-unit' },
      { ok: true },
      { ok: false, text: 'name', problem: 'twice' },
      null,
      { ok: true, column: { unit: null } },
    ]);
  });

  it('named like a property that every object has is not known either', () => {
    expect(readHeadings(['Stature [constructor]', '__proto__'])).toMatchObject([
      { ok: false, problem: 'unknown-unit' },
      { ok: false, problem: 'unknown' },
    ]);
  });
});
