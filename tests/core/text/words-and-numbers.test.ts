import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Fit } from '../../../core/document/fit-schema.ts';
import type { Seat } from '../../../core/document/seat-schema.ts';
import { createEvaluator } from '../../../core/evaluation/evaluator.ts';
import type { Finding } from '../../../core/evaluation/finding.ts';
import { cases } from '../../cases.ts';
import { athleteSentence, coachSentence, findingTitle } from '../../english.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../example/example-fit.ts';

/** What a sentence may only say where the number bears it out: of which quantity, the words, and when they are true. */
interface Truth {
  readonly quantity: string;
  readonly words: RegExp;
  readonly holds: (value: number) => boolean;
}
const negative = (value: number) => value < 0;
const notNegative = (value: number) => value >= 0;
const inContact = (value: number) => value <= 0;
const TRUTHS: readonly Truth[] = [
  {
    quantity: 'trimRest',
    words: /bow (is )?low\b|bow just down|lower than the stern/,
    holds: negative,
  },
  { quantity: 'trimRest', words: /slightly higher|bow is high|bow high|just up/, holds: notNegative },
  { quantity: 'trimCatch', words: /driven down|dips/, holds: negative },
  { quantity: 'trimCatch', words: /stays up/, holds: notNegative },
  { quantity: 'offCentre', words: /(lies|weight is) to the right/, holds: negative },
  { quantity: 'offCentre', words: /(lies|weight is) to the left/, holds: (v) => v > 0 },
  { quantity: 'trunkRoll', words: /leans? (slightly )?away/, holds: negative },
  { quantity: 'trunkRoll', words: /leans? (slightly|more|far) to(wards)?\b/, holds: notNegative },
  { quantity: 'trunkPitch', words: /leans? back (at|while)/, holds: negative },
  { quantity: 'trunkPitch', words: /leans? far forward/, holds: notNegative },
  {
    quantity: 'hipFlexorStretch',
    words: /knee bent stretch|thigh is stretched/,
    holds: notNegative,
  },
  { quantity: 'hipFlexorStretch', words: /slack\b(?!.*little)|relaxed/, holds: inContact },
  { quantity: 'supportMargin', words: /outside/, holds: negative },
  { quantity: 'supportMargin', words: /near the edge|inside|well supported/, holds: notNegative },
  {
    quantity: 'strapReleases',
    words: /lets go by itself\.$|lets go by itself and|holds (the|your) foot/,
    holds: (v) => v !== 0,
  },
  { quantity: 'strapReleases', words: /holds (the|your) foot/, holds: (v) => v > 0 },
  { quantity: 'strapReleases', words: /[nN]o strap\b/, holds: (v) => v === 0 },
  { quantity: 'strapReleases', words: /[fF]ixed|does not open/, holds: negative },
  { quantity: 'padToRest', words: /touch/, holds: inContact },
  { quantity: 'padToFrontHeel', words: /touch/, holds: inContact },
  { quantity: 'toNextSeat', words: /each other’s way/, holds: inContact },
  { quantity: 'padInsideHull', words: /[rR]uns into|does not fit|partly on the hull/, holds: negative },
  { quantity: 'restInsideHull', words: /[rR]uns into|does not fit/, holds: negative },
  { quantity: 'footInsideHull', words: /[rR]uns into|touches/, holds: negative },
  { quantity: 'kneeInsideHull', words: /touches/, holds: inContact },
  { quantity: 'padTravel', words: /does not reach|cannot be fixed/, holds: negative },
  { quantity: 'restTravel', words: /does not reach|cannot be fixed/, holds: negative },
  { quantity: 'rearReach', words: /does not reach/, holds: (v) => v > 0 },
  { quantity: 'frontReach', words: /does not reach/, holds: (v) => v > 0 },
  { quantity: 'padOut', words: /other side/, holds: negative },
  { quantity: 'recessTurn', words: /other way/, holds: negative },
  { quantity: 'restTurn', words: /other way/, holds: negative },
  { quantity: 'paddleUnderStature', words: /longer than (the athlete|you)/, holds: negative },
  { quantity: 'kneeShare', words: /\bmost\b/, holds: (v) => v > 0.5 },
];
/** Words on what a place does belong to the finding of that effect, whose number they must follow. */
const EFFECTS_OF: Readonly<Record<string, RegExp>> = {
  padAft: /bow|stern/,
  padOut: /lie over|lean/,
  frontShare: /forward/,
  kneeShare: /front leg is holding/,
  restTurn: /along the shank|straight on its rest/,
  recessTurn: /as the shank lies|follows your/,
};

const evaluator = createEvaluator();
const base = exampleFit();
const BOATS: Readonly<Record<string, Fit['boat']>> = Object.fromEntries(
  [0, 0.05, -0.08].map((stationM) => [
    `${stationM}`,
    { ...base.boat, seats: [{ ...base.boat.seats[0]!, stationM }] },
  ]),
);
/** Values are exact, spreads those of the example. */
const held = evaluator.evaluate(base);
const findingsOf = (fit: Fit) => evaluator.evaluateHolding(fit, held).findings;
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const ownBand = fc.record({
  quantity: fc.constantFrom(
    'trimRest',
    'trimCatch',
    'offCentre',
    'trunkRoll',
    'padToRest',
    'hipFlexorStretch',
  ),
  min: between(-0.02, 0.03),
  width: between(0.001, 0.03),
});
const randomFit = fc
  .record({
    statureM: between(1.4, 2.05),
    massKg: between(40, 100),
    aftM: between(-0.1, 0.4),
    outM: between(-0.1, 0.15),
    heightM: between(0.04, 0.24),
    restAftM: between(0.3, 1),
    restTurnDeg: between(-20, 40),
    recessTurnDeg: between(-20, 40),
    forwardM: between(0.1, 0.8),
    paddleM: between(1.3, 2.1),
    strap: fc.constantFrom('none', 'releases', 'fixed'),
    side: fc.constantFrom('left', 'right'),
    stationM: fc.constantFrom('0', '0.05', '-0.08'),
    band: ownBand,
  })
  .map((r) => {
    const usual = exampleSeat({ athlete: exampleAthlete({ statureM: r.statureM, massKg: r.massKg }) });
    const { quantity, min, width } = r.band;
    const seat: Seat = {
      ...usual,
      side: r.side as Seat['side'],
      kneePad: {
        ...usual.kneePad,
        aftM: r.aftM,
        outM: r.outM,
        heightM: r.heightM,
        recessTurnDeg: r.recessTurnDeg,
      },
      rearRest: { ...usual.rearRest, aftM: r.restAftM, turnDeg: r.restTurnDeg, strap: r.strap as 'none' },
      frontFoot: { ...usual.frontFoot, forwardM: r.forwardM },
      paddle: { ...usual.paddle, lengthM: r.paddleM },
      bands: [
        {
          quantity,
          min: quantity.startsWith('t') ? min : min / 4,
          max: min + width,
          reason: 'try',
        } as Seat['bands'][number],
      ],
    };
    return { ...base, seats: [seat], boat: BOATS[r.stationM]! };
  });

function contradictions({ quantity, value }: Finding, sentence: string): string[] {
  const untrue = TRUTHS.filter((t) => t.quantity === quantity && t.words.test(sentence) && !t.holds(value));
  const claimed = EFFECTS_OF[quantity]?.test(sentence) ? [`claims an effect: ${sentence}`] : [];
  return [...untrue.map(({ words }) => `${quantity} ${value}: "${sentence}" says ${words}`), ...claimed];
}

describe('words and numbers', () => {
  it('no sentence contradicts its number, over random fits with bands of the coach’s own, seed 61', () => {
    fc.assert(
      fc.property(randomFit, (fit) => {
        for (const finding of findingsOf(fit)) {
          for (const sentence of [coachSentence(finding), athleteSentence(finding)])
            expect(contradictions(finding, sentence)).toEqual([]);
        }
      }),
      { seed: 61, numRuns: cases(8, 150) },
    );
  });

  it('no heading shows a sign to think about, a spread of nothing, or an angle of a limb that does not reach, seed 62', () => {
    fc.assert(
      fc.property(randomFit, (fit) => {
        for (const finding of findingsOf(fit)) {
          const title = findingTitle(finding);
          expect(title).not.toMatch(/[-−]\d/);
          if (finding.unreached) expect(title).toMatch(/: out of reach$/);
          expect(title).not.toMatch(/179° ± 0°/);
        }
      }),
      { seed: 62, numRuns: cases(4, 60) },
    );
  });
});

describe('where the words were wrong', () => {
  const of = (seat: Seat, quantity: string, station = 0) => {
    const fit = exampleFit([seat]);
    const boat = { ...fit.boat, seats: [{ ...fit.boat.seats[0]!, stationM: station }] };
    return evaluator.evaluate({ ...fit, boat }).findings.find((f) => f.quantity === quantity)!;
  };
  const strapped = (strap: Seat['rearRest']['strap']) =>
    of(exampleSeat({ rearRest: { ...exampleSeat().rearRest, strap } }), 'strapReleases');

  it('a fixed strap is stop, for nobody is tied in; no strap is told as none', () => {
    expect(strapped('fixed').severity).toBe('stop');
    expect(athleteSentence(strapped('fixed'))).toBe(
      'Your strap does not open by itself: do not paddle with it.',
    );
    expect(coachSentence(strapped('fixed'))).toMatch(/Fixed.*Nobody may be tied in/);
    expect(strapped('none').severity).not.toBe('stop');
    expect(athleteSentence(strapped('none'))).toBe('You have no strap.');
    expect(strapped('releases').severity).toBe('good');
  });

  it('a rest out of reach: the ankle has no angle, the reach says how much is missing', () => {
    const seat = exampleSeat({ rearRest: { ...exampleSeat().rearRest, aftM: 1.1 } });
    const ankle = of(seat, 'rearAnkle');
    expect(ankle.unreached).toBe(true);
    expect(ankle.sd).toBeNull();
    expect(findingTitle(ankle)).toBe('Rear ankle: out of reach');
    expect(coachSentence(ankle)).toMatch(/foot does not reach/);
    expect(athleteSentence(ankle)).toBe('');
    expect(of(seat, 'rearReach').value).toBeGreaterThan(0.1);
  });

  it('a leg that reaches has so much to spare, with its doubt, not 0 mm ± 0 mm', () => {
    const reach = of(exampleSeat(), 'frontReach');
    expect(reach.value).toBeLessThan(-0.02);
    expect(reach.sd).toBeGreaterThan(0.005);
    expect(findingTitle(reach)).toMatch(/^Gap to front foot none, [1-9]\d+ mm ± [1-9]\d* mm to spare$/);
  });

  it('a mark that is not amidships: both distances, and neither called the other', () => {
    const marked = of(exampleSeat(), 'padAft', 0.05);
    expect(findingTitle(marked)).toBe('Knee aft of mark 17.5 cm; from mid-boat 12.5 cm');
    expect(findingTitle(of(exampleSeat(), 'padAft'))).toMatch(/mark 17\.5 cm/);
    expect(findingTitle(of(exampleSeat(), 'padAft'))).not.toMatch(/mid-boat/);
  });

  it('a stretch that is not there is said to be none, with what is to spare', () => {
    const finding = { ...of(exampleSeat(), 'hipFlexorStretch'), value: (-4 * Math.PI) / 180, sd: null };
    expect(findingTitle(finding)).toBe('Kneeling hip stretch none, 4° to spare');
  });
});
