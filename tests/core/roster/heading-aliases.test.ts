import { describe, expect, it } from 'vitest';
import { LANGUAGE_TAGS } from '../../../app/contract/display.ts';
import { loadMessages } from '../../../app/language/messages.ts';
import { translator } from '../../../app/language/translator.ts';
import { type Athlete, athleteSchema, TAPE_MEASURES } from '../../../core/document/athlete-schema.ts';
import { ATHLETE_COLUMNS, readHeadings } from '../../../core/roster/athlete-columns.ts';
import { athletesFromTable } from '../../../core/roster/athletes-from-table.ts';
import { athletesToTable } from '../../../core/roster/athletes-to-table.ts';
import { HEADING_ALIASES, TAPE_ALIASES } from '../../../core/roster/heading-aliases.ts';
import { exampleAthlete } from '../example/example-fit.ts';

const ID = '0d1f3a4e-2b61-4c0f-9a52-6f1f2c3d4e5f';
const TODAY = '2026-05-02';
const fold = (text: string) =>
  text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '');

describe('headings as clubs write them', () => {
  it.each([
    [
      'English',
      ['Athlete', 'Side', 'Height [cm]', 'Weight', 'Born'],
      ['Ilse Ravn', 'left', '171', '63.5', '2009-03-04'],
    ],
    [
      'German',
      ['Sportlerin', 'Seite', 'Größe', 'Gewicht', 'Geburtsdatum'],
      ['Ilse Ravn', 'links', '171', '63,5', '4.3.2009'],
    ],
    [
      'Hungarian',
      ['Név', 'Oldal', 'Magasság', 'Súly', 'Született'],
      ['Ilse Ravn', 'bal', '171', '63,5', '2009-03-04'],
    ],
    [
      'Spanish',
      ['Nombre', 'Lado', 'Estatura', 'Peso', 'Fecha de nacimiento'],
      ['Ilse Ravn', 'izquierda', '171', '63,5', '2009-03-04'],
    ],
    [
      'Polish',
      ['Imię i nazwisko', 'Strona', 'Wzrost', 'Waga', 'Data urodzenia'],
      ['Ilse Ravn', 'lewa', '171', '63,5', '2009-03-04'],
    ],
    ['Chinese', ['姓名', '侧', '身高', '体重', '出生日期'], ['Ilse Ravn', '左', '171', '63.5', '2009-03-04']],
  ])('are understood in %s', (_, headings, row) => {
    const table = athletesFromTable([headings, row], { athletes: [], today: TODAY });
    if (table.kind !== 'read') throw new Error(table.kind);
    expect(table.leftOut).toEqual([]);
    expect(table.rows[0]!.bad).toEqual([]);
    expect(table.rows[0]!.outcome!.athlete).toMatchObject({
      name: 'Ilse Ravn',
      side: 'left',
      statureM: 1.71,
      massKg: 63.5,
      bornOn: '2009-03-04',
    });
  });

  it('name one column each: no alias stands for two', () => {
    const names = [
      ...ATHLETE_COLUMNS.map(({ name }) => name),
      ...Object.values(HEADING_ALIASES).flat(),
      ...Object.values(TAPE_ALIASES).flat(),
    ].map(fold);
    const owners = new Map<string, Set<string>>();
    for (const name of names) owners.set(name, owners.get(name) ?? new Set());
    for (const name of names) {
      const [read] = readHeadings([name]);
      if (read?.ok) owners.get(name)!.add(read.column.name);
    }
    for (const [name, owner] of owners) expect(owner.size, name).toBe(1);
    for (const [field, aliases] of Object.entries(HEADING_ALIASES)) {
      for (const alias of aliases) {
        const [read] = readHeadings([alias]);
        expect(read?.ok && read.column.field.of, alias).toBe(field);
      }
    }
  });

  it('take two columns of one meaning as one that is there twice', () => {
    expect(readHeadings(['Stature', 'Height'])[1]).toMatchObject({ ok: false, problem: 'twice' });
  });
});

describe('a table exported in any language', () => {
  const athlete: Athlete = athleteSchema.parse(
    exampleAthlete({
      id: ID,
      bornOn: '2008-05-06',
      measuredOn: '2026-04-01',
      tape: Object.fromEntries(
        TAPE_MEASURES.map((measure) => [measure, { valueM: 0.5, sdM: 0.004, takenOn: '2026-04-01' }]),
      ),
    }),
  );

  it.each(LANGUAGE_TAGS)('%s is read back column by column, sides and sexes too', async (language) => {
    const messages = await loadMessages(language);
    const [headings, row] = athletesToTable([athlete], translator(language, messages));
    expect(readHeadings(headings!).filter((heading) => !heading?.ok)).toEqual([]);
    expect(headings).toHaveLength(ATHLETE_COLUMNS.length);
    for (const sex of ['female', 'male', 'unspecified'] as const) {
      const [heads, cells] = athletesToTable([{ ...athlete, sex }], translator(language, messages));
      const table = athletesFromTable([heads!, cells!], { athletes: [{ ...athlete, id: ID }], today: TODAY });
      if (table.kind !== 'read') throw new Error(table.kind);
      expect(table.rows[0]!.bad).toEqual([]);
      expect(table.rows[0]!.outcome!.athlete).toMatchObject({ side: athlete.side, sex, tape: athlete.tape });
    }
    expect(row).toHaveLength(headings!.length);
  });
});
