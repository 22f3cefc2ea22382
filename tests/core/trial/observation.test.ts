import { describe, expect, it } from 'vitest';
import { QUANTITIES } from '../../../core/evaluation/quantities.ts';
import { desiresOf } from '../../../core/trial/desires.ts';
import {
  BOAT_SIGNS,
  BODY_PLACES,
  needsCaution,
  type Observation,
  trialSchema,
} from '../../../core/trial/observation.ts';

const every: Observation[] = [
  ...BODY_PLACES.map((place) => ({ kind: 'body' as const, place, feeling: 'ache' as const, strength: 2 })),
  ...BOAT_SIGNS.map((sign) => ({ kind: 'boat' as const, sign, strength: 2 })),
];

describe('observations', () => {
  it.each(every)('%j asks for something the model can compute', (observation) => {
    const desires = desiresOf(observation);
    expect(desires.length).toBeGreaterThan(0);
    for (const desire of desires) {
      expect(Object.keys(QUANTITIES)).toContain(desire.quantity);
      expect(desire.clear).toBeGreaterThan(0);
      expect(desire.reason).not.toBe('');
    }
  });

  it('bring the caution first for pain, numbness, tingling and swelling, and only for them', () => {
    const felt = (feeling: 'pain' | 'numb' | 'tingling' | 'swelling' | 'pressure' | 'tired') =>
      needsCaution({
        observations: [{ kind: 'body', place: 'rearToes', feeling, strength: 1 }],
        notes: '',
      });
    expect(['pain', 'numb', 'tingling', 'swelling'].map((f) => felt(f as 'pain'))).toEqual([
      true,
      true,
      true,
      true,
    ]);
    expect([felt('pressure'), felt('tired')]).toEqual([false, false]);
    const tippy = [{ kind: 'boat' as const, sign: 'tippy' as const, strength: 3 }];
    expect(needsCaution({ observations: tippy, notes: '' })).toBe(false);
    expect(needsCaution({ observations: tippy, notes: 'Knee hurts when she turns' })).toBe(true);
  });

  it('are refused with a strength that is not 1, 2 or 3', () => {
    const trial = {
      seat: 0,
      heldOn: '2026-05-02',
      observations: [{ kind: 'boat', sign: 'tippy', strength: 4 }],
    };
    expect(trialSchema.safeParse(trial).success).toBe(false);
  });
});
