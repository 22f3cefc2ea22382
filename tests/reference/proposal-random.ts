import { readDemo } from '../../app/demo/scenario.ts';
import { bodyOfAthlete } from '../../core/body/body-of-athlete.ts';
import type { Finding } from '../../core/findings/finding.ts';
import { type Athlete, athleteSchema } from '../../core/fit/athlete-schema.ts';
import type { Boat } from '../../core/fit/boat-schema.ts';
import type { Evaluator } from '../../core/fit/evaluator.ts';
import { type Fit, fitSchema } from '../../core/fit/fit-schema.ts';
import { type Proposal, propose } from '../../core/proposal/propose.ts';
import { firstSetting } from '../../core/proposal/first-setting.ts';
import type { SampleHull } from './hydro-sample-hulls.ts';

/** The invented club's boats, each of one of the sample hulls. */
const BOATS = readDemo(new URL('../../assets', import.meta.url).pathname).boats;
const PLACES: Readonly<Record<SampleHull, number>> = { single: 0, training: 1, pair: 2, four: 3 };

export function sampleBoat(name: SampleHull): Boat {
  return BOATS[PLACES[name]]!;
}

/** Seeded uniform numbers in (0, 1): mulberry32. */
function uniform(seed: number): () => number {
  let a = seed;
  return () => {
    a = (a + 0x6d2b79f5) | 0;
    let t = Math.imul(a ^ (a >>> 15), 1 | a);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return (((t ^ (t >>> 14)) >>> 0) + 0.5) / 4294967296;
  };
}

/**
 * Invented athletes: stature about 1.66 m (women) and 1.78 m (men) with a standard deviation of 8 cm, from 1.48 to 2.02 m;
 * body-mass index about 22.5, from 18.5 to 28. Without tape measures, so that every length has its full doubt.
 */
export function randomAthletes(seed: number, count: number): Athlete[] {
  const next = uniform(seed);
  const normal = () => Math.sqrt(-2 * Math.log(next())) * Math.cos(2 * Math.PI * next());
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

/**
 * A first setting for every seat of a boat, changing sides. Every seat has a paddler of the same measures: how people of
 * different size sit in one boat is the crew's order, which a proposal leaves alone.
 */
export function firstFit(boat: Boat, athlete: Athlete): Fit {
  const body = bodyOfAthlete(athlete);
  const seats = boat.seats.map(({ stationM }, i) => {
    const side = (athlete.side === 'left') === (i % 2 === 0) ? ('left' as const) : ('right' as const);
    return { ...firstSetting({ body, boat, stationX: stationM, side }), athlete };
  });
  return fitSchema.parse({ format: 'kneelwright-fit/1', name: 'First setting', boat, seats });
}

/** A proposal with what it could not clear, and who for. */
export interface Tried {
  readonly proposal: Proposal;
  readonly who: string;
}

export function proposeFirst(evaluator: Evaluator, boat: Boat, athlete: Athlete): Tried {
  const { sex, statureM, massKg } = athlete;
  return { proposal: propose(evaluator, firstFit(boat, athlete)), who: `${sex} ${statureM} m ${massKg} kg` };
}

/** Why a proposal is not clean: each finding left, its value and band. SI. */
export function reasonFor({ proposal, who }: Tried): string {
  const told = proposal.uncleared.map(
    ({ id, value, severity, band }: Finding) =>
      `${id} ${severity} ${value.toFixed(4)} outside ${band.min ?? '…'} to ${band.max ?? '…'}`,
  );
  return `${who}: ${told.join('; ')}`;
}
