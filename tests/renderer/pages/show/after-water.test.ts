import { describe, expect, it } from 'vitest';
import type { RevisionSummary } from '../../../../app/contract/records.ts';
import type { TrialRecord } from '../../../../app/contract/trials.ts';
import { type Trial, trialSchema } from '../../../../core/trial/observation.ts';
import { afterWater, afterWaterLines } from '../../../../renderer/pages/show/after-water.ts';

const NUMB: Trial['observations'][number] = {
  kind: 'body',
  place: 'rearToes',
  feeling: 'numb',
  strength: 2,
};

function record(part: Partial<Trial>, archived = false): TrialRecord {
  return {
    id: 't1',
    fitId: 'f1',
    revisionId: 'r1',
    athleteId: null,
    trial: trialSchema.parse({ seat: 0, heldOn: '2026-05-02', observations: [], ...part }),
    archived,
    createdAt: '2026-05-02T10:00:00.000Z',
    changedAt: '2026-05-02T10:00:00.000Z',
  };
}

const revision = (part: Partial<RevisionSummary>): RevisionSummary =>
  ({
    id: 'r2',
    number: 2,
    name: 'x',
    reason: '',
    savedAt: '2026-05-03T10:00:00.000Z',
    answers: [],
    ...part,
  }) as RevisionSummary;

describe('what an athlete said after the last trial', () => {
  it('is nothing without a trial of the seat', () => {
    expect(afterWater([], [], 0)).toBeNull();
    expect(afterWater([record({ observations: [NUMB] })], [], 1)).toBeNull();
    expect(afterWater([record({ observations: [NUMB] }, true)], [], 0)).toBeNull();
  });

  it('is open, and a reason to stop, until a revision answers it', () => {
    const trials = [record({ observations: [NUMB], notes: 'My toes went to sleep' })];
    const open = afterWater(trials, [revision({})], 0)!;
    expect(open).toMatchObject({ open: true, stop: true, words: '“My toes went to sleep”' });
    expect(open.told[0]).toMatchObject({ what: 'Rear toes: numb (moderate)' });
    expect(open.told[0]!.done).toContain('Not changed yet');
    const done = afterWater(trials, [revision({ answers: [{ trialId: 't1', observation: NUMB }] })], 0)!;
    expect(done).toMatchObject({ open: false, stop: false });
    expect(done.told[0]!.done).toContain('It was changed');
    expect(open.changedFrom).toBeNull();
    const tried = revision({ id: 'r1', number: 1 });
    const answer = revision({ answers: [{ trialId: 't1', observation: NUMB }] });
    expect(afterWater(trials, [answer, tried], 0)!.changedFrom).toBe(1);
  });

  it('is closed where all felt good, and open after words alone until something is saved', () => {
    expect(afterWater([record({ allGood: true })], [], 0)).toMatchObject({ open: false, stop: false });
    const words = [record({ notes: 'Felt slow' })];
    expect(afterWater(words, [], 0)!.open).toBe(true);
    expect(afterWater(words, [revision({})], 0)!.open).toBe(false);
  });

  it('is written as lines for paper, the reason to stop first', () => {
    const lines = afterWaterLines(afterWater([record({ observations: [NUMB] })], [], 0));
    expect(lines[1]).toContain('Stop');
    expect(lines).toHaveLength(3);
    expect(afterWaterLines(null)).toEqual([]);
  });
});
