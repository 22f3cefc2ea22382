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
  'limb-near',
  'limb-far',
  'limb-line',
  'good',
  'check',
  'change',
  'stop',
  'focus',
] as const;
/** Between the near and the far limbs: the trunk, which belongs to neither side. */
const MIXED = { 'limb-mid': ['limb-near', 'limb-far'] } as const;
export type ColourName = (typeof NAMES)[number] | keyof typeof MIXED;

/** Colours as CSS texts, read once per theme. */
export type Palette = Readonly<Record<ColourName, string>>;

/** Reads the theme's colours as they stand on an element. */
export function readPalette(element: Element): Palette {
  const style = getComputedStyle(element);
  const read = (name: ColourName) => style.getPropertyValue(`--${name}`).trim() || '#888';
  const mixed = Object.entries(MIXED).map(([name, [a, b]]) => [
    name,
    `color-mix(in srgb, ${read(a)}, ${read(b)})`,
  ]);
  return Object.fromEntries([...NAMES.map((name) => [name, read(name)]), ...mixed]) as Palette;
}
