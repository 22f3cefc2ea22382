import type { Contact } from '../support/support.ts';
import type { Finding } from './finding.ts';

const CONTACT_NAMES: Readonly<Record<Contact, string>> = {
  knee: 'knee',
  rearFoot: 'rear foot',
  frontFoot: 'front foot',
};

/**
 * A coach's sentence on a support margin that is not good: which edge of the triangle the weight is near or past, by its
 * two contacts; that there is no triangle where all three lie in one line. Null where the finding does not say.
 */
export function supportSentence({ support, value }: Finding): string | null {
  if (!support) return null;
  if (support.inLine)
    return 'Knee, rear foot and front foot lie in one line: nothing holds the weight to either side of it.';
  const edge = support.nearestEdge.map((contact) => CONTACT_NAMES[contact]).join(' and ');
  return value < 0
    ? `The weight is outside the three contacts, past the edge from ${edge.replace(' and ', ' to ')}.`
    : `The weight is near the edge between ${edge}.`;
}
