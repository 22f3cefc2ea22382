import { describe, expect, it } from 'vitest';
import { formatFor } from '../../../../app/language/format.ts';
import { createEvaluator } from '../../../../core/evaluation/evaluator.ts';
import type { SideEffect } from '../../../../core/evaluation/finding.ts';
import type { Offer } from '../../../../core/optimise/offers.ts';
import { propose } from '../../../../core/optimise/propose.ts';
import type { Uncleared, WhyUncleared } from '../../../../core/optimise/why-uncleared.ts';
import { nameInSeat } from '../../../../renderer/bench/crew-names.ts';
import {
  findingCountsText,
  isFewer,
  noMovesText,
} from '../../../../renderer/bench/proposal/bench-proposal.tsx';
import { moveText, offerText } from '../../../../renderer/bench/proposal/offer-text.ts';
import { whyText } from '../../../../renderer/bench/proposal/why-text.ts';
import { withMoves } from '../../../../renderer/bench/proposal/with-moves.ts';
import { say } from '../../../../renderer/language/messages.ts';
import { exampleFit, exampleSeat } from '../../../core/example/example-fit.ts';
import { findingTitle, plainSpaces } from '../../../english.ts';
import { notEmpty } from '../../../not-empty.ts';

const format = formatFor({ length: 'cm', mass: 'kg', decimal: 'point' });
const evaluator = createEvaluator();
const fit = exampleFit([exampleSeat({ kneePad: { ...exampleSeat().kneePad, aftM: 0.28 } })]);
const report = evaluator.evaluate(fit);
const [finding] = report.findings;
/** A fit with a check that one more change clears. */
const offering = exampleFit([exampleSeat({ kneePad: { ...exampleSeat().kneePad, aftM: 0.205 } })]);

/** A side effect on an angle, degrees. */
function effect({ from, to, ...rest }: Partial<SideEffect> & { from: number; to: number }): SideEffect {
  const rad = Math.PI / 180;
  return {
    id: 'frontKnee',
    seat: 0,
    unit: 'rad',
    severityFrom: 'good',
    severityTo: 'good',
    ...rest,
    from: from * rad,
    to: to * rad,
  };
}

describe('a proposal’s moves', () => {
  const proposal = propose(evaluator, fit);

  it('made on the fit in hand give the fit that was proposed; what they do not touch stays the same object', () => {
    const made = withMoves(fit, proposal);
    expect(made).toEqual(proposal.fit);
    expect(made.boat).toBe(fit.boat);
    expect(made.seats[0]!.athlete).toBe(fit.seats[0]!.athlete);
  });

  it('are told by what moves, by how much and where to', () => {
    expect(proposal.moves.length).toBeGreaterThan(0);
    for (const move of proposal.moves) expect(moveText(move, format)).toMatch(/\d/);
    const pad = { seat: 0, coordinate: 'kneePad.aftM', from: 0.28, to: 0.265 } as const;
    expect(plainSpaces(moveText(pad, format))).toBe('Knee pad 1.5 cm forward, to 26.5 cm');
  });

  it('count what wants doing, the most severe first', () => {
    expect(findingCountsText({ check: 2, change: 1, stop: 0 })).toBe('1 change, 2 check');
    expect(findingCountsText({ check: 0, change: 0, stop: 0 })).toBe('nothing');
  });
});

describe('a proposal without moves', () => {
  it('says that nothing has to move where only checks are left, and that nothing helps where more is', () => {
    expect(noMovesText(fit, { uncleared: [] })).toBe(say('proposal.cleared'));
    const uncleared: Uncleared[] = [{ finding: finding!, why: { kind: 'given' } }];
    expect(noMovesText(fit, { uncleared })).toBe(say('proposal.nothing'));
    const locked = exampleFit([exampleSeat({ locks: ['kneePad'] })]);
    expect(noMovesText(locked, { uncleared })).toBe(say('proposal.nothing.locked'));
  });
});

describe('an offer', () => {
  const offer: Offer = {
    finding: { ...finding!, severity: 'check' },
    moves: [{ seat: 0, coordinate: 'frontFoot.forwardM', from: 0.36, to: 0.35 }],
    size: 1,
    sideEffects: [
      effect({ from: 121, to: 119 }),
      effect({ id: 'rearAnkle', from: 60, to: 58, severityTo: 'check' }),
    ],
  };

  it('tells the check, its moves and its price, what turns first', () => {
    const { finding: told, moves, price } = offerText(offer, fit, format);
    expect(plainSpaces(told)).toBe(findingTitle(finding!, format.quantity(finding!.quantity)));
    expect(moves.map(plainSpaces)).toEqual(['Front foot 1.0 cm aft, to 35.0 cm']);
    expect(price).toBe('Also changes: Rear ankle 60° → 58° (check), Front knee 121° → 119°.');
  });

  it('tells the first four things that change, and a gap by what is to spare, never by a sign', () => {
    const gap = {
      ...effect({ from: 0, to: 0 }),
      id: 'rearReach',
      unit: 'm',
      from: -0.174,
      to: -0.118,
    } as const;
    const many = [gap, ...Array.from({ length: 6 }, () => effect({ from: 121, to: 119 }))];
    const { price } = offerText({ ...offer, sideEffects: many }, fit, format);
    expect(plainSpaces(price)).toMatch(/Gap to rear rest none, 174 mm to spare → none, 118 mm to spare,/);
    expect(price.match(/→/g)).toHaveLength(4);
  });

  it('names once a value that reads the same before and after, with what is said of it', () => {
    const sideEffects = [effect({ from: 121, to: 121.2, severityFrom: 'check' })];
    expect(offerText({ ...offer, sideEffects }, fit, format).price).toBe(
      'Also changes: Front knee 121° (good).',
    );
  });

  it('says so where nothing else changes, and in a crew names the paddler', () => {
    const pair = exampleFit([exampleSeat(), exampleSeat()]);
    const alone = offerText({ ...offer, sideEffects: [] }, pair, format);
    expect(alone.price).toBe(say('proposal.offers.alone'));
    expect(alone.moves[0]).toMatch(new RegExp(`^${nameInSeat(pair, 0)}: Front foot`));
  });

  it('of the core comes with moves and a price in words', () => {
    const { offers } = propose(evaluator, offering);
    expect(offers.length).toBeGreaterThan(0);
    for (const made of offers) {
      const { finding: told, moves, price } = offerText(made, offering, format);
      expect(moves.length).toBe(made.moves.length);
      for (const text of [told, ...moves, price]) expect(text).not.toMatch(/\{|undefined|NaN/);
    }
  });
});

describe('isFewer', () => {
  const counts = (stop: number, change: number, check: number) => ({ stop, change, check });
  it('goes by the most severe that differs', () => {
    expect(isFewer(counts(1, 0, 0), counts(0, 3, 4))).toBe(true);
    expect(isFewer(counts(0, 1, 2), counts(0, 1, 1))).toBe(true);
    expect(isFewer(counts(0, 0, 8), counts(0, 0, 10))).toBe(false);
    expect(isFewer(counts(0, 1, 5), counts(0, 1, 5))).toBe(false);
    expect(isFewer(counts(0, 0, 5), counts(0, 1, 0))).toBe(false);
  });
});

describe('why something was left', () => {
  const move = {
    kind: 'move',
    seat: 0,
    coordinate: 'frontFoot.forwardM',
    from: 0.4,
    to: 0.42,
    clean: false,
    sideEffects: [],
  } as const;
  const effect = {
    id: 'trimRest',
    seat: null,
    unit: 'm',
    from: 0,
    to: 0.02,
    severityFrom: 'good',
    severityTo: 'change',
  } as const;
  const whys: readonly WhyUncleared[] = [
    { kind: 'choice', choice: 'strapReleases' },
    { kind: 'given' },
    { kind: 'locked', fitting: 'frontFoot', move },
    { kind: 'against', move, spoils: [effect] },
    { kind: 'against', move, spoils: [] },
    { kind: 'limit', joint: 'frontHipFlexion', maxDeg: 40 },
    { kind: 'out of reach' },
  ];

  it('is a whole sentence for every reason, with what it speaks of', () => {
    for (const why of notEmpty(whys)) {
      const text = whyText({ finding: finding!, why } satisfies Uncleared, format);
      expect(text, why.kind).not.toMatch(/\{|undefined|NaN/);
      expect(text, why.kind).toMatch(/\.$/);
      expect(text, why.kind).toContain(`(${finding!.severity})`);
    }
  });

  it('names the locked fitting and the move it would make, and what a move would spoil', () => {
    const text = (why: WhyUncleared) => plainSpaces(whyText({ finding: finding!, why }, format));
    expect(text(whys[2]!)).toContain(
      'Front foot is locked. Unlocked, this clears it: Front foot 2.0 cm forward, to 42.0 cm.',
    );
    expect(text(whys[3]!)).toContain('but then: Bow over stern at rest is 20 mm (change).');
  });
});
