import type { BodyEstimate } from '../body/body.ts';
import type { Pins, Seat } from '../fit/seat-schema.ts';
import { type SeatFrame, toBoatFrame } from '../frame/mirror.ts';
import { add, along, scale, type Vec3 } from '../frame/vec3.ts';
import { toRadians } from '../units/angle.ts';
import { cornerAngle, type Figure, figureFor, hipAngle } from './figure.ts';
import {
  FIGURE_POINTS,
  type FigureMass,
  type Phase,
  STANCE_UNKNOWNS,
  type Stance,
  type StanceAngle,
} from './stance.ts';

const deg = (angle: number) => (angle * Math.PI) / 180;
const START = [deg(8), 0, deg(10), deg(10), deg(2)];
const PHASE_PITCH = { ready: null, catch: 38, exit: 8 } as const;

interface Given {
  readonly body: BodyEstimate;
  readonly seat: Seat;
  readonly phase: Phase;
}

/** Solves the kneeling figure of one seat in one phase. Points in the boat frame, metres; angles in radians. */
export function solveStance(input: {
  body: BodyEstimate;
  seat: Seat;
  frame: SeatFrame;
  phase?: Phase;
  start?: readonly number[];
}): Stance {
  const given: Given = { body: input.body, seat: input.seat, phase: input.phase ?? 'ready' };
  const pinned = pinsOf(given);
  let q = START.map((s, i) => pinned[i] ?? s);
  let r = residuals(q, given);
  let cost = total(r);
  let lambda = 1e-3;
  let iterations = 0;
  const free = q.flatMap((_, i) => (pinned[i] === null ? [i] : []));
  for (; iterations < 60; iterations++) {
    const columns = free.map((i) => {
      const h = 1e-6;
      const more = residuals(
        q.map((v, j) => (j === i ? v + h : v)),
        given,
      );
      const less = residuals(
        q.map((v, j) => (j === i ? v - h : v)),
        given,
      );
      return more.map((v, k) => (v - less[k]!) / (2 * h));
    });
    let moved = false;
    for (let attempt = 0; attempt < 12 && !moved; attempt++) {
      const step = damped(columns, r, lambda);
      const next = [...q];
      free.forEach((i, a) => {
        next[i] = Math.min(1.4, Math.max(-1.4, q[i]! + step[a]!));
      });
      const nr = residuals(next, given);
      const nc = total(nr);
      if (nc <= cost) {
        const size = Math.max(...next.map((v, i) => Math.abs(v - q[i]!)));
        q = next;
        r = nr;
        moved = size > 1e-9;
        cost = nc;
        lambda = Math.max(1e-12, lambda / 10);
        if (!moved) break;
      } else lambda *= 10;
    }
    if (!moved) break;
  }
  return describe(q, given, { frame: input.frame, residualsAt: r, cost, iterations });
}

function pinsOf({ seat, phase }: Given): (number | null)[] {
  const pins = STANCE_UNKNOWNS.map((name) => {
    const pin = seat.pins[`${name}Deg` as keyof Pins];
    return pin === undefined ? null : toRadians(pin);
  });
  const pitch = phase === 'catch' ? seat.stroke.catchPitchDeg : seat.stroke.exitPitchDeg;
  if (phase !== 'ready') pins[3] = toRadians(pitch ?? PHASE_PITCH[phase]);
  return pins;
}

const TERMS = [
  'front knee',
  'kneeling hip',
  'front hip',
  'trunk pitch',
  'trunk roll',
  'pelvis yaw',
  'thigh pitch',
  'thigh roll',
  'balance across',
  'balance fore and aft',
  'front reach',
];

function residuals(q: readonly number[], given: Given): number[] {
  const figure = figureFor(q, given);
  const p = figure.points;
  const centre = centreOf(massesOf(figure, given));
  const span = p.frontBall.x - p.kneelingKnee.x;
  const reach = figure.shortfalls.find((s) => s.part === 'frontFoot')?.shortfall ?? 0;
  return [
    (cornerAngle(p.frontHip, p.frontKnee, p.frontAnkle) - deg(118)) / deg(18),
    (hipAngle(figure, p.kneelingHip, p.kneelingKnee) - deg(175)) / deg(14),
    (hipAngle(figure, p.frontHip, p.frontKnee) - deg(95)) / deg(25),
    (q[3]! - deg(11)) / deg(7),
    (q[4]! - deg(2)) / deg(4),
    (q[2]! - deg(8)) / deg(12),
    (q[0]! - deg(8)) / deg(12),
    q[1]! / deg(6),
    centre.y / 0.01,
    (centre.x - p.kneelingKnee.x - 0.27 * span) / 0.04,
    reach / 0.01,
  ];
}

const total = (r: readonly number[]) => r.reduce((sum, v) => sum + v * v, 0);

function damped(columns: readonly number[][], r: readonly number[], lambda: number): number[] {
  const n = columns.length;
  const a = columns.map((ci, i) =>
    columns.map((cj, j) => {
      const product = ci.reduce((sum, v, k) => sum + v * cj[k]!, 0);
      return i === j ? product * (1 + lambda) + 1e-12 : product;
    }),
  );
  const b = columns.map((c) => -c.reduce((sum, v, k) => sum + v * r[k]!, 0));
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) {
      const f = a[j]![i]! / a[i]![i]!;
      for (let k = i; k < n; k++) a[j]![k]! -= f * a[i]![k]!;
      b[j]! -= f * b[i]!;
    }
  }
  for (let i = n - 1; i >= 0; i--) {
    for (let j = i + 1; j < n; j++) b[i]! -= a[i]![j]! * b[j]!;
    b[i]! /= a[i]![i]!;
  }
  return b;
}

function massesOf({ points: p }: Figure, { body, seat }: Given): FigureMass[] {
  const of = (segment: string, from: Vec3, to: Vec3, name: keyof BodyEstimate['segments']): FigureMass => ({
    segment,
    massKg: body.segments[name].massKg,
    centre: along(from, to, body.segments[name].centreFraction),
  });
  const shaft = along(
    p.topHand,
    p.lowerHand,
    (0.55 * seat.paddle.lengthM) / Math.max(0.1, seat.paddle.lowerHandM),
  );
  return [
    of('headNeck', p.midShoulder, p.headTop, 'headNeck'),
    of('trunk', p.midShoulder, p.midHip, 'trunk'),
    of('lowerUpperArm', p.lowerShoulder, p.lowerElbow, 'upperArm'),
    of('topUpperArm', p.topShoulder, p.topElbow, 'upperArm'),
    of('lowerForearm', p.lowerElbow, p.lowerHand, 'forearm'),
    of('topForearm', p.topElbow, p.topHand, 'forearm'),
    of('lowerHand', p.lowerElbow, p.lowerHand, 'hand'),
    of('topHand', p.topElbow, p.topHand, 'hand'),
    of('kneelingThigh', p.kneelingHip, p.kneelingKnee, 'thigh'),
    of('frontThigh', p.frontHip, p.frontKnee, 'thigh'),
    of('kneelingShank', p.kneelingKnee, p.kneelingAnkle, 'shank'),
    of('frontShank', p.frontKnee, p.frontAnkle, 'shank'),
    of('rearFoot', p.rearHeel, p.rearBall, 'foot'),
    of('frontFoot', p.frontHeel, p.frontToe, 'foot'),
    { segment: 'paddle', massKg: seat.paddle.massKg, centre: shaft },
  ];
}

function centreOf(masses: readonly FigureMass[]): Vec3 & { mass: number } {
  const mass = masses.reduce((sum, m) => sum + m.massKg, 0);
  const centre = masses.reduce((sum, m) => add(sum, scale(m.centre, m.massKg / mass)), { x: 0, y: 0, z: 0 });
  return { ...centre, mass };
}

function describe(
  q: readonly number[],
  given: Given,
  solved: { frame: SeatFrame; residualsAt: readonly number[]; cost: number; iterations: number },
): Stance {
  const figure = figureFor(q, given);
  const p = figure.points;
  const masses = massesOf(figure, given);
  const centre = centreOf(masses);
  const toBoat = (v: Vec3) => toBoatFrame(v, solved.frame);
  const angles: Record<StanceAngle, number> = {
    frontKnee: cornerAngle(p.frontHip, p.frontKnee, p.frontAnkle),
    kneelingKnee: cornerAngle(p.kneelingHip, p.kneelingKnee, p.kneelingAnkle),
    kneelingHip: hipAngle(figure, p.kneelingHip, p.kneelingKnee),
    frontHip: hipAngle(figure, p.frontHip, p.frontKnee),
    rearAnkle: cornerAngle(p.kneelingKnee, p.kneelingAnkle, p.rearBall),
    frontAnkle: cornerAngle(p.frontKnee, p.frontAnkle, p.frontBall),
    trunkPitch: q[3]!,
    trunkRoll: q[4]!,
    pelvisYaw: q[2]!,
    thighPitch: q[0]!,
    thighRoll: q[1]!,
  };
  const points = Object.fromEntries(FIGURE_POINTS.map((name) => [name, toBoat(p[name])])) as Stance['points'];
  return {
    phase: given.phase,
    points,
    angles,
    masses: masses.map((m) => ({ ...m, centre: toBoat(m.centre) })),
    centreOfMass: toBoat({ x: centre.x, y: centre.y, z: centre.z }),
    totalMassKg: centre.mass,
    shortfalls: figure.shortfalls,
    forcing: TERMS.map((term, i) => ({
      term,
      residual: solved.residualsAt[i]!,
      share: solved.cost > 0 ? solved.residualsAt[i]! ** 2 / solved.cost : 0,
    })).sort((a, b) => b.share - a.share),
    iterations: solved.iterations,
    converged: solved.iterations < 60,
  };
}
