/** Full-size templates by what they are for. `front-wedge` exists only where the front foot stands on one, the ends only of a
 * block that is cut to the hull, and no block's own template where it lies on the boat's shelf. */
export const TEMPLATE_IDS = [
  'pad-recess',
  'pad-block',
  'pad-ends',
  'rear-rest',
  'rest-ends',
  'front-wedge',
  'front-foot',
  'floorboard',
] as const;
/** A template by what it is for; the files ask for templates by these. */
export type TemplateId = (typeof TEMPLATE_IDS)[number];
