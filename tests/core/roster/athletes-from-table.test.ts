import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Athlete, athleteSchema, TAPE_MEASURES } from '../../../core/document/athlete-schema.ts';
import { type AthletesTable, athletesFromTable } from '../../../core/roster/athletes-from-table.ts';
import { athletesToTable } from '../../../core/roster/athletes-to-table.ts';
import { cases } from '../../cases.ts';
import { exampleAthlete } from '../example/example-fit.ts';

const SEED = 20260313;
const ANNA = '11111111-1111-4111-8111-111111111111';
const BORIS = '22222222-2222-4222-8222-222222222222';
const known = (...athletes: Athlete[]) => ({
  athletes: athletes.map((athlete) => ({ ...athlete, id: athlete.id ?? crypto.randomUUID() })),
  today: '2026-05-01',
});
const anna = (more: Record<string, unknown> = {}) =>
  exampleAthlete({
    id: ANNA,
    name: 'Anna Invented',
    sex: 'female',
    bornOn: '2012-11-05',
    statureM: 1.52,
    massKg: 44,
    measuredOn: '2026-01-10',
    tape: { footLength: { valueM: 0.23, sdM: 0.002, takenOn: '2026-01-10' } },
    limits: [{ joint: 'frontKneeFlexion', maxDeg: 100, reason: 'old injury' }],
    consent: { bodyData: { by: 'a guardian', on: '2026-01-09' } },
    ...more,
  });

const rowsOf = (table: AthletesTable) => {
  if (table.kind !== 'read') throw new Error('the table has no names');
  return table.rows;
};
const one = (heading: string[], row: string[], ...athletes: Athlete[]) =>
  rowsOf(athletesFromTable([heading, row], known(...athletes)))[0]!;

describe('a row of somebody new', () => {
  const heading = ['Name', 'Side', 'Stature [cm]', 'Mass [kg]', 'Foot length [cm]'];

  it('makes an athlete, measured today where no date is given', () => {
    const row = one(heading, ['New Person', 'left', '170', '60', '25']);
    expect(row.outcome).toMatchObject({
      kind: 'new',
      athlete: {
        name: 'New Person',
        sex: 'unspecified',
        statureM: 1.7,
        massKg: 60,
        measuredOn: '2026-05-01',
        tape: { footLength: { valueM: 0.25, takenOn: '2026-05-01' } },
      },
    });
  });

  it('needs name, side, stature and mass, and says where each is missing', () => {
    const row = one(['Name', 'Mass', 'Stature'], ['New Person', '', '1720']);
    expect(row.outcome).toBeNull();
    expect(row.bad.map(({ column, index, problem }) => [column.name, index, problem.code])).toEqual([
      ['Stature', 2, 'outside'],
      ['Side', null, 'needed'],
      ['Mass', 1, 'needed'],
    ]);
    expect(row.bad.every((cell) => cell.row === 2)).toBe(true);
  });
});

describe('a row of somebody known', () => {
  it('is found by name whatever its case and spaces, and changes only what it says', () => {
    const row = one(['name', 'mass', 'stature'], ['anna  INVENTED', '46', ''], anna());
    expect(row.outcome).toMatchObject({ kind: 'changed', changed: [{ name: 'Mass' }] });
    expect(row.outcome?.athlete).toEqual({
      ...anna(),
      massKg: 46,
      measuredOn: '2026-05-01',
    });
  });

  it('is found by identifier under a new name', () => {
    const row = one(['Identifier', 'Name'], [ANNA.toUpperCase(), 'Anna Renamed'], anna());
    expect(row.outcome).toMatchObject({ kind: 'changed', changed: [{ name: 'Name' }] });
    expect(row.outcome?.athlete).toEqual(anna({ name: 'Anna Renamed' }));
  });

  it('keeps a tape measure’s spread and day while the value is the same, and lets them go with a new one', () => {
    const same = one(['Name', 'Foot length [mm]'], ['Anna Invented', '230'], anna());
    expect(same.outcome).toMatchObject({ kind: 'same', athlete: anna() });
    const longer = one(['Name', 'Foot length', 'Measured on'], ['Anna Invented', '24', '2026-04-20'], anna());
    expect(longer.outcome?.athlete.tape).toEqual({ footLength: { valueM: 0.24, takenOn: '2026-04-20' } });
    expect(longer.outcome?.athlete.measuredOn).toBe('2026-04-20');
  });

  it('is bad when the identifier is not known, or when two have the name', () => {
    const stranger = one(['Identifier', 'Name', 'Side'], [BORIS, 'Anna Invented', 'left'], anna());
    expect(stranger.bad).toMatchObject([{ index: 0, problem: { code: 'unknown-identifier' } }]);
    const twins = one(['Name', 'Mass'], ['Anna Invented', '50'], anna(), anna({ id: BORIS }));
    expect(twins.bad).toMatchObject([{ index: 0, problem: { code: 'several-of-this-name' } }]);
  });
});

describe('a table', () => {
  it('without names is not read', () => {
    expect(athletesFromTable([['Side', 'Mass']], known())).toMatchObject({ kind: 'no-names' });
    expect(athletesFromTable([], known())).toMatchObject({ kind: 'no-names', headings: [] });
  });

  it('knows no day that has not come yet', () => {
    const row = one(
      ['Name', 'Born on', 'Measured on'],
      ['Anna Invented', '2030-01-01', '2026-05-01'],
      anna(),
    );
    expect(row.bad.map(({ column, problem }) => [column.name, problem.code])).toEqual([
      ['Born on', 'date-ahead'],
    ]);
  });

  it('passes blank rows over, numbers rows as a table program does, and leaves unknown columns out', () => {
    const table = athletesFromTable(
      [['Name', 'Shoe'], ['', ' '], ['Anna Invented', '38'], [], ['Nobody Known']],
      known(anna()),
    );
    expect(table).toMatchObject({ kind: 'read', leftOut: [{ text: 'Shoe' }] });
    expect(rowsOf(table).map(({ row, outcome }) => [row, outcome?.kind ?? 'bad'])).toEqual([
      [3, 'same'],
      [5, 'bad'],
    ]);
  });

  it('names the row where the same athlete stood before', () => {
    const rows = rowsOf(
      athletesFromTable(
        [
          ['Name', 'Mass'],
          ['Anna Invented', '45'],
          ['anna invented', '46'],
        ],
        known(anna()),
      ),
    );
    expect(rows[1]!.bad).toMatchObject([{ problem: { code: 'same-as-row', row: 2 } }]);
    expect(rows[0]!.outcome?.kind).toBe('changed');
  });

  it(`brings any athletes back as they were written (seed ${SEED})`, () => {
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    const day = fc
      .date({ min: new Date('1950-01-01'), max: new Date('2026-01-01'), noInvalidDate: true })
      .map((date) => date.toISOString().slice(0, 10));
    const reading = fc.record(
      { valueM: number(0.02, 3), sdM: number(0.0005, 0.1), takenOn: day },
      { requiredKeys: ['valueM'] },
    );
    const athlete = fc.record(
      {
        name: fc
          .string({ minLength: 1, maxLength: 40, unit: 'grapheme' })
          .filter((name) => name.trim() !== ''),
        sex: fc.constantFrom('female', 'male', 'unspecified'),
        side: fc.constantFrom('left', 'right'),
        bornOn: day,
        statureM: number(0.8, 2.6),
        massKg: number(15, 250),
        measuredOn: day,
        tape: fc.dictionary(fc.constantFrom(...TAPE_MEASURES), reading),
        id: fc.uuid(),
      },
      { requiredKeys: ['name', 'sex', 'side', 'statureM', 'massKg', 'tape', 'id'] },
    );
    fc.assert(
      fc.property(
        fc.uniqueArray(athlete, { minLength: 1, maxLength: 5, selector: ({ id }) => id }),
        (made) => {
          const athletes = made.map((one) =>
            athleteSchema.parse({ ...one, name: one.name.replace(/^'+/, 'q') }),
          );
          const rows = rowsOf(athletesFromTable(athletesToTable(athletes), known(...athletes)));
          expect(rows.map(({ outcome }) => outcome)).toEqual(
            athletes.map((athlete) => ({ kind: 'same', athlete })),
          );
        },
      ),
      { seed: SEED, numRuns: cases(60, 400) },
    );
  });
});
