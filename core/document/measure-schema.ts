import { z } from 'zod';

/** A calendar date, `YYYY-MM-DD`. */
export const isoDate = z.iso.date();

/** A finite length in metres between two limits, with a message that names them. */
export function metres(low: number, high: number) {
  return z.number().min(low).max(high).meta({ unit: 'm' });
}

/** A finite angle in degrees between two limits. */
export function degrees(low: number, high: number) {
  return z.number().min(low).max(high).meta({ unit: 'deg' });
}

/** A short text a person typed: trimmed, not empty. */
export const label = z.string().trim().min(1).max(120);

/** A longer note; may be empty. */
export const note = z.string().max(10_000);
