/** Full-size templates by what they are for. `front-wedge` exists only where the front foot stands on one. */
export const TEMPLATE_IDS = [
  'pad-recess',
  'pad-block',
  'rear-rest',
  'front-wedge',
  'front-foot',
  'floorboard',
] as const;
/** A template by what it is for; the files ask for templates by these. */
export type TemplateId = (typeof TEMPLATE_IDS)[number];
