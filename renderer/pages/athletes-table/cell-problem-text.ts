import type { Format } from '../../../app/language/format.ts';
import type { CellProblem } from '../../../core/roster/read-athlete-cell.ts';
import type { BadCell } from '../../../core/roster/row-values.ts';
import { say, sayMessage, words } from '../../language/messages.ts';
import { problemText } from '../../ui/fields/measure-kinds.ts';

/** What is wrong with a cell and what is allowed, in words. */
export function cellProblemText({ column, text, problem }: BadCell, format: Format): string {
  switch (problem.code) {
    case 'needed':
      return column.field.of === 'side'
        ? say('table.bad.needed.choice', { allowed: allowedText(['left', 'right']) })
        : say('table.bad.needed');
    case 'measure':
      return problemText(problem.problem);
    case 'outside':
      return outsideText(problem, format);
    case 'choice':
      return say('table.bad.choice', { text, allowed: allowedText(problem.allowed) });
    case 'date':
    case 'date-unclear':
    case 'date-ahead':
      return say(`table.bad.${problem.code}`, { text });
    case 'too-long':
      return say('table.bad.too-long', { most: problem.most });
    case 'same-as-row':
      return say('table.bad.same-as-row', { row: problem.row });
    default:
      return say(`table.bad.${problem.code}`);
  }
}

/** Choices of a column in the words that a cell may have. */
function allowedText(choices: readonly string[]): string {
  const name = (choice: string) =>
    [`side.${choice}`, `athlete.sex.${choice}`].find((key) => words().has(key)) ?? choice;
  return words().row(choices.map((choice) => sayMessage({ key: name(choice) })));
}

function outsideText({ value, min, max, kind }: Extract<CellProblem, { code: 'outside' }>, format: Format) {
  const write = kind === 'length' ? format.length : format.mass;
  return say('table.bad.outside', { value: write(value), min: write(min), max: write(max) });
}
