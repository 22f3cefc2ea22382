import { describe, expect, it } from 'vitest';
import { evaluateFit } from '../../../core/fit/evaluator.ts';
import { cautionSentence } from '../../../core/setout/caution-sentences.ts';
import { setOutSeat } from '../../../core/setout/set-out.ts';
import { setOutOptionsSchema } from '../../../core/setout/set-out-options.ts';
import { inventedFit, inventedSetOut } from './invented-set-out.ts';

describe('a boat with rails', () => {
  const rails = [{ fitting: 'kneePad', apartM: 0.12, heightM: 0.01, holeM: 0.006 } as const];

  it('has its builder told where bolts go and how much lower the block is', () => {
    const { cautions } = inventedSetOut({ hardware: { rails } });
    const caution = cautions.find(({ code }) => code === 'on-rails')!;
    expect(caution).toEqual({
      code: 'on-rails',
      fitting: 'kneePad',
      apartMm: 120,
      heightMm: 10,
      holeMm: 6,
    });
    expect(cautionSentence(caution, 'mm')).toMatch(
      /the pad stands on rails 120.* apart.*lower by the rails’ 10/,
    );
  });

  it('is told nothing without them', () => {
    expect(inventedSetOut().cautions.map(({ code }) => code)).not.toContain('on-rails');
  });
});

describe('a floorboard that is not level', () => {
  const cautionsWith = (profile: { xM: number; heightM: number }[]) => {
    const fit = inventedFit();
    const boat = { ...fit.boat, floorboard: { ...fit.boat.floorboard, profile } };
    const sloped = { ...fit, boat };
    const options = setOutOptionsSchema.parse({});
    const out = setOutSeat({ fit: sloped, report: evaluateFit(sloped), index: 0, options })!;
    return out.cautions.filter((caution) => caution.code === 'floor-not-level');
  };

  it('has each part’s height corrected by what the floor rises or falls from the mark', () => {
    // 4 cm a metre up toward the bow, from the mark at x = 0.
    const cautions = cautionsWith([
      { xM: -2, heightM: 0 },
      { xM: 2, heightM: 0.16 },
    ]);
    const [pad, rest, foot] = cautions.map(({ byMm }) => byMm);
    const { kneePad, rearRest, frontFoot } = inventedFit().seats[0]!;
    expect(pad).toBeCloseTo(-40 * kneePad.aftM, 6);
    expect(rest).toBeCloseTo(-40 * rearRest.aftM, 6);
    expect(foot).toBeCloseTo(40 * frontFoot.forwardM, 6);
    expect(cautionSentence(cautions[0]!, 'mm')).toMatch(
      /under the pad lies 7.* lower.*make that part so much higher/,
    );
    expect(cautionSentence(cautions[2]!, 'mm')).toMatch(/higher than.*make that part so much lower/);
  });

  it('is not spoken of where it is as good as level', () => {
    expect(
      cautionsWith([
        { xM: -2, heightM: 0.03 },
        { xM: 2, heightM: 0.032 },
      ]),
    ).toEqual([]);
  });
});
