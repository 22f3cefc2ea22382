import { describe, expect, it } from 'vitest';
import { estimateBody } from '../../../core/body/estimate-body.ts';
import type { Boat } from '../../../core/document/boat-schema.ts';
import { BANDS } from '../../../core/evaluation/bands.ts';
import { createEvaluator } from '../../../core/evaluation/evaluator.ts';
import { findQuantity, type QuantityId } from '../../../core/evaluation/quantities.ts';
import { firstSetting } from '../../../core/optimise/first-setting.ts';
import { sampleBoat } from '../../reference/proposal-random.ts';
import { exampleAthlete, exampleFit } from '../example/example-fit.ts';

const evaluator = createEvaluator();

/** Small, middling and tall; light and heavy. */
const PEOPLE = [
  { sex: 'female', stature: 1.5, mass: 45 },
  { sex: 'female', stature: 1.68, mass: 63 },
  { sex: 'male', stature: 1.8, mass: 78 },
  { sex: 'male', stature: 2, mass: 100 },
] as const;

/** The whole boat begun by paddlers of one size, sides alternating, and its report. */
function begun(boat: Boat, who: (typeof PEOPLE)[number]) {
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

describe.each(PEOPLE)('the first setting of $sex, $stature m, $mass kg', (who) => {
  it.each(['single', 'training', 'pair', 'four'] as const)(
    'in the sample %s has nothing to change',
    (name) => {
      const { report } = begun(sampleBoat(name), who);
      // Each first setting is made alone: the room between two seats, as the whole boat's trim, is left to a proposal.
      const own = report.findings.filter((f) => f.quantity !== 'toNextSeat');
      const serious = own.filter((f) => f.severity === 'change' || f.severity === 'stop');
      expect(serious.map((f) => f.id)).toEqual([]);
    },
  );

  it('in a single stands well inside the bands of what is set', () => {
    const { value } = begun(sampleBoat('single'), who);
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
      expect(inside, id).toBeGreaterThan(0.19);
    }
  });

  it('is the same mirrored', () => {
    const boat = sampleBoat('training');
    const at = (side: 'left' | 'right') => firstSetting({ body: estimateBody(who), boat, stationX: 0, side });
    expect({ ...at('right'), side: 'left' }).toEqual(at('left'));
  });
});

describe('where the knee of a single begins', () => {
  const who = PEOPLE[2];
  const aft = (boat: Boat) => begun(boat, who).seats[0]!.kneePad.aftM;

  it('follows the hull: a mark set farther aft has it farther forward, within 16 to 19 cm', () => {
    const marks = [-0.06, -0.02, 0, 0.03, 0.08].map((mark) => aft(withDatum(sampleBoat('single'), mark)));
    expect(marks).toEqual(marks.toSorted((a, b) => a - b));
    expect(marks[0]).toBeCloseTo(0.16, 9);
    expect(marks.at(-1)).toBeCloseTo(0.19, 9);
  });

  it('brings the bow slightly above the stern where the band leaves room for it', () => {
    const boat = withDatum(sampleBoat('single'), 0.01);
    const free = { ...boat, hardware: { ...boat.hardware, padHolePitchM: null } };
    const { seats, value } = begun(free, who);
    expect(seats[0]!.kneePad.aftM).toBeGreaterThan(0.16);
    expect(seats[0]!.kneePad.aftM).toBeLessThan(0.19);
    expect(value('trimRest', null)).toBeCloseTo(0.007, 3);
  });

  it('is the usual place where the boat does not float', () => {
    const boat = {
      ...sampleBoat('single'),
      massKg: 200,
      hardware: { ...sampleBoat('single').hardware, padHolePitchM: null },
    };
    const heavy = firstSetting({
      body: estimateBody({ ...who, mass: 800 }),
      boat,
      stationX: 0,
      side: 'left',
    });
    expect(heavy.kneePad.aftM).toBe(0.175);
  });
});
