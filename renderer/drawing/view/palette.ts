import type { Role } from '../../../core/graphics/shape.ts';
import { keysOf, recordOf } from '../../../core/units/entries.ts';

/** The theme's colours that the drawing uses, by the names the theme gives them. */
const NAMES = [
  'paper',
  'paper-deep',
  'ink',
  'ink-soft',
  'ink-faint',
  'rule',
  'rule-faint',
  'accent',
  'on-accent',
  'measure',
  'water',
  'water-line',
  'hull',
  'hull-line',
  'wood',
  'wood-deep',
  'wood-line',
  'board',
  'recess',
  'strap',
  'skin',
  'skin-far',
  'top',
  'top-far',
  'shorts',
  'shorts-far',
  'hair',
  'figure-line',
  'good',
  'check',
  'change',
  'stop',
  'focus',
] as const;
export type ColourName = (typeof NAMES)[number];

/** The colour of each role that a shape may have. */
export const ROLE_COLOURS: Readonly<Record<Role, ColourName>> = {
  skin: 'skin',
  skinFar: 'skin-far',
  top: 'top',
  topFar: 'top-far',
  shorts: 'shorts',
  shortsFar: 'shorts-far',
  hair: 'hair',
  figureLine: 'figure-line',
  shaft: 'wood',
  blade: 'wood',
  paddleLine: 'wood-line',
  water: 'water',
  waterLine: 'water-line',
  hull: 'hull',
  hullLine: 'hull-line',
  board: 'board',
  wood: 'wood',
  recess: 'recess',
  woodLine: 'wood-line',
  strap: 'strap',
};

/** Colours as CSS texts, read once per theme. */
export type Palette = Readonly<Record<ColourName, string>>;

/** Reads the theme's colours as they stand on an element. */
export function readPalette(element: Element): Palette {
  const style = getComputedStyle(element);
  const read = (name: (typeof NAMES)[number]) => style.getPropertyValue(`--${name}`).trim() || '#888888';
  return recordOf(NAMES, read);
}

/** Every colour mixed toward one of them, `share` of itself left: what lies faint, drawn opaque and so without cost. */
export function mixedPalette(palette: Palette, share: number, toward: ColourName): Palette {
  return recordOf(keysOf(palette), (name) => mixedColour(palette[name], palette[toward], share));
}

/** `share` of the first colour, the rest of the second: `#rrggbb` texts are mixed here, others by the browser. */
function mixedColour(a: string, b: string, share: number): string {
  const [from, to] = [channels(a), channels(b)];
  if (!from || !to) return `color-mix(in srgb, ${a} ${share * 100}%, ${b})`;
  const mixed = from.map((value, k) => Math.round(value * share + to[k]! * (1 - share)));
  return `rgb(${mixed.join(' ')})`;
}

function channels(colour: string): number[] | null {
  if (!/^#[0-9a-f]{6}$/i.test(colour)) return null;
  return [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16));
}
