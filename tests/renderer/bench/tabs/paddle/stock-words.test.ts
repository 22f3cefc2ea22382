import { describe, expect, it } from 'vitest';
import { formatFor } from '../../../../../app/language/format.ts';
import { fitSchema } from '../../../../../core/document/fit-schema.ts';
import { evaluateFit } from '../../../../../core/evaluation/evaluator.ts';
import { paddleOf } from '../../../../../core/evaluation/paddle-quantities.ts';
import { hullOfBoat } from '../../../../../core/hull/hull-of-boat.ts';
import { rankStock } from '../../../../../core/paddle/rank-stock.ts';
import { withPaddle } from '../../../../../renderer/bench/tabs/paddle/paddle-held.tsx';
import { whyLengthText } from '../../../../../renderer/bench/tabs/paddle/paddle-length.tsx';
import { reasonText, wantedPaddle } from '../../../../../renderer/bench/tabs/paddle/stock-words.ts';
import { PADDLE_RULES } from '../../../../../renderer/pages/paddles/paddle-rules.ts';
import { readForm } from '../../../../../renderer/ui/form/form-rules.ts';
import { exampleFit, exampleSeat } from '../../../../core/example/example-fit.ts';

const format = formatFor({ length: 'cm', mass: 'kg', decimal: 'point' });
const spaced = (text: string) => text.replaceAll(/[\u{202f}\u{a0}]/gu, ' ');
const fit = exampleFit();
const report = evaluateFit(fit);
const paddleIn = (of: typeof fit) => {
  const r = evaluateFit(of);
  return paddleOf({ ...r.seats[0]!, seat: of.seats[0]! }, { hull: hullOfBoat(of.boat) }, r.afloat.ready)!;
};

describe('wantedPaddle', () => {
  const paddle = paddleIn(fit);
  it('is one of the two lengths with a blade in the middle of its band', () => {
    expect(wantedPaddle(paddle, 'stature', { min: 0.33, max: 0.37 })).toEqual({
      lengthM: paddle.byStature.lengthM,
      bladeLengthM: paddle.byStature.lengthM * 0.35,
    });
    expect(wantedPaddle(paddle, 'stance', null).lengthM).toBe(paddle.byStance.lengthM);
    expect(wantedPaddle(paddle, 'stance', { min: 0.3, max: null }).bladeLengthM).toBeGreaterThan(0.5);
  });
});

describe('reasonText', () => {
  const stock = [
    { name: 'Alder', lengthM: 1.72, bladeLengthM: 0.6 },
    { name: 'Larch', lengthM: 1.7, bladeLengthM: 0.6 },
    { name: 'Rowan', lengthM: 1.83, bladeLengthM: 0.58 },
  ];
  const words = { stature: 1.8, band: { min: 0.08, max: 0.12 }, format };
  const texts = Object.fromEntries(
    rankStock(stock, { lengthM: 1.7, bladeLengthM: 0.6 }).map((one) => [
      one.paddle.name,
      spaced(reasonText(one, words)),
    ]),
  );

  it('says how it differs and what its band says', () => {
    expect(texts).toEqual({
      Larch: 'as wanted, 10.0 cm under stature: in its band',
      Alder: '2.0 cm longer, 8.0 cm under stature: in its band',
      Rowan: '13.0 cm longer, blade 2.0 cm shorter, 3.0 cm over stature: outside its band',
    });
  });

  it('without a band nothing is outside it', () => {
    const [one] = rankStock(stock.slice(2), { lengthM: 1.7, bladeLengthM: 0.6 });
    expect(reasonText(one!, { ...words, band: null })).toContain('in its band');
  });
});

describe('why the two lengths differ', () => {
  it('tells what the stance changes, the height of the top hand, and whether it was measured', () => {
    const text = (of: typeof fit) =>
      spaced(whyLengthText(paddleIn(of), { fit: of, report: evaluateFit(of), seat: 0, format }));
    expect(text(fit)).toMatch(
      /trunk in drive 0\.0 cm, top hand 0\.0 cm.*Top hand 1\d cm over shoulders, nearest the \w+, ± 6 cm, not measured/,
    );
    const measured = exampleFit([exampleSeat({ stroke: { topHandOverM: 0.12 } })]);
    expect(text(measured)).toMatch(
      /top hand −\d\.\d cm.*Top hand 12 cm over shoulders, nearest the chin, as measured, ± 4 cm/,
    );
  });

  it('tells why when the paddle would be longer than the athlete', () => {
    const usual = exampleSeat();
    const high = exampleFit([{ ...usual, kneePad: { ...usual.kneePad, heightM: 0.26 } }]);
    const text = whyLengthText(paddleIn(high), { fit: high, report: evaluateFit(high), seat: 0, format });
    expect(text).toMatch(/Longer than the athlete: knee higher over water/);
  });

  it('says nothing where there is no paddle to speak of', () => {
    expect(whyLengthText(null, { fit, report, seat: 0, format })).toBe('');
  });
});

describe('withPaddle', () => {
  it('sets part of one seat’s paddle and keeps the document a good one', () => {
    const changed = withPaddle(fit, 0, { lengthM: 1.66, bladeAngleDeg: 4 });
    expect(fitSchema.parse(changed).seats[0]!.paddle).toMatchObject({
      lengthM: 1.66,
      bladeAngleDeg: 4,
      bladeLengthM: 0.6,
    });
    expect(changed.seats[0]!.kneePad).toBe(fit.seats[0]!.kneePad);
  });
});

describe('the entries of a paddle', () => {
  const blank = { name: '', lengthM: null, bladeLengthM: null, bladeAngleDeg: 0, massKg: 0.75, note: '' };
  it('say what is missing, and that a blade is shorter than its paddle', () => {
    expect(readForm(PADDLE_RULES, blank)).toMatchObject({
      problems: { name: 'This is needed.', lengthM: 'This is needed.', bladeLengthM: 'This is needed.' },
    });
    const wrong = readForm(PADDLE_RULES, { ...blank, name: 'Reed', lengthM: 0.9, bladeLengthM: 0.9 });
    expect(wrong).toMatchObject({
      problems: { bladeLengthM: expect.stringContaining('Longer than the paddle') },
    });
  });
  it('make a paddle, with the id of the one that is edited', () => {
    const id = '3b241101-e2bb-4255-8caf-4136c566a962';
    const made = readForm(PADDLE_RULES, { ...blank, id, name: ' Reed ', lengthM: 1.62, bladeLengthM: 0.54 });
    expect(made).toMatchObject({ document: { id, name: 'Reed', lengthM: 1.62 } });
  });
});
