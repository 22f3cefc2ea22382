import type { Unit } from '../evaluation/finding.ts';
import { quantityDefinition } from '../evaluation/quantities.ts';
import { inchFraction } from '../units/inch-fraction.ts';
import { LENGTH_UNITS, type LengthUnit } from '../units/length-text.ts';
import { MASS_UNITS } from '../units/mass-text.ts';
import { shownPlaces } from '../units/shown-places.ts';
import type { FormatValue } from './signed-text.ts';
import { GAP, withUnit } from './with-unit.ts';

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

/** How a number is written. */
export interface NumberOptions {
  /** Places after the decimal mark; −1 rounds to tens. */
  readonly decimals: number;
  /** Writes + before values above zero: for changes. */
  readonly signed?: boolean | undefined;
  /** Half of its 95 % interval, in the unit of the number: no digit is shown that this does not allow. */
  readonly half?: number | undefined;
}

/** How a length is written. */
export interface LengthOptions {
  readonly signed?: boolean | undefined;
  readonly unit?: LengthUnit;
  /** A small length: in millimetres where others are in centimetres, else in the chosen unit. */
  readonly fine?: boolean;
  readonly exact?: boolean;
  /** Half of its 95 % interval, metres: no digit is shown that this does not allow. */
  readonly half?: number | undefined;
}

/** How changes of a quantity are written. */
export interface ChangeUnit {
  readonly unit: string;
  /** Shown units for one SI unit. */
  readonly perSi: number;
  /** Digits after the point. */
  readonly decimals: number;
}

/** Writes numbers and measures by one person's settings. SI in; a narrow space stands before the unit. */
export interface Format {
  number(value: number, options: NumberOptions): string;
  /** A length in metres, in the chosen unit. `exact` adds a place where the value lies between two shown steps. */
  length(valueM: number, options?: LengthOptions): string;
  mass(valueKg: number): string;
  /** An angle in degrees, as documents hold it. */
  degrees(valueDeg: number, options?: Partial<NumberOptions>): string;
  /** The writer for one quantity of the report, in the form that core's sentences take. */
  quantity(id: string, options?: { signed?: boolean }): FormatValue;
  /** A quantity's value (SI), rounded as it is shown without a doubt: so shown ends and their shown difference agree. */
  shownValue(quantity: { readonly id: string; readonly unit: Unit; readonly value: number }): number;
  /** A value in SI with its unit: the form that core's sentences take. */
  readonly value: FormatValue;
  /** A length as an athlete reads it: `4 mm`, `1.5 cm`, or inches to 1/32. */
  spokenLength(valueM: number): string;
  /** How small changes of a quantity are written in a table. */
  changeUnit(quantity: { readonly id: string; readonly unit: Unit }): ChangeUnit;
  /** The chosen unit of length. */
  readonly lengthUnit: 'cm' | 'mm' | 'in';
  readonly massUnit: 'kg' | 'lb';
  readonly decimalMark: '.' | ',';
}

/** How finely a value is written. */
interface Fineness {
  /** Least difference that is written, in the shown unit. */
  readonly step: number;
  readonly inMillimetres: boolean;
  readonly signed?: boolean | undefined;
  /** Half of the 95 % interval, same unit. */
  readonly half?: number | undefined;
}

const MINUS = '\u{2212}';

/** A person's choices for writing numbers. */
export interface Writing {
  readonly length: 'cm' | 'mm' | 'in';
  readonly mass: 'kg' | 'lb';
  readonly mark: '.' | ',';
}

/** Unit in which a length is shown: fine lengths are in millimetres where others are in centimetres. */
function shownLength(inMillimetres: boolean, lengthUnit: Format['lengthUnit']): Format['lengthUnit'] {
  return inMillimetres && lengthUnit === 'cm' ? 'mm' : lengthUnit;
}

/** A quantity's value as it is shown: rounded in the shown unit, in SI again. */
function valueAsShown(
  { id, unit, value }: Parameters<Format['shownValue']>[0],
  { lengthUnit, massUnit }: Pick<Format, 'lengthUnit' | 'massUnit'>,
): number {
  const { step = 1, inMillimetres = false } = quantityDefinition(id) ?? {};
  const shown = shownLength(inMillimetres, lengthUnit);
  const { perSi, decimals } =
    unit === 'm'
      ? { perSi: 1 / LENGTH_UNITS[shown], decimals: LENGTH_DECIMALS[shown] }
      : plainUnit(unit, step, massUnit);
  return Number((value * perSi).toFixed(decimals)) / perSi;
}

/** The writer for a person's choices. It is the one place where numbers become text, on screen, on paper and in scripts. */
export function formatOf({ length: lengthUnit, mass: massUnit, mark }: Writing): Format {
  const number = (value: number, { decimals, signed = false, half = 0 }: NumberOptions): string => {
    const digits = rounded(Math.abs(value), shownPlaces(half, decimals));
    const zero = Number(digits) === 0;
    const sign = zero ? '' : value < 0 ? MINUS : signed ? '+' : '';
    return sign + (mark === ',' ? digits.replace('.', ',') : digits);
  };

  const length: Format['length'] = (valueM, options = {}) => {
    const { signed, fine = false, exact = false, half } = options;
    const { unit = shownLength(fine, lengthUnit) } = options;
    const usual = unit === 'm' || unit === 'ft' ? 3 : LENGTH_DECIMALS[unit];
    const scaled = valueM / LENGTH_UNITS[unit];
    const between = exact && unit !== 'in' && Math.abs(scaled - Number(scaled.toFixed(usual))) > OFF_STEP;
    const decimals = usual + (between ? 1 : 0);
    return withUnit(number(scaled, { decimals, signed, half: (half ?? 0) / LENGTH_UNITS[unit] }), unit);
  };

  const degrees: Format['degrees'] = (valueDeg, options = {}) =>
    `${number(valueDeg, { decimals: 0, ...options })}°`;

  const quantity: Format['quantity'] = (id, { signed } = {}) => {
    const definition = quantityDefinition(id);
    const step = definition?.step ?? 1;
    const inMillimetres = definition?.inMillimetres ?? false;
    return (value, unit, { half } = {}) => write(value, unit, { step, inMillimetres, signed, half });
  };

  const write = (value: number, unit: Unit, { step, inMillimetres, signed, half }: Fineness): string => {
    if (unit === 'm') return length(value, { signed, fine: inMillimetres, half });
    const { perSi, decimals, sign } = plainUnit(unit, step, massUnit);
    return `${number(value * perSi, { decimals, signed, half: (half ?? 0) * perSi })}${sign}`;
  };

  const spokenLength: Format['spokenLength'] = (valueM) => {
    if (lengthUnit === 'in') return withUnit(inchFraction(valueM / LENGTH_UNITS.in).replace(' ', GAP), 'in');
    const millimetres = Math.round(valueM * 1000);
    if (millimetres < 10) return withUnit(String(millimetres), 'mm');
    return withUnit(number(millimetres / 10, { decimals: millimetres % 10 === 0 ? 0 : 1 }), 'cm');
  };

  return {
    number,
    length,
    spokenLength,
    changeUnit: ({ id, unit }) => changeUnit(id, unit, lengthUnit),
    mass: (valueKg) => withUnit(number(valueKg / MASS_UNITS[massUnit], { decimals: 1 }), massUnit),
    degrees,
    quantity,
    shownValue: (quantity) => valueAsShown(quantity, { lengthUnit, massUnit }),
    value: (value, unit, { inMillimetres = false, half } = {}) =>
      write(value, unit, { step: 1, inMillimetres, half }),
    lengthUnit,
    massUnit,
    decimalMark: mark,
  };
}

/** Text of a number with this many decimal places; negative ones round to tens and hundreds. */
function rounded(value: number, decimals: number): string {
  if (decimals >= 0) return value.toFixed(decimals);
  const step = 10 ** -decimals;
  return (Math.round(value / step) * step).toFixed(0);
}

/** Units other than lengths: shown units in one SI unit, decimal places, and the unit's sign. */
function plainUnit(unit: Exclude<Unit, 'm'>, step: number, massUnit: Format['massUnit']) {
  const decimals = PLAIN_DECIMALS[unit];
  switch (unit) {
    case 'rad':
      return { perSi: 180 / Math.PI, decimals: step < FINE_ANGLE ? 2 : decimals, sign: '°' };
    case 'kg':
      return { perSi: 1 / MASS_UNITS[massUnit], decimals, sign: `${GAP}${massUnit}` };
    case 'Pa':
      return { perSi: 1 / 1000, decimals, sign: `${GAP}kPa` };
    case '1':
      return { perSi: 100, decimals: step < 0.01 ? 1 : decimals, sign: `${GAP}%` };
    default:
      return { perSi: 1, decimals, sign: `${GAP}${unit}` };
  }
}

/** Angles whose own step is finer than this, radians, are written to a hundredth of a degree, their changes to a thousandth. */
const FINE_ANGLE = 0.005;

/** Small units, since changes are small. */
function changeUnit(id: string, unit: Unit, lengthUnit: Format['lengthUnit']): ChangeUnit {
  switch (unit) {
    case 'm':
      return lengthUnit === 'in'
        ? { unit: 'in', perSi: 1 / LENGTH_UNITS.in, decimals: 3 }
        : { unit: 'mm', perSi: 1000, decimals: 1 };
    case 'rad': {
      const fine = (quantityDefinition(id)?.step ?? 1) < FINE_ANGLE;
      return { unit: '°', perSi: 180 / Math.PI, decimals: fine ? 3 : 1 };
    }
    case '1':
      return { unit: '%', perSi: 100, decimals: 1 };
    case 'Pa':
      return { unit: 'kPa', perSi: 1e-3, decimals: 1 };
    case 'N·m/°':
      return { unit, perSi: 1, decimals: 2 };
    case 'kg':
      return { unit: 'kg', perSi: 1, decimals: 2 };
    default:
      return { unit, perSi: 1, decimals: 1 };
  }
}

const SCRIPTS = formatOf({ length: 'cm', mass: 'kg', mark: '.' });

/** For scripts: plain writing with ordinary spaces and minus signs, in centimetres (or millimetres), degrees, kilograms, newtons. */
export const plainFormat: FormatValue = (value, unit, how) =>
  SCRIPTS.value(value, unit, how).replaceAll(GAP, ' ').replaceAll(MINUS, '-');
