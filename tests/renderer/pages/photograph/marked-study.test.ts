import { expect, it } from 'vitest';
import { photoStudySchema } from '../../../../core/photograph/photo-study-schema.ts';
import {
  type MarkedProposal,
  openProposals,
  withMark,
  withProposals,
} from '../../../../renderer/pages/photograph/marked-study.ts';

const EMPTY = photoStudySchema.parse({ seat: 0, moment: 'ready', image: { width: 800, height: 600 } });
const PROPOSED: readonly MarkedProposal[] = [
  { joint: 'kneelingHip', pixel: { u: 300, v: 200 }, confidence: 0.9 },
  { joint: 'kneelingKnee', pixel: { u: 320, v: 400 }, confidence: 0.8 },
];

it('a joint that was marked by hand stays where it is when joints are proposed; one not looked at is proposed anew', () => {
  const byHand = withMark(EMPTY, 'joint.kneelingHip', { u: 310, v: 210 });
  const once = withProposals(byHand, openProposals(byHand, PROPOSED));
  expect(once.joints).toEqual({ kneelingHip: { u: 310, v: 210 }, kneelingKnee: { u: 320, v: 400 } });
  expect(once.proposed).toEqual({ kneelingKnee: 0.8 });
  expect(openProposals(once, PROPOSED).map(({ joint }) => joint)).toEqual(['kneelingKnee']);
});
