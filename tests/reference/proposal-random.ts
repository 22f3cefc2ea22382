import { join } from 'node:path';
import { readDemo } from '../../app/demo/scenario.ts';
import { bodyOfAthlete } from '../../core/body/body-of-athlete.ts';
import { type Athlete, athleteSchema } from '../../core/document/athlete-schema.ts';
import type { Boat } from '../../core/document/boat-schema.ts';
import { type Fit, fitSchema } from '../../core/document/fit-schema.ts';
import { boardRoom } from '../../core/evaluation/board-room.ts';
import type { Finding } from '../../core/evaluation/finding.ts';
import { hullOfBoat } from '../../core/hull/hull-of-boat.ts';
import { firstSetting } from '../../core/optimise/first-setting.ts';
import { levelledFit } from '../../core/optimise/levelled-fit.ts';
import type { Proposal } from '../../core/optimise/propose.ts';
import { normalOf, uniform } from '../random32.ts';
import type { SampleHull } from './hydro-sample-hulls.ts';

/** The invented club's boats, each of one of the sample hulls. */
const BOATS = readDemo(join(import.meta.dirname, '../../assets')).boats;
const PLACES: Readonly<Record<SampleHull, number>> = { single: 0, training: 1, pair: 2, four: 3 };

export function sampleBoat(name: SampleHull): Boat {
  const boat = BOATS[PLACES[name]]!;
  const room = boardRoom(boat.floorboard, hullOfBoat(boat), boat.skinM);
  return room.least >= 0 ? boat : { ...boat, floorboard: { ...boat.floorboard, ...FITTING_BOARDS[name] } };
}

/** Boards for hulls whose own does not fit: no first setting can make such a boat's findings clean. */
const FITTING_BOARDS: Readonly<Record<SampleHull, Partial<Boat['floorboard']>>> = {
  single: { heightM: 0.05, widthM: 0.21, aftEndXM: -0.9, foreEndXM: 0.8 },
  training: { heightM: 0.03, widthM: 0.32, aftEndXM: -0.9, foreEndXM: 0.8 },
  pair: { heightM: 0.06, widthM: 0.2, aftEndXM: -1.65, foreEndXM: 1.55 },
  four: {
    heightM: 0.08,
    aftEndXM: -3,
    foreEndXM: 2.9,
    outline: [
      { xM: -3, widthM: 0.2 },
      { xM: -1, widthM: 0.3 },
      { xM: 1, widthM: 0.3 },
      { xM: 2.9, widthM: 0.2 },
    ],
  },
};

/**
 * Invented athletes: stature about 1.66 m (women) and 1.78 m (men) with a standard deviation of 8 cm, from 1.48 to 2.02 m;
 * body-mass index about 22.5, from 18.5 to 28. Without tape measures, so that every length has its full doubt.
 */
export function randomAthletes(seed: number, count: number): Athlete[] {
  const next = uniform(seed);
  const normal = normalOf(next);
  const within = (value: number, least: number, most: number) => Math.min(most, Math.max(least, value));
  return Array.from({ length: count }, (_, i) => {
    const sex = next() < 0.5 ? 'female' : 'male';
    const statureM = within((sex === 'male' ? 1.78 : 1.66) + 0.08 * normal(), 1.48, 2.02);
    const index = within(22.5 + 1.8 * normal(), 18.5, 28);
    return athleteSchema.parse({
      name: `Invented paddler ${i + 1}`,
      sex,
      side: next() < 0.5 ? 'left' : 'right',
      statureM: Number(statureM.toFixed(3)),
      massKg: Number((index * statureM ** 2).toFixed(1)),
    });
  });
}

/** The single with its centre mark at mid-length, 5 cm ahead of where its hull asks for it. */
export const MARK_AT_MIDDLE = 'single, mark at mid-length';

/** A sample hull's boat, or the single with its mark moved. */
export function boatOf(name: SampleHull | typeof MARK_AT_MIDDLE): Boat {
  return name === MARK_AT_MIDDLE ? { ...sampleBoat('single'), seats: [{ stationM: 0 }] } : sampleBoat(name);
}

/**
 * A first setting for every seat of a boat, changing sides: the athlete numbered `from` in the bow, those after it (and after
 * the last, the first) behind, as chance has them.
 */
export function crewFit(boat: Boat, athletes: readonly Athlete[], from = 0): Fit {
  const bow = athletes[from]!.side === 'left';
  const seats = boat.seats.map(({ stationM }, i) => {
    const athlete = athletes[(from + i) % athletes.length]!;
    const side = bow === (i % 2 === 0) ? ('left' as const) : ('right' as const);
    const body = bodyOfAthlete(athlete);
    return { ...firstSetting({ body, boat, stationX: stationM, side }), athlete: { ...athlete, side } };
  });
  return levelledFit(fitSchema.parse({ format: 'kneelwright-fit/1', name: 'First setting', boat, seats }));
}

/** The same for one athlete, in every seat. */
export function firstFit(boat: Boat, athlete: Athlete): Fit {
  return crewFit(boat, [athlete]);
}

/** Who a fit is for, seat by seat. */
export function crewText({ seats }: Fit): string {
  return seats
    .flatMap(({ athlete }) => (athlete ? [`${athlete.sex} ${athlete.statureM} m ${athlete.massKg} kg`] : []))
    .join(', ');
}

/** Why a proposal is not clean: each finding left, its value and band. SI. */
export function reasonFor({ fit, uncleared }: Proposal): string {
  const told = uncleared.map(
    ({ id, value, severity, band }: Finding) =>
      `${id} ${severity} ${value.toFixed(4)} outside ${band.min ?? '…'} to ${band.max ?? '…'}`,
  );
  return `${crewText(fit)}: ${told.join('; ')}`;
}
