import { describe, expect, it } from 'vitest';
import type { RevisionSummary } from '../../../../../app/contract/records.ts';
import type { TrialRecord } from '../../../../../app/contract/trials.ts';
import {
  BOAT_SIGNS,
  BODY_FEELINGS,
  BODY_PLACES,
  type Observation,
  trialSchema,
} from '../../../../../core/trial/observation.ts';
import { answeredBy } from '../../../../../renderer/bench/tabs/trials/answered-by.ts';
import { observationText } from '../../../../../renderer/bench/tabs/trials/observation-text.ts';
import { openObservations } from '../../../../../renderer/bench/tabs/trials/open-observations.ts';

const numb: Observation = { kind: 'body', place: 'rearToes', feeling: 'numb', strength: 2 };
const digs: Observation = { kind: 'boat', sign: 'bowDigs', strength: 3 };

const revision = (number: number, answers: RevisionSummary['answers']): RevisionSummary => ({
  id: `r${number}`,
  number,
  name: 'x',
  reason: '',
  savedAt: '2026-05-01T00:00:00Z',
  answers,
});

function record(id: string, observations: Observation[], archived = false): TrialRecord {
  const trial = trialSchema.parse({ seat: 0, heldOn: '2026-05-02', observations });
  const at = '2026-05-02T10:00:00Z';
  return { id, fitId: 'f', revisionId: 'r1', athleteId: null, trial, archived, createdAt: at, changedAt: at };
}

describe('an observation in words', () => {
  it('names what and how strong', () => {
    expect(observationText(numb)).toBe('Rear toes: numb (moderate)');
    expect(observationText(digs)).toBe('Bow digs in (strong)');
  });

  it('differs for every place, feeling and sign', () => {
    const texts = [
      ...BODY_PLACES.flatMap((place) =>
        BODY_FEELINGS.map((feeling) => observationText({ kind: 'body', place, feeling, strength: 1 })),
      ),
      ...BOAT_SIGNS.map((sign) => observationText({ kind: 'boat', sign, strength: 1 })),
    ];
    expect(new Set(texts).size).toBe(texts.length);
  });
});

describe('what is answered', () => {
  it('is told by the first revision made to answer it', () => {
    const answers = [{ trialId: 't', observation: numb }];
    const revisions = [revision(4, answers), revision(3, answers), revision(2, [])];
    expect(answeredBy(revisions, 't', numb)).toBe(3);
    expect(answeredBy(revisions, 't', digs)).toBe(null);
    expect(answeredBy(revisions, 'another trial', numb)).toBe(null);
    expect(answeredBy(revisions, 't', { ...numb, strength: 3 })).toBe(null);
  });

  it('is no longer open; what was set aside is not asked about', () => {
    const trials = [record('t', [numb, digs]), record('u', [digs], true)];
    const open = openObservations(trials, [revision(2, [{ trialId: 't', observation: numb }])]);
    expect(open.map(({ trialId, observation, index }) => [trialId, observation, index])).toEqual([
      ['t', digs, 1],
    ]);
  });
});
