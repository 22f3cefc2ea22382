import { describe, expect, it } from 'vitest';
import { formatFor } from '../../../../app/language/format.ts';
import { ATHLETE_COLUMNS } from '../../../../core/roster/athlete-columns.ts';
import type { CellProblem } from '../../../../core/roster/read-athlete-cell.ts';
import { cellProblemText } from '../../../../renderer/pages/athletes-table/cell-problem-text.ts';

const format = formatFor({ length: 'cm', mass: 'kg', decimal: 'point' }, 'en');

/** One of each: the type makes a missing code an error here. */
const PROBLEMS: { readonly [C in CellProblem['code']]: Extract<CellProblem, { code: C }> } = {
  needed: { code: 'needed' },
  measure: { code: 'measure', problem: { code: 'not-a-number', text: 'tall' } },
  outside: { code: 'outside', value: 0.172, min: 0.8, max: 2.6, kind: 'length' },
  choice: { code: 'choice', allowed: ['left', 'right'] },
  date: { code: 'date' },
  'date-unclear': { code: 'date-unclear' },
  'date-ahead': { code: 'date-ahead' },
  'too-long': { code: 'too-long', most: 120 },
  'unknown-identifier': { code: 'unknown-identifier' },
  'several-of-this-name': { code: 'several-of-this-name' },
  'same-as-row': { code: 'same-as-row', row: 3 },
};

const textOf = (problem: CellProblem, of = 'Stature') => {
  const column = ATHLETE_COLUMNS.find(({ name }) => name === of)!;
  return cellProblemText({ row: 2, index: 0, column, text: 'tall', problem }, format).replaceAll(
    '\u{202f}',
    ' ',
  );
};

describe('what is said of a bad cell', () => {
  it.each(Object.entries(PROBLEMS))('%s is a whole sentence', (_, problem) => {
    expect(textOf(problem)).toMatch(/^[\p{Lu}“\d].*\.$/u);
    expect(textOf(problem)).not.toMatch(/[{}]|undefined/);
  });

  it('says what is allowed', () => {
    expect(textOf(PROBLEMS.outside)).toBe('17.2 cm is not between 80.0 cm and 260.0 cm.');
    expect(textOf(PROBLEMS.choice)).toContain('left, right');
    expect(textOf(PROBLEMS.needed, 'Side')).toContain('left, right');
    expect(textOf({ code: 'outside', value: 640, min: 15, max: 250, kind: 'mass' })).toContain('250.0 kg');
  });
});
