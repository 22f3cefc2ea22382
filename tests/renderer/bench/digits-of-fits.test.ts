import { describe, expect, it } from 'vitest';
import { formatFor } from '../../../app/language/format.ts';
import { type Athlete, athleteSchema } from '../../../core/document/athlete-schema.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { createEvaluator } from '../../../core/evaluation/evaluator.ts';
import type { Quantity } from '../../../core/evaluation/finding.ts';
import { shownOf } from '../../../core/evaluation/probability.ts';
import { type QuantityId, quantityDefinition } from '../../../core/evaluation/quantities.ts';
import { fixingNotes } from '../../../core/setout/order-of-work.ts';
import { setOutSeat } from '../../../core/setout/set-out.ts';
import { showStory } from '../../../core/show/show-story.ts';
import { isYesOrNo } from '../../../core/text/sentences.ts';
import { quantityText } from '../../../renderer/bench/quantity-text.ts';
import { noteText } from '../../../renderer/bench/tabs/findings/note-text.ts';
import { cases } from '../../cases.ts';
import { english } from '../../english.ts';
import { notEmpty } from '../../not-empty.ts';
import { boatOf, crewFit, randomAthletes } from '../../reference/proposal-random.ts';

const format = formatFor({ length: 'cm', mass: 'kg', decimal: 'point' });
const evaluator = createEvaluator();

const athlete = (
  name: string,
  sex: 'male' | 'female',
  [statureM, massKg]: [number, number],
  more = {},
): Athlete => athleteSchema.parse({ name, sex, side: 'left', statureM, massKg, ...more });
const junior = athlete('Junior', 'female', [1.48, 40], { bornOn: '2014-05-01', measuredOn: '2026-05-01' });
const heavy = athlete('Heavy', 'male', [1.92, 98]);
const light = athlete('Light', 'female', [1.6, 47]);
const known = athlete('Measured', 'male', [1.8, 79], { tape: { sittingHeight: { valueM: 0.94 } } });

/** Three singles and two crew boats with bodies far apart; the quick run takes a junior and a pair. */
const FITS: readonly (readonly [string, () => Fit])[] = [
  ['a junior in the sample single', () => crewFit(boatOf('single'), [junior])],
  ['a pair, heavy and light', () => crewFit(boatOf('pair'), [heavy, light])],
  ['somebody heavy in the training boat', () => crewFit(boatOf('training'), [heavy])],
  [
    'somebody light in the single, its mark amidships',
    () => crewFit(boatOf('single, mark at mid-length'), [light]),
  ],
  ['somebody measured in the sample single', () => crewFit(boatOf('single'), [known])],
  ['a junior in the training boat', () => crewFit(boatOf('training'), [junior])],
  ['a four, random', () => crewFit(boatOf('four'), randomAthletes(3, 4))],
];

/** Shown units: of one SI unit so many, and the usual places after the decimal mark. */
const UNITS: Readonly<Record<string, { perSi: number; places: number }>> = {
  mm: { perSi: 1000, places: 0 },
  cm: { perSi: 100, places: 1 },
  '°': { perSi: 180 / Math.PI, places: 0 },
  '%': { perSi: 100, places: 0 },
  N: { perSi: 1, places: 0 },
  kPa: { perSi: 1e-3, places: 0 },
  N·m: { perSi: 1, places: 1 },
  'N·m/°': { perSi: 1, places: 1 },
  kg: { perSi: 1, places: 1 },
};

/** Quantities whose usual step is finer than their unit's. */
const finer = (id: QuantityId, unit: string) => {
  const { step } = quantityDefinition(id)!;
  if (unit === '°' && step < 0.005) return 2;
  return unit === '%' && step < 0.01 ? 1 : UNITS[unit]!.places;
};

/**
 * Where a value ends by its doubt: the rule of the Particle Data Group in its own words. The three highest figures of the doubt: from 100
 * to 354, two of them stay; from 355 to 949, one; from 950 they count as 1000, of which two stay: the same place.
 */
function lastPlace(half: number): number {
  const [figures, power] = half.toExponential(2).split('e') as [string, string];
  const three = Math.round(100 * Number(figures));
  return (three <= 354 ? 1 : 0) - Number(power);
}

/** Numbers of a text with the unit that follows them, or follows the last of their row. */
function numbersOf(text: string): { figure: string; unit: string }[] {
  const found = [...text.matchAll(/(\d+(?:\.\d+)?)(?:\u{202f}?(mm|cm|°|%|N·m\/°|N·m|N|kPa|kg))?/gu)];
  const last = found.at(-1)?.[2] ?? '';
  return found.map(([, figure, unit]) => ({ figure: figure!, unit: unit ?? last }));
}

/** What is wrong with the digits of a text; empty where all is right. */
function wrongDigits(text: string, id: QuantityId, half: number): string[] {
  return numbersOf(text).flatMap(({ figure, unit }) => {
    const shown = UNITS[unit];
    if (!shown) return [`${id}: “${text}” has no unit that is known`];
    const most = finer(id, unit);
    const wanted = half > 0 ? Math.min(most, lastPlace(half * shown.perSi)) : most;
    const places = figure.split('.')[1]?.length ?? 0;
    if (places !== Math.max(0, wanted)) return [`${id}: “${text}”, ± ${half * shown.perSi}: wants ${wanted}`];
    const grain = 10 ** -wanted;
    const whole = wanted >= 0 || Number(figure) % grain === 0;
    return whole ? [] : [`${id}: “${text}”, ± ${half * shown.perSi}: is not of ${grain}`];
  });
}

/** Half of the 95 % interval of what is shown of a value (1.96 standard deviations, any table of the normal). */
const halfOf = (quantity: Quantity) => 1.96 * (shownOf(quantity).sd ?? 0);

describe.each(FITS.slice(0, cases(2, FITS.length)))('every number shown of %s', (_, make) => {
  const fit = make();
  const report = evaluator.evaluate(fit);

  it('in headings of findings ends where its doubt ends', () => {
    const wrong = report.findings.flatMap((finding) => {
      if (isYesOrNo(finding.quantity) || finding.unreached) return [];
      const title = noteText(finding, format).title;
      const name = english.say(`quantity.${finding.quantity}.name` as 'quantity.padAft.name');
      return wrongDigits(title.slice(name.length), finding.quantity as QuantityId, 1.96 * (finding.sd ?? 0));
    });
    expect(wrong).toEqual([]);
  });

  it('among the values ends where its doubt ends', () => {
    const wrong = notEmpty(report.quantities).flatMap((quantity) =>
      quantity.unreached || isYesOrNo(quantity.id)
        ? []
        : wrongDigits(quantityText(quantity, format), quantity.id as QuantityId, halfOf(quantity)),
    );
    expect(wrong).toEqual([]);
  });

  it('on the workshop sheet: what the pad’s fixing must hold, in tens or what its doubt allows', () => {
    for (const index of fit.seats.keys()) {
      const out = setOutSeat({ fit, report, index, options: { units: 'mm' }, words: english })!;
      const forces = notEmpty(fixingNotes(out).flatMap((note) => [...note.matchAll(/(\d+).N\b/gu)]));
      const of = (id: QuantityId) => report.quantities.find((q) => q.id === id && q.seat === index)!;
      forces.forEach(([, shown], i) => {
        const grain = 10 ** Math.max(1, 0 - lastPlace(halfOf(of(i === 0 ? 'padFixing' : 'padFixingSide'))));
        expect(Number(shown) % grain, shown).toBe(0);
      });
    }
  });

  it('in Show there is none with a doubt: an athlete is told no figures of the body', () => {
    for (const index of fit.seats.keys()) {
      const story = showStory({ fit, report }, { index, before: null, format, words: english })!;
      const told = notEmpty([...story.good, ...story.watch.map(({ sentence }) => sentence), ...story.feel]);
      for (const sentence of told) expect(sentence).not.toMatch(/\d/);
    }
  });
});
