import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../core/evaluation/finding.ts';
import { QUANTITIES } from '../../../core/evaluation/quantities.ts';
import { plainFormat } from '../../../core/text/format.ts';
import { inDoubt } from '../../../core/text/in-doubt.ts';
import {
  athleteSentence,
  bandText,
  bodyNoteSentence,
  coachSentence,
  english,
  findingTitle,
  notAfloatSentence,
  quantityName,
} from '../../english.ts';

const deg = (angle: number) => (angle * Math.PI) / 180;

const finding = (more: Partial<Finding> = {}): Finding => ({
  id: 'frontKnee@0',
  seat: 0,
  quantity: 'frontKnee',
  value: deg(104),
  sd: deg(2),
  unit: 'rad',
  band: { min: deg(110), max: deg(160), source: 'common practice', sourceKey: 'x', reason: '' },
  distance: deg(6),
  probability: 0.99,
  severity: 'change',
  part: 'frontKnee',
  ...more,
});

describe('sentences', () => {
  it('tell no doubt as ± 0: one too small to show is the least that shows', () => {
    const over = finding({ quantity: 'padOverhang', value: 0.026, sd: 1e-4, unit: 'm' });
    expect(findingTitle(over)).toBe('Pad over board’s edge 26 mm ± 1 mm');
  });

  it('say of the centre of mass to which side it lies', () => {
    const at = (value: number) =>
      findingTitle(finding({ quantity: 'centreOut', value, sd: null, unit: 'm' }));
    expect(at(0.002)).toBe('Centre of mass sideways 2 mm to the kneeling side');
    expect(at(-0.002)).toBe('Centre of mass sideways 2 mm to the off side');
  });

  it('put name, value and 95 % half-interval in the heading', () => {
    expect(findingTitle(finding())).toBe('Front knee 104° ± 4°');
    expect(findingTitle(finding({ sd: null }))).toBe('Front knee 104°');
    expect(findingTitle(finding({ quantity: 'padBraced', value: 0, unit: '1' }))).toBe('Pad braced: no');
    expect(findingTitle(finding({ quantity: 'strapReleases', value: -1, unit: '1' }))).toBe(
      'Rear strap: fixed',
    );
    expect(findingTitle(finding({ quantity: 'strapReleases', value: 1, unit: '1' }))).toBe(
      'Rear strap: opens by itself',
    );
  });

  it('speak of the side of the band that the value is on', () => {
    expect(coachSentence(finding())).toBe('Too bent to push.');
    const straight = finding({ value: deg(170), distance: deg(10) });
    expect(coachSentence(straight)).toBe('Too straight for the stroke.');
    expect(athleteSentence(straight)).toBe('Your front knee is too straight.');
  });

  it('say of a check what is likelier, and the coach how likely the other is', () => {
    const close = finding({ value: deg(112), distance: deg(-2), severity: 'check', probability: 0.24 });
    expect(coachSentence(close)).toBe('Probably: In its band. Otherwise: about 1 in 4.');
    expect(athleteSentence(close)).toBe('Probably: Your front leg can push well.');
    const out = finding({ value: deg(109), distance: deg(1), severity: 'check', probability: 0.7 });
    expect(coachSentence(out)).toBe('Probably: Too bent to push.');
  });

  it('say of an unusual place that works what the usual one would bring', () => {
    const place = finding({
      quantity: 'padAft',
      value: 0.23,
      sd: null,
      unit: 'm',
      band: { min: 0.15, max: 0.2, source: 'common practice', sourceKey: 'x', reason: '' },
      distance: 0.03,
      probability: 1,
      severity: 'check',
      instead: { at: 0.2, quantity: 'trimRest', unit: 'm', from: 0.02, to: 0.008 },
    });
    expect(coachSentence(place)).toBe('Unusual, and it works. At 20.0 cm, bow 12 mm lower.');
    expect(
      coachSentence({ ...place, fromMiddleM: 0.28, instead: { ...place.instead!, at: 0.15 } }),
    ).toContain('At 20.0 cm from mid-boat');
  });

  it('never write minus nought', () => {
    expect(plainFormat(-0.0001, 'm')).toBe('0.0 cm');
  });

  it('write bands open and closed', () => {
    expect(bandText({ min: 0.15, max: 0.2 }, 'm')).toBe('15.0 cm to 20.0 cm');
    expect(bandText({ min: null, max: 0.2 }, 'm')).toBe('at most 20.0 cm');
    expect(bandText({ min: 0.15, max: null }, 'm')).toBe('at least 15.0 cm');
    expect(bandText({ min: null, max: null }, 'm')).toBe('');
  });

  it('have a name for every quantity there is', () => {
    for (const id of Object.keys(QUANTITIES)) expect(quantityName(id), id).not.toBe(id);
  });

  it('have a sentence for every code', () => {
    expect(notAfloatSentence({ kind: 'overloaded', massKg: 300, mostKg: 210 })).toMatch(/210.0 kg.*300.0 kg/);
    expect(notAfloatSentence({ kind: 'swamped', atX: -1.2 })).toMatch(/120.0 cm aft/);
    expect(notAfloatSentence({ kind: 'no-equilibrium', reason: 'density' })).toMatch(/density/);
    expect(bodyNoteSentence({ code: 'extrapolates-stature', value: 1.2 })).toMatch(/120.0 cm/);
    expect(bodyNoteSentence({ code: 'extrapolates-mass', value: 150 })).toMatch(/140.0 kg/);
    expect(bodyNoteSentence({ code: 'junior', ageYears: 13 })).toMatch(/tape/);
    expect(bodyNoteSentence({ code: 'tape-disagrees', measure: 'footLength', sigmas: 4.2 })).toMatch(
      /Foot length/,
    );
  });
});

it('of two sides the likelier is said: outside from one half on', () => {
  const said = (probability: number) =>
    inDoubt(
      { probability },
      { inside: 'IN', outside: 'OUT', isOutside: probability > 0.5 },
      {
        words: english,
        reader: 'coach',
      },
    );
  expect(said(0.55)).toContain('OUT');
  expect(said(0.55)).not.toContain('IN');
  expect(said(0.45)).toContain('IN');
  expect(said(0.45)).not.toContain('OUT');
});
