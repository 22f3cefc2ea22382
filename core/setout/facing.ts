import type { SeatSetOut } from './set-out.ts';
import type { TemplateId } from './template-ids.ts';

/** How each template lies: on the board, on the wood from above, partly so, or against an end. */
const LIES: Readonly<Record<TemplateId, 'board' | 'above' | 'plan' | 'behind'>> = {
  'pad-recess': 'above',
  'pad-block': 'above',
  'pad-ends': 'behind',
  'rear-rest': 'plan',
  'rest-ends': 'behind',
  'front-wedge': 'plan',
  'front-foot': 'above',
  floorboard: 'board',
};

/**
 * What stands on every page of a template so that nobody cuts it the wrong way round: which knee, which face is up, where the bow
 * and port lie. A right knee's pad is the mirror image of a left one's.
 */
export function facingText({ kneels, work }: Pick<SeatSetOut, 'kneels' | 'work'>, id: TemplateId): string {
  const knee = work.words.say('template.knee', { side: kneels });
  return work.words.say(`template.facing.${LIES[id]}`, { knee });
}
