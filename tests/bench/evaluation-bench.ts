import { bodyOfAthlete } from '../../core/body/body-of-athlete.ts';
import type { Fit } from '../../core/document/fit-schema.ts';
import { withCoordinate } from '../../core/document/fitting-coordinate.ts';
import { boatState, floatCrew } from '../../core/evaluation/boat-state.ts';
import { createEvaluator } from '../../core/evaluation/evaluator.ts';
import type { Report } from '../../core/evaluation/report.ts';
import { seatFrame, solveSeat } from '../../core/evaluation/seat-state.ts';
import { propose } from '../../core/optimise/propose.ts';
import { CREWS, crewOf } from './made-up-crew.ts';
import { bytesPerCall, collectorShare, growthExponent, sideBySide } from './measure.ts';
import { type Fact, type Found, rowOf, type Times } from './row.ts';

const DRAG = 'drag step';
const DRAWN = 'drag step as drawn, its values not yet read';
const EQUILIBRIUM = 'equilibrium in one phase';
const WHOLE = 'whole evaluation with spreads';
const PROPOSAL = 'proposal';

const HOW_READ =
  'a drag is drawn in each frame; values and findings are computed where they are read, 20 times a second';

/** Single, pair and four: a drag's step, an equilibrium, a whole evaluation, a proposal, and how each grows with seats. */
export async function evaluationBench(): Promise<Found> {
  const crews = CREWS.map(([seats, word]) => {
    const fit = crewOf(seats);
    const drawn = dragStep(fit);
    return {
      seats,
      word,
      fit,
      drawn,
      step: (call: number) => readWhole(drawn(call)),
      evaluator: createEvaluator(),
    };
  });
  const named = (what: string, run: (crew: (typeof crews)[number]) => (call: number) => unknown) =>
    crews.map((crew) => [`${what}, ${crew.word}`, run(crew)] as const);
  const quick = sideBySide(
    Object.fromEntries([
      ...named(DRAG, ({ step }) => step),
      ...named(DRAWN, ({ drawn }) => drawn),
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
      ...[DRAG, DRAWN, EQUILIBRIUM, WHOLE, PROPOSAL].map((what) => growthWithSeats(what, times)),
      ...(await heap(crews)),
      ...(await collected(crews[0]!.step)),
    ],
  };
}

/** One step of a drag: the pad of the first seat a millimetre farther each time. */
function dragStep(fit: Fit): (call: number) => Report {
  const evaluator = createEvaluator();
  const held = evaluator.evaluate(fit);
  return (call) => {
    const place = { seat: 0, coordinate: 'kneePad.aftM' } as const;
    return evaluator.evaluateHolding(withCoordinate(fit, place, 0.16 + 0.001 * (call % 40)), held);
  };
}

/** Reads every value of a report and every finding: they are computed at their first reading. */
function readWhole({ quantities, findings }: Report): unknown {
  return [quantities, findings];
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

async function heap(
  crews: readonly { word: string; step: (call: number) => unknown; drawn: (call: number) => unknown }[],
): Promise<Fact[]> {
  const facts: Fact[] = [];
  const add = async (name: string, step: (call: number) => unknown) =>
    facts.push({ group: 'core', name, value: await bytesPerCall(step), unit: 'bytes', note: HOW_READ });
  for (const { word, step, drawn } of crews) {
    await add(`heap taken by a drag step as drawn, ${word}`, drawn);
    await add(`heap taken by a drag step with all its values, ${word}`, step);
  }
  return facts;
}

async function collected(step: (call: number) => unknown): Promise<Fact[]> {
  const { share, longestMs } = await collectorShare(step, 4000);
  const fact = (name: string, value: number, unit: string): Fact => ({ group: 'core', name, value, unit });
  return [
    fact('share of a single’s drag that collecting takes', 100 * share, '%'),
    fact('longest collection in it', longestMs, 'ms'),
  ];
}
