import { z } from 'zod';

/** A screen distinguished from the others of this computer: its size in CSS pixels and its pixels to one of those. */
const screenName = z.string().min(1).max(60);

/** Languages that the program speaks, by their BCP 47 tag. */
export const LANGUAGE_TAGS = ['en', 'de', 'hu', 'es', 'pl', 'zh'] as const;
/** One of them. */
export type LanguageTag = (typeof LANGUAGE_TAGS)[number];

/** How one person likes to see things on this computer. It changes no fit, and goes into no bundle or backup. */
export const displayRecord = z.strictObject({
  theme: z.enum(['system', 'light', 'dark']),
  /** The language of page, menus and errors: the computer's own, or this one. */
  language: z.enum(['system', ...LANGUAGE_TAGS]),
  length: z.enum(['cm', 'mm', 'in']),
  mass: z.enum(['kg', 'lb']),
  /** How numbers are written: as the computer's own language does, or with this decimal mark. */
  decimal: z.enum(['system', 'point', 'comma']),
  /** Screens that a card or ruler was held against, with CSS pixels to one millimetre. */
  screens: z.array(z.strictObject({ screen: screenName, pixelsPerMm: z.number().min(1).max(40) })).max(16),
});
export type DisplayRecord = z.infer<typeof displayRecord>;

/** What holds until somebody chooses otherwise. */
export const DISPLAY_DEFAULTS: DisplayRecord = {
  theme: 'system',
  language: 'system',
  length: 'cm',
  mass: 'kg',
  decimal: 'system',
  screens: [],
};

/** Reads kept settings; each that is not a choice any more takes its default. */
export function readDisplay(kept: unknown): DisplayRecord {
  const fields = typeof kept === 'object' && kept !== null ? (kept as Record<string, unknown>) : {};
  const read = Object.entries(displayRecord.shape).map(([name, shape]) => {
    const parsed = shape.safeParse(fields[name]);
    return [name, parsed.success ? parsed.data : DISPLAY_DEFAULTS[name as keyof DisplayRecord]];
  });
  return Object.fromEntries(read) as DisplayRecord;
}
