import type { Format } from '../../../app/language/format.ts';
import { say, words } from '../../language/messages.ts';
import { fieldWord } from './field-names.ts';

/** Ends of field names that tell the unit of a number. */
const UNITS: readonly (readonly [RegExp, (value: number, format: Format) => string])[] = [
  [/M$/, (value, format) => format.length(value, { exact: true })],
  [/Kg$/, (value, format) => format.mass(value)],
  [/Deg$/, (value, format) => format.degrees(value)],
];
/** A value longer than this is cut: a whole hull, say. */
const MOST_SIGNS = 120;
const DAY = /^\d{4}-\d\d-\d\d$/;

/** A field in words: `seats/0/kneePad/aftM` as `Seat 1 › Knee pad › Aft of the mark`. */
export function fieldName(path: string): string {
  return path
    .split('/')
    .map((step) => step.replaceAll('~1', '/').replaceAll('~0', '~'))
    .filter((step) => step !== '@measured' && step !== 'seats')
    .map(stepName)
    .reduce((outer, inner) => say('conflicts.path', { outer, inner }));
}

function stepName(step: string): string {
  const name = step.replace(/^@/, '');
  if (name === 'archived') return say('boat.fitted.aside');
  if (name === 'joined') return say('conflicts.field.joined');
  if (DAY.test(step)) return say('conflicts.field.measured', { day: step });
  if (/^[0-3]$/.test(step)) return say('new-fit.seat', { number: Number(step) + 1 });
  return fieldWord(name) ?? name;
}

/** A field's value (JSON text, or null where it was removed) as it is read. */
export function fieldValueText(path: string, value: string | null, format: Format): string {
  if (value === null) return say('conflicts.removed');
  const text = valueText(path.split('/').at(-1) ?? '', JSON.parse(value), format);
  const short = text.length > MOST_SIGNS ? `${text.slice(0, MOST_SIGNS)} …` : text;
  return short || say('input.empty');
}

function valueText(name: string, value: unknown, format: Format): string {
  if (typeof value === 'number') {
    const unit = UNITS.find(([pattern]) => pattern.test(name));
    return unit
      ? unit[1](value, format)
      : format.number(value, { decimals: Number.isInteger(value) ? 0 : 2 });
  }
  if (Array.isArray(value)) return words().row(value.map((one) => valueText(name, one, format)));
  if (typeof value === 'object' && value !== null) {
    return words().row(
      Object.entries(value)
        .filter(([key]) => key !== 'id')
        .map(([key, held]) =>
          say('effect.written', { name: stepName(key), change: valueText(key, held, format) }),
        ),
    );
  }
  return value === null ? '–' : (fieldWord(String(value)) ?? String(value));
}
