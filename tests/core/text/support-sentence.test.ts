import { describe, expect, it } from 'vitest';
import { evaluateFit } from '../../../core/evaluation/evaluator.ts';
import type { Finding } from '../../../core/evaluation/finding.ts';
import { CONTACTS, type Contact } from '../../../core/support/support.ts';
import { athleteSentence, coachSentence, supportSentence } from '../../english.ts';
import { exampleFit, exampleSeat } from '../example/example-fit.ts';

const margin = (more: Partial<Finding> = {}): Finding => ({
  id: 'supportMargin@0',
  seat: 0,
  quantity: 'supportMargin',
  value: -0.02,
  sd: 0.005,
  unit: 'm',
  band: { min: 0.01, max: null, source: 'this model', sourceKey: 'x', reason: '' },
  distance: 0.03,
  probability: 0.99,
  severity: 'change',
  part: 'support',
  ...more,
});

describe('the support margin in words', () => {
  it.each([
    ['knee', 'rearFoot', 'knee and rear foot'],
    ['knee', 'frontFoot', 'knee and front foot'],
    ['rearFoot', 'frontFoot', 'the feet'],
  ] as const)('past the edge from %s to %s it names it', (a: Contact, b: Contact, words) => {
    const sentence = supportSentence(margin({ support: { nearestEdge: [a, b], inLine: false } }));
    expect(sentence).toBe(`Outside the supports, past the edge between ${words}.`);
  });

  it('inside it says near which edge', () => {
    const near = margin({
      value: 0.004,
      distance: 0.006,
      support: { nearestEdge: ['knee', 'rearFoot'], inLine: false },
    });
    expect(coachSentence(near)).toBe('Near the edge between knee and rear foot.');
    expect(athleteSentence(near)).toBe('Your weight is near your supports’ edge.');
  });

  it('says when there is no triangle at all', () => {
    const line = margin({ support: { nearestEdge: ['knee', 'rearFoot'], inLine: true } });
    expect(coachSentence(line)).toMatch(/in line/);
  });

  it('has nothing to say where the edge is not known, and the usual words stand', () => {
    expect(supportSentence(margin())).toBeNull();
    expect(coachSentence(margin())).toMatch(/outside the supports/);
  });
});

describe('in a whole report', () => {
  it('the edge of the statics is the edge of the finding, and a knee far over the off side is past the feet', () => {
    const seat = exampleSeat();
    const report = evaluateFit(exampleFit([{ ...seat, kneePad: { ...seat.kneePad, outM: -0.3 } }]));
    const finding = report.findings.find((f) => f.quantity === 'supportMargin')!;
    const { nearestEdge, inside } = report.seats[0]!.support;
    expect(inside).toBe(false);
    expect(finding.support?.nearestEdge).toEqual(nearestEdge);
    expect(nearestEdge.every((contact) => CONTACTS.includes(contact))).toBe(true);
    expect(finding.severity).toBe('stop');
    expect(coachSentence(finding)).toMatch(/^Outside the supports, past/);
  });

  it('a knee in line with both feet is said to be', () => {
    const { support } = evaluateFit(exampleFit()).seats[0]!;
    const { rearFoot, frontFoot, knee } = support.contacts;
    const share = (knee.x - rearFoot.x) / (frontFoot.x - rearFoot.x);
    const outM = rearFoot.y + share * (frontFoot.y - rearFoot.y);
    const seat = exampleSeat();
    const report = evaluateFit(exampleFit([{ ...seat, kneePad: { ...seat.kneePad, outM } }]));
    expect(report.seats[0]!.support.inLine).toBe(true);
    const finding = report.findings.find((f) => f.quantity === 'supportMargin')!;
    expect(coachSentence(finding)).toMatch(/in line/);
    expect(Math.max(...Object.values(report.seats[0]!.support.shares).map(Math.abs))).toBeLessThan(2);
  });
});
