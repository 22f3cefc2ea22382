import { describe, expect, it } from 'vitest';
import { type Trial, trialSchema } from '../../../../core/trial/observation.ts';
import {
  TRIAL_RULES,
  trialValues,
  withPlace,
  withSign,
} from '../../../../renderer/pages/trial/trial-values.ts';
import { readForm } from '../../../../renderer/ui/form/form-rules.ts';

const START = { tried: 'a revision', seat: 1 };
const trial: Trial = trialSchema.parse({
  seat: 0,
  heldOn: '2026-05-02',
  water: 'ripple',
  wind: 'side',
  observations: [
    { kind: 'body', place: 'rearToes', feeling: 'numb', strength: 3 },
    { kind: 'boat', sign: 'bowDigs', strength: 1 },
  ],
  notes: 'cold',
});

describe('the trial’s values', () => {
  it('give back a trial as it was', () => {
    expect(readForm(TRIAL_RULES, trialValues(trial, START))).toEqual({ ok: true, document: trial });
  });

  it('begin blank, on today, in the seat that is given', () => {
    const blank = trialValues(null, START);
    expect(blank).toMatchObject({ seat: 1, tried: 'a revision', felt: [], seen: [], notes: '' });
    expect(blank.heldOn).toMatch(/^\d{4}-\d{2}-\d{2}$/);
  });

  it('take a place or a sign up and let go of it by the same touch', () => {
    const once = withPlace([], 'lowerBack');
    expect(once).toEqual([{ place: 'lowerBack', feeling: null, strength: 2 }]);
    expect(withPlace(once, 'lowerBack')).toEqual([]);
    const seen = withSign([], 'tippy');
    expect(withSign(seen, 'kneeLifts')).toHaveLength(2);
    expect(withSign(seen, 'tippy')).toEqual([]);
  });

  it('ask what was felt at a place that was only touched, and keep everything else', () => {
    const values = { ...trialValues(trial, START), felt: withPlace([], 'frontKnee') };
    const made = readForm(TRIAL_RULES, values);
    expect(!made.ok && Object.keys(made.problems)).toEqual(['felt.0.feeling']);
  });

  it('ask for something where nothing was entered; a word alone is enough', () => {
    const blank = trialValues(null, START);
    expect(readForm(TRIAL_RULES, blank)).toMatchObject({ problems: { all: expect.any(String) } });
    expect(readForm(TRIAL_RULES, { ...blank, notes: ' felt fine ' })).toMatchObject({
      document: { notes: 'felt fine' },
    });
  });

  it('say that a day is none', () => {
    const made = readForm(TRIAL_RULES, { ...trialValues(trial, START), heldOn: '' });
    expect(made).toMatchObject({ problems: { heldOn: expect.any(String) } });
    const ahead = readForm(TRIAL_RULES, { ...trialValues(trial, START), heldOn: '9999-01-01' });
    expect(ahead).toMatchObject({ problems: { heldOn: expect.any(String) } });
  });
});
