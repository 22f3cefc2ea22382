import { describe, expect, it } from 'vitest';
import { createEvaluator } from '../../../core/evaluation/evaluator.ts';
import { formatOf, plainFormat } from '../../../core/text/format.ts';
import { findingTitle } from '../../english.ts';
import { notEmpty } from '../../not-empty.ts';
import { exampleFit, exampleSeat } from '../example/example-fit.ts';

/** The figure of a text and its places after the decimal mark; whole tens have −1, whole hundreds −2. */
function figureOf(text: string) {
  const [figure] = /\d+(\.\d+)?/.exec(text) ?? [''];
  const [whole, part] = figure.split('.');
  const zeros = /0*$/.exec(whole!)![0].length;
  return { figure: Number(figure), places: part ? part.length : whole === '0' ? 0 : 0 - zeros };
}

describe('a change', () => {
  const metric = formatOf({ length: 'cm', mass: 'kg', mark: '.' });

  it('of an angle that matters by hundredths of a degree is written finely, that of a joint is not', () => {
    expect(metric.changeUnit({ id: 'trimAngle', unit: 'rad' })).toMatchObject({
      unit: '°',
      decimals: 3,
    });
    expect(metric.changeUnit({ id: 'frontKnee', unit: 'rad' })).toMatchObject({
      unit: '°',
      decimals: 1,
    });
    expect(metric.changeUnit({ id: 'frontKnee', unit: 'rad' }).perSi).toBeCloseTo(57.29578, 5);
  });
});

describe('a number shown has the digits its doubt allows', () => {
  const evaluator = createEvaluator();
  const { findings, quantities } = evaluator.evaluate(
    exampleFit([exampleSeat(), exampleSeat({ side: 'right' })]),
  );

  it('in every heading: value and doubt end at the same place, the doubt with two figures at most', () => {
    const doubted = notEmpty(
      findings.flatMap((finding) => {
        const [value, half] = findingTitle(finding).split(' ± ');
        return half ? [{ value: value!.split(': ').at(-1)!, half }] : [];
      }),
    );
    for (const { value, half } of notEmpty(doubted)) {
      const [shown, doubt] = [figureOf(value), figureOf(half)];
      const decimals = (text: string) => /\.(\d+)/.exec(text)?.[1]?.length ?? 0;
      expect(decimals(value), `${value} ± ${half}`).toBe(decimals(half));
      if (doubt.places < 0) expect(shown.places, `${value} ± ${half}`).toBeLessThanOrEqual(doubt.places + 1);
      const figures = String(doubt.figure).replace('.', '').replace(/^0+/, '').replace(/0+$/, '');
      expect(figures.length, half).toBeLessThanOrEqual(2);
    }
  });

  it('a load known to 80 N is told in tens, an angle known to 14° in degrees', () => {
    expect(plainFormat(512.4, 'N', { half: 83 })).toBe('510 N');
    expect(plainFormat(83, 'N', { half: 83 })).toBe('80 N');
    expect(plainFormat((118.4 * Math.PI) / 180, 'rad', { half: (14 * Math.PI) / 180 })).toBe('118°');
    expect(plainFormat(1.7032, 'm', { half: 0.061 })).toBe('170 cm');
    expect(plainFormat(0.0134, 'm', { half: 0.0421, inMillimetres: true })).toBe('10 mm');
    expect(plainFormat(0.643, '1', { half: 0.02 })).toBe('64 %');
  });

  it('in inches and pounds by their own places', () => {
    const inches = formatOf({ length: 'in', mass: 'lb', mark: '.' });
    expect(inches.length(0.4445, { half: 0.02 })).toBe('17.5\u{202f}in');
    expect(inches.length(0.4445, { half: 0.0001 })).toBe('17.50\u{202f}in');
  });

  it('as set has all its digits: it has no doubt', () => {
    const pad = quantities.find(({ id }) => id === 'padAft')!;
    expect(pad.sd).toBe(0);
    expect(plainFormat(pad.value, pad.unit)).toBe('17.5 cm');
  });
});
