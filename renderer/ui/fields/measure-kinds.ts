import type { Format } from '../../../app/language/format.ts';
import { parseAngle } from '../../../core/units/angle-text.ts';
import { parseLength } from '../../../core/units/length-text.ts';
import { parseMass } from '../../../core/units/mass-text.ts';
import { type MeasureProblem, type ParsedMeasure, parseMeasure } from '../../../core/units/measure-text.ts';
import { say } from '../../language/messages.ts';

/** What a field measures. Values are in the document's unit: metres, kilograms, degrees, or a plain number. */
export type MeasureKind = 'length' | 'mass' | 'angle' | 'number';

interface KindRule {
  readonly parse: (text: string, format: Format) => ParsedMeasure;
  readonly show: (value: number, format: Format) => string;
  /** The unit of a bare number, shown in an empty entry. */
  readonly unit: (format: Format) => string;
  /** One press of an arrow key; with Shift ten times, with Ctrl a tenth. The same everywhere. */
  readonly step: number;
}

export const MEASURE_KINDS: Readonly<Record<MeasureKind, KindRule>> = {
  length: {
    parse: (text, format) => parseLength(text, { defaultUnit: format.lengthUnit }),
    show: (value, format) => format.length(value, { exact: true }),
    unit: (format) => format.lengthUnit,
    step: 0.001,
  },
  mass: {
    parse: (text, format) => parseMass(text, { defaultUnit: format.massUnit }),
    show: (value, format) => format.mass(value),
    unit: (format) => format.massUnit,
    step: 1,
  },
  angle: {
    parse: parseAngle,
    show: (value, format) => format.degrees(value, { decimals: Number.isInteger(value) ? 0 : 1 }),
    unit: () => '°',
    step: 1,
  },
  number: {
    parse: (text) => parseMeasure(text, { units: [], bare: 1 }),
    show: (value, format) => format.number(value, { decimals: Number.isInteger(value) ? 0 : 1 }),
    unit: () => '',
    step: 1,
  },
};

/** Step that a key press asks for, in the kind's own unit, signed; 0 for other keys. */
export function stepOfKey(
  kind: MeasureKind,
  event: { key: string; shiftKey: boolean; ctrlKey: boolean; metaKey: boolean },
): number {
  const direction = event.key === 'ArrowUp' ? 1 : event.key === 'ArrowDown' ? -1 : 0;
  const size = event.shiftKey ? 10 : event.ctrlKey || event.metaKey ? 0.1 : 1;
  return direction * size * MEASURE_KINDS[kind].step;
}

/** A stepped value without binary rounding errors: to a micrometre, a milligram. */
export function tidyStep(value: number): number {
  return Number(value.toFixed(6));
}

/** Why an entry was not understood, in words. */
export function problemText(problem: MeasureProblem): string {
  switch (problem.code) {
    case 'empty':
      return say('field.empty');
    case 'not-a-number':
      return say('field.not-a-number', { text: quoted(problem.text) });
    case 'unknown-unit':
      return say('field.unknown-unit', { text: quoted(problem.text) });
    case 'unclear-separator':
      return say('field.unclear-separator', { text: quoted(problem.text) });
  }
}

/** Letters of an entry that a problem repeats. */
const MOST_QUOTED = 30;

/** What was entered, short enough to be told: a pasted page is not. */
function quoted(text: string): string {
  const letters = Array.from(text.slice(0, 2 * MOST_QUOTED + 2));
  return letters.length <= MOST_QUOTED ? text : `${letters.slice(0, MOST_QUOTED).join('')} …`;
}

/** Why a number is outside its limits, in words; null when it is within them. */
export function outOfRangeText(
  value: number,
  limits: { min: number; max: number },
  write: (value: number) => string,
): string | null {
  if (value < limits.min)
    return say('field.too-small', { value: quoted(write(value)), limit: write(limits.min) });
  if (value > limits.max)
    return say('field.too-large', { value: quoted(write(value)), limit: write(limits.max) });
  return null;
}
