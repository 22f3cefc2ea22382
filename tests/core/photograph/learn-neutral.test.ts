import { describe, expect, it } from 'vitest';
import { bodyOfAthlete } from '../../../core/body/body-of-athlete.ts';
import { athleteSchema } from '../../../core/document/athlete-schema.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { NEUTRAL_TERMS } from '../../../core/document/neutral-schema.ts';
import { evaluateFit } from '../../../core/evaluation/evaluator.ts';
import { seatFrame } from '../../../core/evaluation/seat-state.ts';
import { grownFit } from '../../../core/growth/grown-athlete.ts';
import { type ConfirmedLook, learnNeutral } from '../../../core/photograph/learn-neutral.ts';
import { solveStance } from '../../../core/posture/solve-stance.ts';
import { STANCE_UNKNOWNS, type Stance } from '../../../core/posture/stance.ts';
import { STANCE_TERMS } from '../../../core/posture/stance-terms.ts';
import { toRadians } from '../../../core/units/angle.ts';
import { cases, LONG } from '../../cases.ts';
import { exampleFit, exampleSeat } from '../example/example-fit.ts';
import { seeded } from './synthetic-picture.ts';

const READING_SD = toRadians(1);

/** A fit with the pad at another place and height. */
function fitWith(aftM: number, heightM: number): Fit {
  const seat = exampleSeat();
  return exampleFit([{ ...seat, kneePad: { ...seat.kneePad, aftM, heightM } }]);
}

function stanceOf(fit: Fit, strays?: readonly number[]): Stance {
  const seat = fit.seats[0]!;
  const body = bodyOfAthlete(seat.athlete!);
  const frame = seatFrame(fit.boat, seat, 0);
  return solveStance(strays ? { body, seat, frame, strays } : { body, seat, frame });
}

const withNeutral = (fit: Fit, neutral: ReturnType<typeof learnNeutral>): Fit => ({
  ...fit,
  seats: fit.seats.map((seat) => ({ ...seat, athlete: { ...seat.athlete!, neutral: neutral! } })),
});

const past = [fitWith(0.175, 0.11), fitWith(0.19, 0.14), fitWith(0.16, 0.09)];
const later = fitWith(0.2, 0.16);

/** A person with own strays, seen in three fits. */
function person(seed: number) {
  const random = seeded(seed);
  const strays = STANCE_TERMS.map((_, t) => (t < NEUTRAL_TERMS ? random.normal() : 0));
  const looks = past.map((fit): ConfirmedLook => {
    const { angles } = stanceOf(fit, strays);
    const read = (name: (typeof STANCE_UNKNOWNS)[number]) => ({
      value: angles[name] + READING_SD * random.normal(),
      sd: READING_SD,
    });
    return { fit, seat: 0, readings: Object.fromEntries(STANCE_UNKNOWNS.map((name) => [name, read(name)])) };
  });
  return { truth: stanceOf(later, strays), neutral: learnNeutral(looks, '2026-11-24')! };
}

describe('an athlete’s own neutral posture', () => {
  it('tells how the athlete will kneel in another setting, better than everybody’s does, and as surely as it says', () => {
    const off = { own: 0, everybodys: 0 };
    const inside: boolean[] = [];
    const usual = stanceOf(later).angles.trunkPitch;
    const persons = cases(4, 40);
    for (let seed = 1; seed <= persons; seed++) {
      const { truth, neutral } = person(seed);
      const report = evaluateFit(withNeutral(later, neutral));
      const told = report.seats[0]!.stances.ready.angles.trunkPitch;
      const { sd } = report.quantities.find(({ id }) => id === 'trunkPitch')!;
      off.own += (told - truth.angles.trunkPitch) ** 2;
      off.everybodys += (usual - truth.angles.trunkPitch) ** 2;
      inside.push(Math.abs(told - truth.angles.trunkPitch) < 1.96 * sd!);
    }
    expect(Math.sqrt(off.own)).toBeLessThan(0.5 * Math.sqrt(off.everybodys));
    expect(inside.filter(Boolean).length).toBeGreaterThanOrEqual(LONG ? 0.88 * persons : persons - 1);
  });

  it('is surer than everybody’s, and not at all where it is set aside', () => {
    const { neutral } = person(3);
    const sdOf = (fit: Fit) => evaluateFit(fit).quantities.find(({ id }) => id === 'trunkPitch')!.sd!;
    expect(sdOf(withNeutral(later, neutral))).toBeLessThan(0.6 * sdOf(later));
    const aside = withNeutral(later, { ...neutral, setAside: true });
    expect(sdOf(aside)).toBe(sdOf(later));
    expect(stanceOf(aside).angles).toEqual(stanceOf(later).angles);
  });

  it('is dated and part of the athlete’s document, which an older file parses without', () => {
    const { neutral } = person(5);
    const athlete = { ...exampleSeat().athlete!, neutral };
    expect(athleteSchema.parse(athlete)).toEqual(athlete);
    expect(neutral).toMatchObject({ learntOn: '2026-11-24', pictures: 3, setAside: false });
    expect(athleteSchema.parse(exampleSeat().athlete)).not.toHaveProperty('neutral');
  });

  it('is carried into a crew and through growth', () => {
    const { neutral } = person(5);
    const grown = grownFit(withNeutral(later, neutral), 0, { statureM: 1.84, massKg: 82 });
    expect(grown.seats[0]!.athlete!.neutral).toEqual(neutral);
    expect(stanceOf(grown).angles.trunkPitch).not.toBeCloseTo(
      stanceOf(grownFit(later, 0, { statureM: 1.84, massKg: 82 })).angles.trunkPitch,
      3,
    );
    const [own] = withNeutral(later, neutral).seats;
    const pair = evaluateFit(exampleFit([exampleSeat(), own!]));
    const alone = evaluateFit(withNeutral(later, neutral));
    const pitch = (report: typeof pair, seat: number) => report.seats[seat]!.stances.ready.angles.trunkPitch;
    expect(pitch(pair, 1)).toBeCloseTo(pitch(alone, 0), 6);
    expect(pitch(pair, 1)).not.toBeCloseTo(pitch(evaluateFit(later), 0), 3);
  });

  it('is not learnt from nothing', () => {
    expect(learnNeutral([], '2026-11-24')).toBeNull();
    expect(learnNeutral([{ fit: later, seat: 0, readings: {} }], '2026-11-24')).toBeNull();
  });
});
