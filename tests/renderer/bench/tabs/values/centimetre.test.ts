import { describe, expect, it } from 'vitest';
import { formatFor } from '../../../../../app/language/format.ts';
import { createEvaluator } from '../../../../../core/evaluation/evaluator.ts';
import { derivativesTo } from '../../../../../core/optimise/sensitivity.ts';
import {
  cellText,
  hasSlope,
  tableStepOf,
} from '../../../../../renderer/bench/tabs/values/centimetre-cells.ts';
import { intervalWriter, tightenLines } from '../../../../../renderer/bench/tabs/values/tighten-words.ts';
import { exampleFit } from '../../../../core/example/example-fit.ts';
import { plainSpaces, quantityName } from '../../../../english.ts';

const format = formatFor({ length: 'cm', mass: 'kg', decimal: 'point' });
const inches = formatFor({ length: 'in', mass: 'kg', decimal: 'comma' });
const evaluator = createEvaluator();
const fit = exampleFit();
const report = evaluator.evaluate(fit);

describe('a cell of what one centimetre does', () => {
  const aft = derivativesTo({ evaluator, fit, report }, { seat: 0, coordinate: 'kneePad.aftM' });
  const of = (id: string) => aft.find((d) => d.id === id);

  it('is the derivative times the step, in millimetres, degrees, per cent', () => {
    const step = tableStepOf('kneePad.aftM', format);
    expect(step).toBe(0.01);
    expect(cellText(of('padAft'), { step, format })).toBe('+10.0');
    const trim = of('trimRest')!.perUnit * 0.01 * 1000;
    expect(cellText(of('trimRest'), { step, format })).toBe(
      format.number(trim, { decimals: 1, signed: true }),
    );
    const knee = (of('frontKnee')!.perUnit * 0.01 * 180) / Math.PI;
    expect(cellText(of('frontKnee'), { step, format })).toBe(
      format.number(knee, { decimals: 1, signed: true }),
    );
    expect(cellText(undefined, { step, format })).toBeNull();
  });

  it('is for half an inch, in inches, where those are read; five degrees of a turn always', () => {
    const step = tableStepOf('kneePad.aftM', inches);
    expect(step).toBeCloseTo(0.0127, 12);
    expect(cellText(of('padAft'), { step, format: inches })).toBe('+0,500');
    expect(tableStepOf('frontFoot.wedgeDeg', inches)).toBe(5);
  });

  it('has a unit and a name for every quantity of the report that has a slope', () => {
    for (const quantity of report.quantities.filter(hasSlope)) {
      expect(format.changeUnit(quantity).unit, quantity.id).not.toBe('');
      expect(quantityName(quantity.id).length).toBeGreaterThan(2);
    }
    expect(report.quantities.filter((q) => !hasSlope(q)).map(({ id }) => id)).toEqual(
      expect.arrayContaining(['strapReleases', 'boatMass']),
    );
    expect(format.changeUnit({ id: 'trimAngle', unit: 'rad' }).decimals).toBe(3);
  });
});

describe('what would tighten a value, in words', () => {
  const write = intervalWriter(format, { id: 'frontKnee', unit: 'rad' });
  const lines = tightenLines(
    {
      tape: [
        { measure: 'crotchHeight', sdNow: 0.08, sdAfter: 0.06 },
        { measure: 'armSpan', sdNow: 0.08, sdAfter: 0.0795 },
      ],
      photo: [
        { measure: 'trunkPitch', sdNow: 0.08, sdAfter: 0.05 },
        { measure: 'pelvisYaw', sdNow: 0.08, sdAfter: 0.09 },
      ],
    },
    { write, athlete: 'Una' },
  );

  it('lists tape and photographs together, the best first, and nothing that brings little or harm', () => {
    expect(lines.map(({ id }) => id)).toEqual(['photo.trunkPitch', 'tape.crotchHeight']);
  });

  it('gives the interval now and then', () => {
    expect(lines[0]!.what).toBe('From a photograph: trunk forward, side view');
    expect(lines[0]!.change).toBe('±\u{a0}9.0° to ±\u{a0}5.6°');
    expect(lines[1]!.what).toBe('Measure Una: Crotch height');
  });

  it('writes intervals a place finer than the values', () => {
    expect(plainSpaces(intervalWriter(format, { id: 'kneeShare', unit: '1' })(0.0312))).toBe('3.1 %');
    expect(plainSpaces(intervalWriter(format, { id: 'trimRest', unit: 'm' })(0.00613))).toBe('6.1 mm');
    expect(plainSpaces(intervalWriter(inches, { id: 'trimRest', unit: 'm' })(0.0061))).toContain('in');
    expect(plainSpaces(intervalWriter(format, { id: 'kneeLoad', unit: 'N' })(12.4))).toBe('12 N');
  });
});
