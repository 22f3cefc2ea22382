import { type Format, formatOf } from '../../core/text/format.ts';
import type { DisplayRecord } from '../contract/display.ts';

export type { Format } from '../../core/text/format.ts';

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
  const { length, mass, decimal } = settings;
  const format = formatOf({ length, mass, mark: decimalMark(decimal, systemLocale) });
  made.set(key, format);
  return format;
}

function decimalMark(choice: DisplayRecord['decimal'], systemLocale: string | undefined): '.' | ',' {
  if (choice !== 'system') return choice === 'comma' ? ',' : '.';
  const parts = new Intl.NumberFormat(systemLocale).formatToParts(0.5);
  return parts.find(({ type }) => type === 'decimal')?.value === ',' ? ',' : '.';
}
