import { describe, expect, it } from 'vitest';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { createEvaluator } from '../../../core/evaluation/evaluator.ts';
import { showStory } from '../../../core/show/show-story.ts';
import { formatOf } from '../../../core/text/format.ts';
import { toRadians } from '../../../core/units/angle.ts';
import { athleteSentence, english } from '../../english.ts';
import { notEmpty } from '../../not-empty.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../example/example-fit.ts';
import { BARRED_WORDS } from '../text/barred-words.ts';

const evaluator = createEvaluator();
const shown = (fit: Fit) => ({ fit, report: evaluator.evaluate(fit) });
/** As it is said, with plain spaces. */
const writer = formatOf({ length: 'cm', mass: 'kg', mark: '.' });
const format = {
  ...writer,
  spokenLength: (length: number) => writer.spokenLength(length).replaceAll('\u{202f}', ' '),
};
const story = (fit: Fit, before: Fit | null = null, index = 0) =>
  showStory(shown(fit), { index, before: before && shown(before), format, words: english });

/** A setting with much wrong: pad far forward, rest hardly turned, no strap. */
function poor(): Fit {
  const seat = exampleSeat();
  return exampleFit([
    {
      ...seat,
      kneePad: { ...seat.kneePad, aftM: 0.05 },
      rearRest: { ...seat.rearRest, turnDeg: 1, strap: 'none' },
    },
  ]);
}

describe('an athlete’s story', () => {
  it('is none for an empty seat or one that is not there', () => {
    expect(story(exampleFit([exampleSeat({ athlete: null })]))).toBeNull();
    expect(story(exampleFit(), null, 2)).toBeNull();
  });

  it('says whose it is, which knee, which side', () => {
    const fit = exampleFit([exampleSeat({ athlete: exampleAthlete({ name: 'Žofie' }), side: 'right' })]);
    expect(story(fit)).toMatchObject({ athleteName: 'Žofie', kneels: 'right', paddles: 'right' });
  });

  it('says of each finding outside its band just what its athlete sentence says, gravest first', () => {
    const fit = poor();
    const { watch } = story(fit)!;
    const { findings } = shown(fit).report;
    expect(watch.length).toBeGreaterThan(0);
    for (const { sentence } of watch)
      expect(findings.map((finding) => athleteSentence(finding))).toContain(sentence);
    const stops = watch.map(({ stop }) => stop);
    expect(stops).toEqual([...stops].sort((a, b) => Number(b) - Number(a)));
  });

  it('does not ask an athlete to look after what is in its band', () => {
    const { watch } = story(exampleFit())!;
    for (const { sentence } of notEmpty(watch)) expect(sentence).not.toContain('Fine, but close to the edge');
  });

  it('has nothing to tell of changes without an earlier setting, or when nothing moved', () => {
    expect(story(exampleFit())!.changes).toEqual([]);
    expect(story(exampleFit(), exampleFit())!).toMatchObject({ changes: [], reasons: [] });
  });

  it('tells what moved, and what got better by it', () => {
    const { changes, reasons } = story(exampleFit(), poor())!;
    const what = changes.map((change) => change.what);
    expect(what).toContain('Your knee pad goes 12.5 cm back.');
    expect(what).toContain('Your foot strap opens by itself now.');
    expect(reasons.length).toBeGreaterThan(0);
    for (const { before, now } of reasons) expect(before).not.toBe(now);
  });

  it('says that a knee opens, or the bow rises, only where the figures do', () => {
    const moved = (part: 'kneePad' | 'frontFoot', to: object) => {
      const seat = exampleSeat();
      return exampleFit([{ ...seat, [part]: { ...seat[part], ...to } }]);
    };
    const aft = moved('kneePad', { aftM: exampleSeat().kneePad.aftM + 0.03 });
    const back = moved('frontFoot', { forwardM: exampleSeat().frontFoot.forwardM - 0.06 });
    const slight = moved('kneePad', { aftM: exampleSeat().kneePad.aftM + 0.002 });
    for (const fit of [aft, back, slight]) {
      const opened =
        shown(fit).report.seats[0]!.stances.ready.angles.frontKnee -
        shown(exampleFit()).report.seats[0]!.stances.ready.angles.frontKnee;
      const { feel } = story(fit, exampleFit())!;
      expect(feel.some((sentence) => sentence.includes('knee opens'))).toBe(opened >= toRadians(2));
    }
    expect(story(aft, exampleFit())!.feel).toContain('The bow sits a little higher.');
    expect(story(slight, exampleFit())!.feel.join(' ')).not.toMatch(/opens|bow/);
  });

  it('gives no reason for what got worse', () => {
    // A poor setting after a good one: nothing of it got better.
    expect(story(poor(), exampleFit())!.reasons).toEqual([]);
  });

  it('never says anything twice, nor more than can be taken in', () => {
    for (const fit of [exampleFit(), poor()]) {
      const { good, watch } = story(fit, exampleFit())!;
      expect(new Set(good).size).toBe(good.length);
      expect(new Set(watch.map(({ sentence }) => sentence)).size).toBe(watch.length);
      expect(good.length).toBeLessThanOrEqual(4);
      expect(watch.length).toBeLessThanOrEqual(4);
    }
  });

  it('is free of jargon and of body mass from end to end', () => {
    const { good, watch, changes, feel, reasons } = story(poor(), exampleFit())!;
    const all = [
      ...good,
      ...watch.map(({ sentence }) => sentence),
      ...changes.map(({ what }) => what),
      ...feel,
      ...reasons.flatMap(({ before, now }) => [before, now]),
    ];
    for (const sentence of notEmpty(all)) {
      for (const word of BARRED_WORDS) expect(sentence.toLowerCase()).not.toMatch(new RegExp(`\\b${word}`));
    }
  });
});
