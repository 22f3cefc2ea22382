import { describe, expect, it } from 'vitest';
import { estimateBody } from '../../../core/body/estimate-body.ts';
import type { Boat } from '../../../core/document/boat-schema.ts';
import { BANDS } from '../../../core/evaluation/bands.ts';
import { createEvaluator } from '../../../core/evaluation/evaluator.ts';
import { findQuantity, type QuantityId } from '../../../core/evaluation/quantities.ts';
import { firstSetting } from '../../../core/optimise/first-setting.ts';
import { LONG } from '../../cases.ts';
import type { SampleHull } from '../../reference/hydro-sample-hulls.ts';
import { sampleBoat } from '../../reference/proposal-random.ts';
import { exampleAthlete, exampleFit } from '../example/example-fit.ts';

const evaluator = createEvaluator();

/** Small, middling and tall; light and heavy. The quick run takes the first and the last. */
const PEOPLE = [
  { sex: 'female', stature: 1.5, mass: 45 },
  { sex: 'female', stature: 1.68, mass: 63 },
  { sex: 'male', stature: 1.8, mass: 78 },
  { sex: 'male', stature: 2, mass: 100 },
] as const;

const made = new Map<string, ReturnType<typeof begin>>();

/** The same boat begun by the same paddlers, made once. */
function begunIn(name: SampleHull, who: (typeof PEOPLE)[number]) {
  const key = `${name} ${PEOPLE.indexOf(who)}`;
  const one = made.get(key) ?? begin(sampleBoat(name), who);
  made.set(key, one);
  return one;
}

/** The whole boat begun by paddlers of one size, sides alternating, and its report. */
function begin(boat: Boat, who: (typeof PEOPLE)[number]) {
  const athlete = exampleAthlete({ sex: who.sex, statureM: who.stature, massKg: who.mass });
  const seats = boat.seats.map(({ stationM }, i) => {
    const side = i % 2 === 0 ? 'left' : 'right';
    return { ...firstSetting({ body: estimateBody(who), boat, stationX: stationM, side }), athlete };
  });
  const fit = { ...exampleFit(seats.slice(0, 1)), boat, seats };
  const report = evaluator.evaluate(fit);
  const value = (id: QuantityId, seat: number | null) => findQuantity(report.quantities, id, seat)!.value;
  return { seats, report, value };
}

const withDatum = (boat: Boat, stationM: number): Boat => ({ ...boat, seats: [{ stationM }] });

const LARGER: readonly SampleHull[] = ['training', 'pair', 'four'];

/** The boats that somebody is put into: the quick run takes the single and one larger, the pair or the four; the long run all. */
function boatsFor(who: (typeof PEOPLE)[number]): SampleHull[] {
  const one = who === PEOPLE[0] ? 1 : 2;
  return ['single', ...LARGER.filter((_, i) => LONG || i === one)];
}

describe.each(PEOPLE.filter((_, i) => LONG || i % (PEOPLE.length - 1) === 0))(
  'the first setting of $sex, $stature m, $mass kg',
  (who) => {
    it.each(boatsFor(who))('in the sample %s has nothing to change', (name) => {
      const { report } = begunIn(name, who);
      // Each first setting is made alone: the room between two seats, as the whole boat's trim, is left to a proposal.
      const own = report.findings.filter((f) => f.quantity !== 'toNextSeat');
      const serious = own.filter((f) => f.severity === 'change' || f.severity === 'stop');
      expect(serious.map((f) => f.id)).toEqual([]);
    });

    it('in a single stands well inside the bands of what is set', () => {
      const { value } = begunIn('single', who);
      for (const id of [
        'padAft',
        'padOut',
        'padHeight',
        'restTurn',
        'recessTurn',
        'paddleUnderStature',
      ] as const) {
        const { min, max } = BANDS.find((b) => b.quantity === id)!;
        const inside = Math.min(value(id, 0) - min!, max! - value(id, 0)) / (max! - min!);
        expect(inside, id).toBeGreaterThan(0.12);
      }
    });

    it('stands in whole millimetres', () => {
      const { seats } = begunIn('single', who);
      const { kneePad, rearRest, frontFoot } = seats[0]!;
      for (const at of [kneePad.aftM, kneePad.outM, kneePad.heightM, rearRest.outM, frontFoot.forwardM])
        expect(Math.abs(at * 1000 - Math.round(at * 1000)), String(at)).toBeLessThan(1e-6);
    });

    it('is the same mirrored', () => {
      const boat = sampleBoat('training');
      const at = (side: 'left' | 'right') =>
        firstSetting({ body: estimateBody(who), boat, stationX: 0, side });
      expect({ ...at('right'), side: 'left' }).toEqual(at('left'));
    });
  },
);

describe('where the knee of a single begins', () => {
  const who = PEOPLE[2];
  const single = sampleBoat('single');
  const free = { ...single, hardware: { ...single.hardware, padHolePitchM: null } };
  const knee = (boat: Boat) => {
    const [{ stationM }] = boat.seats as [{ stationM: number }];
    return (
      stationM -
      firstSetting({ body: estimateBody(who), boat, stationX: stationM, side: 'left' }).kneePad.aftM
    );
  };

  it('follows the hull: it stands at about the same place of the boat, wherever the mark is', () => {
    const places = (LONG ? [-0.06, -0.03, 0, 0.03] : [-0.06, 0.03, 0]).map((mark) =>
      knee(withDatum(free, mark)),
    );
    for (const place of places) expect(Math.abs(place - places[2]!)).toBeLessThan(0.012);
  });

  it('holds the trim at rest and at the catch both well inside: the bow slightly high', () => {
    const { report } = begin(free, who);
    for (const quantity of ['trimRest', 'trimCatch'])
      expect(report.findings.find((f) => f.quantity === quantity)!.probability, quantity).toBeLessThan(0.1);
  });

  it('is near the usual place where the boat does not float', () => {
    const sunk = { ...free, massKg: 200 };
    const heavy = firstSetting({
      body: estimateBody({ ...who, mass: 240 }),
      boat: sunk,
      stationX: 0,
      side: 'left',
    });
    expect(Math.abs(heavy.kneePad.aftM - 0.18)).toBeLessThan(0.02);
  });
});

describe('the first settings of four bodies from 163 to 182 cm', () => {
  const pads = [1.63, 1.69, 1.76, 1.82].map((stature) => {
    const body = estimateBody({ stature, mass: 22 * stature ** 2, sex: 'unspecified' });
    const boat = { ...sampleBoat('single') };
    const free = { ...boat, hardware: { ...boat.hardware, padHolePitchM: null } };
    return firstSetting({ body, boat: free, stationX: 0, side: 'left' }).kneePad;
  });

  it('differ in place and height, and stand at no edge of the bands', () => {
    for (const axis of ['aftM', 'heightM'] as const)
      expect(new Set(pads.map((pad) => pad[axis])).size, axis).toBeGreaterThanOrEqual(3);
    for (const { aftM, outM, heightM } of pads) {
      expect(Math.min(aftM - 0.15, 0.2 - aftM)).toBeGreaterThan(0.004);
      expect(Math.min(outM - 0.02, 0.05 - outM)).toBeGreaterThan(0.003);
      expect(Math.min(heightM - 0.08, 0.15 - heightM)).toBeGreaterThan(0.004);
    }
  });
});

describe('a first setting for somebody with limits and bands of their own', () => {
  const who = PEOPLE[2];
  const boat = sampleBoat('single');
  const body = estimateBody(who);
  const reportOf = (own: Parameters<typeof firstSetting>[0]['own']) => {
    const setting = firstSetting({
      body,
      boat,
      stationX: boat.seats[0]!.stationM,
      side: 'left',
      ...(own && { own }),
    });
    const athlete = exampleAthlete({ statureM: who.stature, massKg: who.mass, limits: own?.limits ?? [] });
    const seat = { ...setting, athlete, bands: own?.bands ?? [] };
    return evaluator.evaluate({ ...exampleFit([seat]), boat });
  };
  const knee = (report: ReturnType<typeof reportOf>) =>
    (findQuantity(report.quantities, 'frontKnee', 0)!.value * 180) / Math.PI;

  it('keeps a knee that must not bend past an angle clear of it', () => {
    const limits = [{ joint: 'frontKneeFlexion' as const, maxDeg: 60, reason: 'invented' }];
    const limited = reportOf({ limits, bands: [] });
    expect(knee(reportOf(undefined))).toBeLessThan(120);
    expect(knee(limited)).toBeGreaterThan(120);
    expect(limited.findings.find(({ quantity }) => quantity === 'frontKnee')!.severity).toBe('good');
  });

  it("keeps to a coach's own band for this athlete", () => {
    const bands = [{ quantity: 'padHeight', min: 0.15, max: 0.17, reason: 'invented' }];
    const { findings, quantities } = reportOf({ limits: [], bands });
    expect(findQuantity(quantities, 'padHeight', 0)!.value).toBeGreaterThan(0.15);
    expect(findings.find(({ quantity }) => quantity === 'padHeight')!.severity).toBe('good');
  });
});
