import { bodyOfAthlete } from '../../core/body/body-of-athlete.ts';
import type { Fit } from '../../core/document/fit-schema.ts';
import { withCoordinate } from '../../core/document/fitting-coordinate.ts';
import { boatState, floatCrew } from '../../core/evaluation/boat-state.ts';
import { createEvaluator } from '../../core/evaluation/evaluator.ts';
import { seatFrame, solveSeat } from '../../core/evaluation/seat-state.ts';
import { propose } from '../../core/optimise/propose.ts';
import { CREWS, crewOf } from './made-up-crew.ts';
import { bytesPerCall, collectorShare, growthExponent, sideBySide } from './measure.ts';
import { type Fact, type Found, rowOf, type Times } from './row.ts';

const DRAG = 'drag step';
const EQUILIBRIUM = 'equilibrium in one phase';
const WHOLE = 'whole evaluation with spreads';
const PROPOSAL = 'proposal';

const WHY_NOT_ZERO =
  'not zero: every step gives a new report, for views compare by identity and the old one stays with whoever holds it; that report alone keeps 54 KB';

/** Single, pair and four: a drag's step, an equilibrium, a whole evaluation, a proposal, and how each grows with seats. */
export async function evaluationBench(): Promise<Found> {
  const crews = CREWS.map(([seats, word]) => {
    const fit = crewOf(seats);
    return { seats, word, fit, step: dragStep(fit), evaluator: createEvaluator() };
  });
  const named = (what: string, run: (crew: (typeof crews)[number]) => (call: number) => unknown) =>
    crews.map((crew) => [`${what}, ${crew.word}`, run(crew)] as const);
  const quick = sideBySide(
    Object.fromEntries([
      ...named(DRAG, ({ step }) => step),
      ...named(EQUILIBRIUM, ({ fit }) => equilibrium(fit)),
    ]),
  );
  const slow = sideBySide(
    Object.fromEntries([
      ...named(
        WHOLE,
        ({ evaluator, fit }) =>
          (call) =>
            evaluator.evaluate(retitled(fit, call)),
      ),
      ...named(
        PROPOSAL,
        ({ fit }) =>
          () =>
            propose(createEvaluator(), fit),
      ),
    ]),
    { rounds: 21, turnMs: 60, warmUpMs: 500 },
  );
  const times: Record<string, Times> = { ...quick, ...slow };
  return {
    rows: Object.entries(times).map(([name, taken]) => rowOf('core', name, { times: taken })),
    facts: [
      ...[DRAG, EQUILIBRIUM, WHOLE, PROPOSAL].map((what) => growthWithSeats(what, times)),
      ...crews.map(({ word, step }) => heap(word, step)),
      ...(await collected(crews[0]!.step)),
    ],
  };
}

/** One step of a drag: the pad of the first seat a millimetre farther each time. */
function dragStep(fit: Fit): (call: number) => unknown {
  const evaluator = createEvaluator();
  const held = evaluator.evaluate(fit);
  return (call) => {
    const place = { seat: 0, coordinate: 'kneePad.aftM' } as const;
    return evaluator.evaluateHolding(withCoordinate(fit, place, 0.16 + 0.001 * (call % 40)), held);
  };
}

/** Another object each time, so that nothing known of the last one helps but body and hull. */
function retitled(fit: Fit, call: number): Fit {
  return { ...fit, name: `${call}`, seats: fit.seats.map((seat) => ({ ...seat })) };
}

/** A crew's boat at rest from a cold start, its stances known. */
function equilibrium(fit: Fit): () => unknown {
  const boat = boatState(fit);
  const seats = fit.seats.map((seat, index) =>
    solveSeat({ seat, body: bodyOfAthlete(seat.athlete!), frame: seatFrame(fit.boat, seat, index) }),
  );
  return () => floatCrew(boat, seats, { phase: 'ready' });
}

function growthWithSeats(what: string, times: Readonly<Record<string, Times>>): Fact {
  const points = CREWS.map(([seats, word]) => [seats, times[`${what}, ${word}`]!.medianUs] as const);
  return {
    group: 'core',
    name: `${what} grows with seats, 1 to 4, to the power of`,
    value: growthExponent(points),
    unit: '',
  };
}

function heap(word: string, step: (call: number) => unknown): Fact {
  const note = word === 'single' ? { note: WHY_NOT_ZERO } : {};
  return {
    group: 'core',
    name: `heap taken by a drag step, ${word}`,
    value: bytesPerCall(step),
    unit: 'bytes',
    ...note,
  };
}

async function collected(step: (call: number) => unknown): Promise<Fact[]> {
  const { share, longestMs } = await collectorShare(step, 4000);
  const fact = (name: string, value: number, unit: string): Fact => ({ group: 'core', name, value, unit });
  return [
    fact('share of a single’s drag that collecting takes', 100 * share, '%'),
    fact('longest collection in it', longestMs, 'ms'),
  ];
}
