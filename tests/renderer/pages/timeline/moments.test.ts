import { describe, expect, it } from 'vitest';
import type { TimelineEntry } from '../../../../app/contract/trials.ts';
import { trialSchema } from '../../../../core/trial/observation.ts';
import { momentOf, timelineOrder } from '../../../../renderer/pages/timeline/moments.ts';

const ofFit = { fitId: 'f', fitName: 'F', boatName: 'B' };
const revision = (number: number, at: string): TimelineEntry => ({
  kind: 'revision',
  at,
  ...ofFit,
  seat: 0,
  revision: { id: `r${number}`, number, name: 'x', reason: '', savedAt: at, answers: [] },
});
function trial(heldOn: string, at: string): TimelineEntry {
  return {
    kind: 'trial',
    at,
    ...ofFit,
    revisionNumber: 1,
    record: {
      id: heldOn,
      fitId: 'f',
      revisionId: 'r1',
      athleteId: null,
      trial: trialSchema.parse({ seat: 0, heldOn, observations: [] }),
      archived: false,
      createdAt: at,
      changedAt: at,
    },
  };
}

describe('the timeline', () => {
  it('puts a trial on its day, though it was entered days later', () => {
    const late = trial('2026-05-02', '2026-05-09T08:00:00Z');
    expect(momentOf(late)).toMatch(/^2026-05-02/);
    const order = timelineOrder([
      late,
      revision(2, '2026-05-05T10:00:00Z'),
      revision(1, '2026-04-20T10:00:00Z'),
    ]);
    expect(order.map((e) => (e.kind === 'revision' ? e.revision.number : 'trial'))).toEqual([2, 'trial', 1]);
  });

  it('keeps the order of one day as it was entered', () => {
    const noon = '2026-05-02T12:00:00Z';
    const order = timelineOrder([revision(1, '2026-05-02T11:00:00Z'), trial('2026-05-02', noon)]);
    expect(order.map(({ kind }) => kind)).toEqual(['trial', 'revision']);
  });
});
