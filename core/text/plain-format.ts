import type { Unit } from '../evaluation/finding.ts';
import type { FormatValue } from './signed-text.ts';

/** How each unit is written when nobody says otherwise: factor to the shown unit, decimals, suffix. */
const PLAIN: Readonly<Record<Unit, { factor: number; decimals: number; suffix: string }>> = {
  m: { factor: 100, decimals: 1, suffix: ' cm' },
  rad: { factor: 180 / Math.PI, decimals: 0, suffix: '°' },
  kg: { factor: 1, decimals: 1, suffix: ' kg' },
  N: { factor: 1, decimals: 0, suffix: ' N' },
  N·m: { factor: 1, decimals: 1, suffix: ' N·m' },
  Pa: { factor: 1e-3, decimals: 0, suffix: ' kPa' },
  'N·m/°': { factor: 1, decimals: 1, suffix: ' N·m/°' },
  '1': { factor: 100, decimals: 0, suffix: ' %' },
};

const MILLIMETRES = { factor: 1000, decimals: 0, suffix: ' mm' };

/** For scripts: plain writing with a decimal point, in centimetres (or millimetres), degrees, kilograms, newtons and per cent. */
export const plainFormat: FormatValue = (value, unit, inMillimetres = false) => {
  const { factor, decimals, suffix } = unit === 'm' && inMillimetres ? MILLIMETRES : PLAIN[unit];
  const text = (value * factor).toFixed(decimals);
  return `${Number(text) === 0 ? text.replace('-', '') : text}${suffix}`;
};
