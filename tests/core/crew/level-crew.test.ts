import { describe, expect, it } from 'vitest';
import { compareOrders, rankOrders } from '../../../core/crew/compare-orders.ts';
import { contributions } from '../../../core/crew/contributions.ts';
import { levelCrew } from '../../../core/crew/level-crew.ts';
import { changeSide, reseat, swapSeats } from '../../../core/crew/swap-seats.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import type { Seat } from '../../../core/document/seat-schema.ts';
import { createEvaluator } from '../../../core/evaluation/evaluator.ts';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { usualHull } from '../../../core/hull/usual-hull.ts';
import { floatAtRest } from '../../../core/hydrostatics/float-at-rest.ts';
import { waterDensity } from '../../../core/hydrostatics/water-density.ts';
import { kinematicViscosity } from '../../../core/under-way/friction.ts';
import { resistance } from '../../../core/under-way/resistance.ts';
import { cases } from '../../cases.ts';
import { notEmpty } from '../../not-empty.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../example/example-fit.ts';

const crewSeat = (side: 'left' | 'right', massKg: number): Seat => {
  const seat = exampleSeat({ athlete: exampleAthlete({ massKg, side }), side });
  return { ...seat, kneePad: { ...seat.kneePad, outM: 0.07, heightM: 0.13 } };
};
const evaluator = createEvaluator();

describe('a mirrored pair', () => {
  const fit = exampleFit([crewSeat('left', 78), crewSeat('right', 78)]);

  it('holds no side moment at all', () => {
    expect(Math.abs(evaluator.evaluate(fit).balance!.steadyMoment)).toBeLessThan(1e-9);
  });

  it('changing a paddler’s side mirrors the setting and leans the boat', () => {
    const same = changeSide(fit, 1);
    expect(same.seats[1]!.side).toBe('left');
    expect(same.seats[1]!.athlete!.side).toBe('left');
    expect(Math.abs(evaluator.evaluate(same).balance!.steadyMoment)).toBeGreaterThan(0.001);
  });
});

describe('swapping', () => {
  const fit = exampleFit([crewSeat('left', 92), crewSeat('right', 70)]);

  it('twice is as before', () => {
    expect(swapSeats(swapSeats(fit, 0, 1), 0, 1)).toEqual(fit);
  });

  it('equals seating in that order', () => {
    expect(swapSeats(fit, 0, 1)).toEqual(reseat(fit, [1, 0]));
  });

  it('the heavier paddler forward lowers the bow', () => {
    const trim = (f: typeof fit) => {
      const afloat = evaluator.evaluate(f).afloat.ready;
      return afloat.kind === 'afloat' ? afloat.bowOverStern : Number.NaN;
    };
    expect(trim(fit)).toBeLessThan(trim(swapSeats(fit, 0, 1)));
  });

  it('refuses an order that is not a permutation', () => {
    expect(() => reseat(fit, [0, 0])).toThrow(RangeError);
  });
});

describe('levelCrew', () => {
  const fit = exampleFit([crewSeat('left', 88), crewSeat('right', 70)]);
  const levelled = levelCrew(evaluator, fit);

  it('brings trim and side moment to target within two tenths of a millimetre', () => {
    expect(Math.abs(levelled.missing!.trim)).toBeLessThan(2e-4);
    expect(Math.abs(levelled.missing!.offCentre)).toBeLessThan(2e-4);
  });

  it('keeps every stance: joint angles stay within 0.6°', () => {
    const before = evaluator.evaluate(fit);
    for (const seat of [0, 1]) {
      const was = before.seats[seat]!.stances.ready.angles;
      const is = levelled.report.seats[seat]!.stances.ready.angles;
      for (const key of Object.keys(was) as (keyof typeof was)[]) {
        expect(Math.abs(is[key] - was[key]), key).toBeLessThan((0.6 * Math.PI) / 180);
      }
    }
  });

  it('leaves a locked seat where it is', () => {
    const locked = {
      ...fit,
      seats: fit.seats.map((s, i) => (i === 0 ? { ...s, locks: ['kneePad' as const] } : s)),
    };
    expect(levelCrew(evaluator, locked).shifts[0]).toEqual({ aft: 0, out: 0 });
  });
});

describe('seating orders of a four', () => {
  const fit = exampleFit([
    crewSeat('left', 70),
    crewSeat('right', 95),
    crewSeat('left', 80),
    crewSeat('right', 75),
  ]);
  const orders = [...compareOrders(evaluator, fit)];

  it('are all 24, and the best is the best of a brute-force search by whole evaluations', () => {
    expect(orders).toHaveLength(24);
    // The quick run weighs every eighth order and the one ranked first; the long run all of them.
    const [best] = rankOrders(orders);
    const brute = orders
      .filter((one, i) => one === best || i % cases(12, 1) === 0)
      .map(({ order }) => {
        const report = createEvaluator().evaluate(reseat(fit, order));
        const afloat = report.afloat.ready;
        if (afloat.kind !== 'afloat') return Number.POSITIVE_INFINITY;
        const seats = reseat(fit, order).seats;
        const same = seats.filter((s, i) => i > 0 && s.side === seats[i - 1]!.side).length;
        return (
          1000 * (Math.abs(afloat.bowOverStern - 0.01) + Math.abs(report.balance!.offCentre)) + 20 * same
        );
      })
      .sort((a, b) => a - b);
    expect(best!.score).toBeCloseTo(brute[0]!, 4);
  });
});

describe('what the water says of seating orders', () => {
  const fit = exampleFit([crewSeat('left', 70), crewSeat('right', 95)]);
  const [now, other] = [...compareOrders(evaluator, fit)];

  it('is nothing for the order as it is', () => {
    expect(now!.sinkage).toBeCloseTo(0, 9);
    expect(now!.water!.newtons).toBeCloseTo(0, 3);
    expect(now!.water!.sd).toBeCloseTo(0, 3);
  });

  it('is what towing the boat as it then floats takes, less what it takes now', () => {
    const towedNow = (seated: Fit) => {
      const { afloat } = createEvaluator().evaluate(seated);
      if (afloat.ready.kind !== 'afloat') throw new Error('the pair must float');
      const { draft, trim, heel } = afloat.ready;
      const water = {
        waterDensity: waterDensity(seated.water),
        kinematicViscosity: kinematicViscosity(seated.water.temperatureC),
      };
      const { total } = resistance(hullOfBoat(seated.boat), {
        draft,
        trim,
        heel,
        speed: 4.6,
        airDragArea: 0.6,
        ...water,
      });
      return { draft, total };
    };
    const [before, after] = [towedNow(fit), towedNow(reseat(fit, [1, 0]))];
    expect(other!.sinkage).toBeCloseTo(after.draft - before.draft, 5);
    expect(other!.water!.newtons).toBeCloseTo(after.total - before.total, 1);
    // The heavier paddler moved: the trim changes, and its cost is told with a doubt, far below one per cent of the whole.
    expect(Math.abs(other!.trim! - now!.trim!)).toBeGreaterThan(0.005);
    expect(other!.water!.sd).toBeGreaterThan(0);
    expect(Math.abs(other!.water!.share)).toBeLessThan(0.02);
  });
});

describe('contributions', () => {
  it('add up: side moments of paddlers, pads and rests make the boat’s steady moment within the pads’ part', () => {
    const fit = exampleFit([crewSeat('left', 88), crewSeat('right', 70)]);
    const report = evaluator.evaluate(fit);
    const rows = contributions(fit, report);
    const sum = rows.reduce((total, row) => total + row.sideMoment, 0);
    expect(rows[0]!.massKg).toBeCloseTo(88.75, 9);
    expect(rows[1]!.massKg).toBeCloseTo(70.75, 9);
    expect(Math.abs(sum - report.balance!.steadyMoment)).toBeLessThan(1.5);
    expect(rows[0]!.trimMoment).toBeLessThan(0);
    expect(rows[1]!.trimMoment).toBeGreaterThan(0);
  });
});

describe('what one paddler does to the trim', () => {
  it('is what a kilogram more in the same place does, times the mass: about the centre of flotation', () => {
    const fit = exampleFit([crewSeat('left', 88), crewSeat('right', 70)]);
    const boat = usualHull({ boatClass: 'C2' });
    const own = { ...fit, boat: { ...boat, seats: fit.boat.seats } };
    const report = evaluator.evaluate(own);
    const rest = report.afloat.ready;
    if (rest.kind !== 'afloat') throw new Error(rest.kind);
    // An even keel would hide it.
    expect(Math.abs(rest.waterplane.lcf)).toBeGreaterThan(0.01);
    const whole = { mass: rest.massKg, ...rest.centreOfMass };
    for (const { seat, massKg, bowOverStern } of notEmpty(contributions(own, report))) {
      const extra = { mass: 0.1, ...report.seats[seat]!.stances.ready.centreOfMass };
      const more = floatAtRest(hullOfBoat(own.boat), {
        masses: [whole, extra],
        waterDensity: waterDensity(own.water),
      });
      if (more.kind !== 'afloat') throw new Error(more.kind);
      const perKg = (more.bowOverStern - rest.bowOverStern) / extra.mass;
      expect((perKg * massKg) / bowOverStern).toBeCloseTo(1, 1);
    }
  });
});

describe('the limits of levelling', () => {
  const fit = exampleFit([crewSeat('left', 88), crewSeat('right', 70)]);
  const hardware = { ...fit.boat.hardware, padTravelM: [-1, 2], restTravelM: [-1, 2] } as const;
  const loose = { ...fit, boat: { ...fit.boat, hardware: { ...hardware } } } as unknown as Fit;

  it('are 25 cm either way, however far the hardware would go', () => {
    const { shifts, missing } = levelCrew(evaluator, loose, { trim: 0.4, offCentre: 0 });
    for (const { aft } of notEmpty(shifts)) expect(aft).toBeCloseTo(0.25, 6);
    expect(missing!.trim).toBeLessThan(-0.01);
  });

  it('hold a seat with a locked fitting, not one whose paddle alone is locked', () => {
    const locked = (lock: 'paddle' | 'kneePad') => ({
      ...fit,
      seats: fit.seats.map((seat) => ({ ...seat, locks: [lock] })),
    });
    const moved = (of: Fit) => levelCrew(evaluator, of).shifts.some(({ aft, out }) => aft !== 0 || out !== 0);
    expect(moved(locked('paddle'))).toBe(true);
    expect(moved(locked('kneePad'))).toBe(false);
  });
});

it('a paddler who kneels on the other side kneels there on the other side too once sides are changed', () => {
  const odd = exampleFit([{ ...crewSeat('left', 78), kneels: 'right' }, crewSeat('right', 78)]);
  expect(changeSide(odd, 0).seats[0]).toMatchObject({ side: 'right', kneels: 'left' });
  expect(changeSide(changeSide(odd, 0), 0)).toEqual(odd);
});

it('an order’s score is millimetres off trim and centre, and 20 for each pair of neighbours on a side', () => {
  const same = exampleFit([crewSeat('left', 80), crewSeat('left', 75)]);
  for (const { score, trim, offCentre, sameSideNeighbours } of notEmpty([
    ...compareOrders(evaluator, same),
  ])) {
    expect(sameSideNeighbours).toBe(1);
    expect(score).toBeCloseTo(1000 * (Math.abs(trim! - 0.01) + Math.abs(offCentre!)) + 20, 9);
  }
});
