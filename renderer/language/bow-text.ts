import type { Format } from '../../app/language/format.ts';
import { say } from './messages.ts';

/** Difference of height below which bow and stern are called level, metres. */
const LEVEL_M = 0.0005;

/** How the bow lies over the stern, in words and without a sign: "9 mm up", "12 mm down", "level". Metres. */
export function bowText(bowOverStern: number, format: Format): string {
  if (Math.abs(bowOverStern) < LEVEL_M) return say('drawing.strip.level');
  const by = format.length(Math.abs(bowOverStern), { unit: format.lengthUnit === 'in' ? 'in' : 'mm' });
  return say(bowOverStern > 0 ? 'drawing.strip.up' : 'drawing.strip.down', { by });
}
