import { describe, expect, it } from 'vitest';
import { formatFor } from '../../../app/language/format.ts';
import { createEvaluator } from '../../../core/evaluation/evaluator.ts';
import { QUANTITIES } from '../../../core/evaluation/quantities.ts';
import { noteText } from '../../../renderer/bench/tabs/findings/note-text.ts';
import { exampleFit, exampleSeat } from '../../core/example/example-fit.ts';
import { notEmpty } from '../../not-empty.ts';
import { pageSources } from './page-sources.ts';

const cm = formatFor({ length: 'cm', mass: 'kg', decimal: 'point' });
const comma = formatFor({ length: 'cm', mass: 'kg', decimal: 'comma' });
const inches = formatFor({ length: 'in', mass: 'lb', decimal: 'point' });
/** Units stand after a narrow space that does not break. */
const plain = (text: string) => text.replaceAll('\u{202f}', ' ');

describe('numbers as a person reads them', () => {
  it('lengths in the chosen unit, to a millimetre', () => {
    expect(plain(cm.length(0.175))).toBe('17.5 cm');
    expect(plain(comma.length(0.175))).toBe('17,5 cm');
    expect(plain(inches.length(0.174625))).toBe('6.88 in');
    expect(plain(formatFor({ length: 'mm', mass: 'kg', decimal: 'point' }).length(0.175))).toBe('175 mm');
    expect(plain(cm.length(5.2, { unit: 'm' }))).toBe('5.200 m');
  });

  it('small lengths in millimetres beside centimetres, else in the chosen unit', () => {
    expect(plain(cm.length(0.007, { fine: true }))).toBe('7 mm');
    expect(plain(inches.length(0.0127, { fine: true }))).toBe('0.50 in');
  });

  it('no length of the page in a unit that the reader has not chosen', () => {
    const fixed = notEmpty(pageSources()).filter(({ text }) =>
      /\.length\([^;]*unit: '(mm|cm|in)'/.test(text),
    );
    expect(fixed.map(({ path }) => path)).toEqual([]);
  });

  it('every length of a finding in the chosen unit', () => {
    const { findings } = createEvaluator().evaluate(
      exampleFit([exampleSeat({ kneePad: { ...exampleSeat().kneePad, outM: 0.015 } })]),
    );
    const texts = notEmpty(findings).map((finding) => noteText(finding, inches).sentence);
    expect(texts.filter((text) => / [mc]m\b/.test(plain(text)))).toEqual([]);
    expect(texts.some((text) => / in\b/.test(plain(text)))).toBe(true);
  });

  it('an entry set between two steps shows the place it stands at', () => {
    expect(plain(cm.length(0.1753, { exact: true }))).toBe('17.53 cm');
    expect(plain(cm.length(0.1750000001, { exact: true }))).toBe('17.5 cm');
  });

  it('a true minus, no minus before nothing, and a plus only for changes', () => {
    expect(plain(cm.length(-0.019))).toBe('−1.9 cm');
    expect(plain(cm.length(-0.0001))).toBe('0.0 cm');
    expect(plain(cm.length(0.01, { signed: true }))).toBe('+1.0 cm');
    expect(plain(cm.length(0, { signed: true }))).toBe('0.0 cm');
  });

  it('masses', () => {
    expect(plain(cm.mass(72.5))).toBe('72.5 kg');
    expect(plain(inches.mass(72.5747792))).toBe('160.0 lb');
  });

  it('quantities: trims in millimetres, angles in degrees, shares in per cent, forces in newtons', () => {
    expect(plain(cm.quantity('trimRest')(0.009, 'm'))).toBe('9 mm');
    expect(plain(inches.quantity('trimRest')(0.0254, 'm'))).toBe('1.00 in');
    expect(plain(cm.quantity('frontKnee')((119 * Math.PI) / 180, 'rad'))).toBe('119°');
    expect(plain(cm.quantity('trimAngle')(0.001, 'rad'))).toBe('0.06°');
    expect(plain(cm.quantity('kneeShare')(0.63, '1'))).toBe('63 %');
    expect(plain(cm.quantity('kneeLoad')(512.3, 'N'))).toBe('512 N');
    expect(plain(comma.quantity('steadyMoment')(2.25, 'N·m'))).toMatch(/^2,[23] N·m$/);
    expect(plain(cm.quantity('padPressure')(24_000, 'Pa'))).toBe('24 kPa');
  });

  it('every quantity of the report is written with its unit and without an exponent', () => {
    for (const [id, { unit }] of Object.entries(QUANTITIES)) {
      for (const format of [cm, comma, inches]) {
        expect(plain(format.quantity(id)(0.123, unit))).toMatch(/^\d+([.,]\d+)?(°| \S+)$/);
      }
    }
  });

  it('the decimal mark follows the computer’s language unless it was chosen', () => {
    const settings = { length: 'cm', mass: 'kg', decimal: 'system' } as const;
    expect(formatFor(settings, 'de').decimalMark).toBe(',');
    expect(formatFor(settings, 'en-GB').decimalMark).toBe('.');
    expect(comma.decimalMark).toBe(',');
  });
});
