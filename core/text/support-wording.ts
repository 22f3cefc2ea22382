import type { Finding } from '../evaluation/finding.ts';
import type { Contact } from '../support/support.ts';

const CONTACT_NAMES: Readonly<Record<Contact, string>> = {
  knee: 'knee',
  rearFoot: 'rear foot',
  frontFoot: 'front foot',
};

/**
 * A coach's sentence on a support margin that is not good: which edge of the support polygon the weight is near or past, by its
 * contacts; or that all three lie in one line. Null where the finding does not say.
 */
export function supportSentence({ support, value }: Finding): string | null {
  if (!support) return null;
  if (support.inLine)
    return 'Knee, rear foot and front foot lie in one line: little holds the weight to either side of it.';
  const [one, other] = support.nearestEdge;
  if (one === other) {
    const side = `the outer side of where the ${CONTACT_NAMES[one]} bears`;
    return value < 0 ? `The weight is outside the supports, past ${side}.` : `The weight is near ${side}.`;
  }
  const edge = support.nearestEdge.map((contact) => CONTACT_NAMES[contact]).join(' and ');
  return value < 0
    ? `The weight is outside the supports, past the edge from ${edge.replace(' and ', ' to ')}.`
    : `The weight is near the edge between ${edge}.`;
}
