import type { Unit } from '../../core/evaluation/finding.ts';
import { quantityDefinition } from '../../core/evaluation/quantities.ts';
import { LENGTH_UNITS, type LengthUnit } from '../../core/units/length-text.ts';
import { MASS_UNITS } from '../../core/units/mass-text.ts';
import type { DisplayRecord } from '../contract/display.ts';

/** Shown smallest steps of lengths: a tape's millimetre, a hundredth of an inch. */
const LENGTH_DECIMALS: Readonly<Record<'cm' | 'mm' | 'in', number>> = { cm: 1, mm: 0, in: 2 };

/** A value this far (in the shown unit) from a shown step counts as lying between two: far above binary dust. */
const OFF_STEP = 1e-6;

/** Places after the decimal mark of the other units; a quantity's own `step` may ask for more. */
const PLAIN_DECIMALS: Readonly<Record<Exclude<Unit, 'm'>, number>> = {
  rad: 0,
  kg: 1,
  N: 0,
  N·m: 1,
  Pa: 0,
  'N·m/°': 1,
  '1': 0,
};

export interface NumberOptions {
  readonly decimals: number;
  /** Writes + before what is above zero: for changes. */
  readonly signed?: boolean;
}

/** Writes numbers and measures as one person likes to read them. SI in; a narrow space stands before the unit. */
export interface Format {
  number(value: number, options: NumberOptions): string;
  /** A length in metres, in the chosen unit. `exact` adds a place where the value lies between two shown steps. */
  length(valueM: number, options?: { signed?: boolean; unit?: LengthUnit; exact?: boolean }): string;
  mass(valueKg: number): string;
  /** An angle in degrees, as documents hold it. */
  degrees(valueDeg: number, options?: Partial<NumberOptions>): string;
  /** The writer for one quantity of the report, in the form that core's sentences take. */
  quantity(id: string, options?: { signed?: boolean }): (value: number, unit: Unit) => string;
  /** A value in SI with its unit, finely where it is asked: the form that core's sentences take. */
  readonly value: (value: number, unit: Unit, inMillimetres?: boolean) => string;
  /** The chosen unit of length. */
  readonly lengthUnit: 'cm' | 'mm' | 'in';
  readonly massUnit: 'kg' | 'lb';
  readonly decimalMark: '.' | ',';
}

/** How finely a value is written. */
interface Writing {
  readonly step: number;
  readonly inMillimetres: boolean;
  readonly signed?: boolean | undefined;
}

const made = new Map<string, Format>();

/** The writer for these settings; the same object each time. */
export function formatFor(
  settings: Pick<DisplayRecord, 'length' | 'mass' | 'decimal'>,
  /** Undefined: the computer's own. (`navigator.language` is no safe choice: it may be `en-US@posix`, which Intl refuses.) */
  systemLocale?: string,
): Format {
  const key = `${settings.length} ${settings.mass} ${settings.decimal} ${systemLocale}`;
  const known = made.get(key);
  if (known) return known;
  const format = makeFormat(settings, decimalMark(settings.decimal, systemLocale));
  made.set(key, format);
  return format;
}

function decimalMark(choice: DisplayRecord['decimal'], systemLocale: string | undefined): '.' | ',' {
  if (choice !== 'system') return choice === 'comma' ? ',' : '.';
  const parts = new Intl.NumberFormat(systemLocale).formatToParts(0.5);
  return parts.find(({ type }) => type === 'decimal')?.value === ',' ? ',' : '.';
}

/** A space that does not break and is narrow, before a unit. */
const GAP = '\u{202f}';
const MINUS = '\u{2212}';

function makeFormat(
  { length: lengthUnit, mass: massUnit }: Pick<DisplayRecord, 'length' | 'mass'>,
  mark: '.' | ',',
): Format {
  const number = (value: number, { decimals, signed = false }: NumberOptions): string => {
    const digits = Math.abs(value).toFixed(decimals);
    const zero = Number(digits) === 0;
    const sign = zero ? '' : value < 0 ? MINUS : signed ? '+' : '';
    return sign + (mark === ',' ? digits.replace('.', ',') : digits);
  };

  const length: Format['length'] = (valueM, { signed, unit = lengthUnit, exact = false } = {}) => {
    const usual = unit === 'm' || unit === 'ft' ? 3 : LENGTH_DECIMALS[unit];
    const scaled = valueM / LENGTH_UNITS[unit];
    const between = exact && unit !== 'in' && Math.abs(scaled - Number(scaled.toFixed(usual))) > OFF_STEP;
    return `${number(scaled, { decimals: usual + (between ? 1 : 0), signed })}${GAP}${unit}`;
  };

  const degrees: Format['degrees'] = (valueDeg, options = {}) =>
    `${number(valueDeg, { decimals: 0, ...options })}°`;

  const quantity: Format['quantity'] = (id, { signed } = {}) => {
    const definition = quantityDefinition(id);
    const step = definition?.step ?? 1;
    const inMillimetres = definition?.inMillimetres ?? false;
    return (value, unit) => write(value, unit, { step, inMillimetres, signed });
  };

  const write = (value: number, unit: Unit, { step, inMillimetres, signed }: Writing): string => {
    switch (unit) {
      case 'm':
        return length(value, { signed, unit: inMillimetres && lengthUnit === 'cm' ? 'mm' : lengthUnit });
      case 'rad':
        return degrees((value * 180) / Math.PI, { decimals: step < 0.005 ? 2 : 0, signed });
      case 'kg':
        return `${number(value / MASS_UNITS[massUnit], { decimals: 1, signed })}${GAP}${massUnit}`;
      case 'Pa':
        return `${number(value / 1000, { decimals: 0, signed })}${GAP}kPa`;
      case '1':
        return `${number(value * 100, { decimals: step < 0.01 ? 1 : 0, signed })}${GAP}%`;
      default:
        return `${number(value, { decimals: PLAIN_DECIMALS[unit], signed })}${GAP}${unit}`;
    }
  };

  return {
    number,
    length,
    mass: (valueKg) => `${number(valueKg / MASS_UNITS[massUnit], { decimals: 1 })}${GAP}${massUnit}`,
    degrees,
    quantity,
    value: (value, unit, inMillimetres = false) => write(value, unit, { step: 1, inMillimetres }),
    lengthUnit,
    massUnit,
    decimalMark: mark,
  };
}
