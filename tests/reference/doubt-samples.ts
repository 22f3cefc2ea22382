import { BODY_LENGTHS, type BodyEstimate } from '../../core/body/body.ts';
import { bodyOfAthlete } from '../../core/body/body-of-athlete.ts';
import { squareRootOf } from '../../core/body/covariance-root.ts';
import type { Fit } from '../../core/document/fit-schema.ts';
import type { Seat } from '../../core/document/seat-schema.ts';
import { boatState } from '../../core/evaluation/boat-state.ts';
import { computeBoat } from '../../core/evaluation/computed-fit.ts';
import { STROKE_PITCH_SD_DEG } from '../../core/evaluation/doubt-sources.ts';
import { hullSpread } from '../../core/evaluation/hull-spread.ts';
import { roomIn } from '../../core/evaluation/part-clearances.ts';
import { fittingValues } from '../../core/evaluation/seat-quantities.ts';
import { driveForceOf, seatFrame, solveSeat } from '../../core/evaluation/seat-state.ts';
import { broaderFace } from '../../core/hull/broader-face.ts';
import { midDrive, topHandSd } from '../../core/paddle/mid-drive.ts';
import { STANCE_TERMS } from '../../core/posture/stance-terms.ts';
import { FREE_FORCE_SD, PEAK_FORCE_SPREAD } from '../../core/support/blade-force.ts';
import { toDegrees } from '../../core/units/angle.ts';
import { normalOf, uniform } from '../random32.ts';

/** Seeded standard normal numbers by Box and Muller (1958). */
export function normal(seed: number): () => number {
  return normalOf(uniform(seed));
}

/** A body drawn from the estimate's own distribution of lengths, and a body mass about the weighed one. */
function drawBody(
  body: BodyEstimate,
  roots: readonly (readonly number[])[],
  draw: () => number,
): BodyEstimate {
  const z = roots.map(draw);
  const lengths = Object.fromEntries(
    BODY_LENGTHS.map((name, i) => {
      const moved = roots.reduce((sum, column, k) => sum + column[i]! * z[k]!, body.lengths[name].value);
      return [name, { ...body.lengths[name], value: moved }];
    }),
  ) as BodyEstimate['lengths'];
  const factor = 1 + (body.massSd * draw()) / body.mass;
  const segments = Object.fromEntries(
    Object.entries(body.segments).map(([name, s]) => [name, { ...s, massKg: s.massKg * factor }]),
  ) as BodyEstimate['segments'];
  return { ...body, mass: body.mass * factor, lengths, segments };
}

/** Mean and standard deviation of one quantity over the samples. */
export interface Sampled {
  readonly mean: number;
  readonly sd: number;
}

/**
 * Monte Carlo of the whole pipeline (GUM, JCGM 101:2008) for a boat of one: each sample draws a body, a way of kneeling (what each
 * term of the objective takes as usual, by its tolerance), mass, force, hand and the trunk's pitch in the stroke, solves every
 * phase anew, measures its room in a hull drawn broader or narrower, and floats the boat; the hull's doubt of what floats is drawn
 * beside it. Nothing else here is linear.
 */
export function sampledSpreads(
  fit: Fit,
  { samples, seed }: { samples: number; seed: number },
): Map<string, Sampled> {
  const seat = fit.seats[0]!;
  const body = bodyOfAthlete(seat.athlete!);
  const frame = seatFrame(fit.boat, seat, 0);
  const boat = boatState(fit);
  const draw = normal(seed);
  const roots = squareRootOf(body.covariance);
  const usual = solveSeat({ seat, body, frame });
  const start = computeBoat(boat, [usual], null).afloat;
  const hull: Readonly<Record<string, number>> = { ...hullSpread(fit.boat, start.ready) };
  const stroke = (): Seat['stroke'] => ({
    driveForceN: driveForceOf({ seat, body }) * (1 + PEAK_FORCE_SPREAD * draw()),
    topHandOverM: midDrive(usual).topHandOver + topHandSd(usual) * draw(),
    catchPitchDeg: toDegrees(usual.stances.catch.angles.trunkPitch) + STROKE_PITCH_SD_DEG.usual * draw(),
    exitPitchDeg: toDegrees(usual.stances.exit.angles.trunkPitch) + STROKE_PITCH_SD_DEG.usual * draw(),
  });
  const sums = new Map<string, { n: number; mean: number; m2: number }>();
  for (let i = 0; i < samples; i++) {
    const input = { seat: { ...seat, stroke: stroke() }, body: drawBody(body, roots, draw), frame };
    const free = { lift: FREE_FORCE_SD.lift * draw(), out: FREE_FORCE_SD.out * draw() };
    const state = { ...solveSeat(input, STANCE_TERMS.map(draw)), free };
    const face = broaderFace(boat.hull, hull.halfBreadth! * draw());
    const room = { hull: face, roomOf: roomIn({ boat: fit.boat, hull: face }) };
    const inHull: Readonly<Record<string, number | undefined>> = fittingValues(state, 0, {
      ...boat,
      ...room,
    });
    for (const { id, value: asDrawn } of computeBoat(boat, [state], start).quantities) {
      const value = inHull[id] ?? asDrawn;
      const sum = sums.get(id) ?? { n: 0, mean: 0, m2: 0 };
      const off = value + (hull[id] ?? 0) * draw() - sum.mean;
      sum.n++;
      sum.mean += off / sum.n;
      sum.m2 += off * off * (1 - 1 / sum.n);
      sums.set(id, sum);
    }
  }
  return new Map([...sums].map(([id, { n, mean, m2 }]) => [id, { mean, sd: Math.sqrt(m2 / (n - 1)) }]));
}
