import { describe, expect, it } from 'vitest';
import { type Trial, trialSchema } from '../../../../core/trial/observation.ts';
import { entriesOf, trialOf, withPlace, withSign } from '../../../../renderer/pages/trial/trial-entries.ts';

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

describe('the trial’s entries', () => {
  it('give back a trial as it was', () => {
    expect(trialOf(entriesOf(trial, START))).toEqual({ trial });
  });

  it('begin blank, on today, in the seat that is given', () => {
    const blank = entriesOf(null, START);
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
    const entries = { ...entriesOf(trial, START), felt: withPlace([], 'frontKnee') };
    const made = trialOf(entries);
    expect('problems' in made && Object.keys(made.problems)).toEqual(['felt.frontKnee']);
  });

  it('ask for something where nothing was entered; a word alone is enough', () => {
    const blank = entriesOf(null, START);
    expect(trialOf(blank)).toMatchObject({ problems: { all: expect.any(String) } });
    expect(trialOf({ ...blank, notes: ' felt fine ' })).toMatchObject({ trial: { notes: 'felt fine' } });
  });

  it('say that a day is none', () => {
    const made = trialOf({ ...entriesOf(trial, START), heldOn: '' });
    expect(made).toMatchObject({ problems: { heldOn: expect.any(String) } });
    const ahead = trialOf({ ...entriesOf(trial, START), heldOn: '9999-01-01' });
    expect(ahead).toMatchObject({ problems: { heldOn: expect.any(String) } });
  });
});
