import { BODY_LENGTHS, type BodyEstimate } from '../body/body.ts';
import { squareRootOf } from '../body/covariance-root.ts';
import type { Seat } from '../document/seat-schema.ts';
import { type SeatFrame, toBoatFrame } from '../frame/mirror.ts';
import type { BoatPoint } from '../frame/vec3.ts';
import { paddlingSign } from '../posture/contacts.ts';
import { figureAt, type SolverFigure } from '../posture/figure.ts';
import { figureAngles, figurePoints } from '../posture/figure-points.ts';
import { termResiduals } from '../posture/objective.ts';
import { FIGURE_POINTS, type FigurePoint, STANCE_UNKNOWNS, type StanceAngle } from '../posture/stance.ts';
import { type StanceProblem, stanceProblem } from '../posture/stance-problem.ts';
import { STANCE_TERMS } from '../posture/stance-terms.ts';
import { recordOf } from '../units/entries.ts';
import { CAMERA_UNKNOWNS, type Camera, depthOf, movedCamera, type Pixel, projectPoint } from './camera.ts';
import { cauchyFactor } from './differences.ts';
import { HOLD_SD, holdAt, pitchTaken, type SeenMoment, strayedHold } from './seen-moment.ts';

/** One picture of the moment: its camera and the joints marked in it, pixels. */
export interface PostureView {
  readonly camera: Camera;
  /** Joints that are not marked are left out. */
  readonly marks: Readonly<Partial<Record<FigurePoint, Pixel>>>;
}

/** One mark of one picture. */
export interface PlacedMark {
  /** Which picture, from 0. */
  readonly view: number;
  /** Which joint it shows. */
  readonly joint: FigurePoint;
  /** As the person set it. */
  readonly pixel: Pixel;
}

/** A posture to be found: body, seat, moment and marks. */
export interface PostureProblem {
  /** The body as estimated, with its covariance. */
  readonly body: BodyEstimate;
  /** The fittings that knee and feet stand on. */
  readonly seat: Seat;
  /** The seat's frame in the boat. */
  readonly frame: SeatFrame;
  /** The moment of the stroke. */
  readonly moment: SeenMoment;
  /** The pictures. */
  readonly views: readonly PostureView[];
  /** The marks that count. */
  readonly marks: readonly PlacedMark[];
  /** Standard deviation of a mark in the picture, pixels. */
  readonly sdPx: number;
  /** Standard deviation of feeling for the joint under the mark, metres. */
  readonly jointSdM: number;
  /** Extra standard deviation of each length of the body, as a share of it, independent: 0 takes the body as it is. */
  readonly bodyDoubt: number;
}

/** A posture: the unknowns of the stance and everything that follows from them. Points in the boat frame. */
export interface SeenFigure {
  /** The stance of the body with these lengths. */
  readonly stance: StanceProblem;
  /** The same as the solver has it. */
  readonly figure: SolverFigure;
  /** Metres. */
  readonly points: Readonly<Record<FigurePoint, BoatPoint>>;
  /** Radians. */
  readonly angles: Readonly<Record<StanceAngle, number>>;
  /** Top hand over mid-shoulder, metres, and the turn of the shoulders, radians. */
  readonly topHandOver: number;
  /** Radians. */
  readonly shoulderTurn: number;
}

/** Unknowns of the stance. */
const Q = STANCE_UNKNOWNS.length;
const BODY = BODY_LENGTHS.length;
const HOLD = HOLD_SD.length;
const CAMERA = CAMERA_UNKNOWNS.length;
/**
 * Factor on the tolerances of the general posture: a picture must be able to show an unusual posture. It costs a tenth of the
 * precision where marks are few, and nothing where they are many (estimate).
 */
const WIDER = 2;
/** No length falls below this share of the estimate, however far a search strays. */
const LEAST_SHARE = 0.3;

/** A problem prepared for evaluation. */
export interface ReadyProblem {
  readonly problem: PostureProblem;
  /** How many unknowns there are. */
  readonly unknowns: number;
  /** How many residuals there are. */
  readonly terms: number;
  /** The posture that the unknowns stand for. */
  readonly figureOf: (x: Float64Array) => SeenFigure;
  /** The body's lengths there, metres. */
  readonly lengthsOf: (x: Float64Array) => number[];
  /** The cameras there. */
  readonly camerasOf: (x: Float64Array) => Camera[];
  /**
   * Residuals in standard deviations: first two for each mark, then those of the stance, the body, the hold and the cameras.
   */
  readonly residualsAt: (x: Float64Array, into: Float64Array) => void;
}

/** A problem and a place of its unknowns. */
export interface ProblemPoint {
  /** The problem. */
  readonly ready: ReadyProblem;
  /** Its unknowns, in the problem's own order. */
  readonly x: Float64Array;
}

/**
 * Prepares a problem. Its unknowns are the stance's five angles (radians), then in standard deviations: the body's lengths
 * along the roots of their covariance, the hold of arms and shoulders, and each camera along the roots of its own.
 */
export function readyProblem(problem: PostureProblem, robustAt: number | null): ReadyProblem {
  const roots = squareRootOf(doubtedCovariance(problem));
  const cameraRoots = problem.views.map(({ camera }) => camera.covariance && squareRootOf(camera.covariance));
  const unknowns = Q + BODY + HOLD + CAMERA * problem.views.length;
  const lengthsOf = (x: Float64Array) =>
    BODY_LENGTHS.map((name, i) => {
      const { value } = problem.body.lengths[name];
      const moved = roots.reduce((sum, c, k) => sum + c[i]! * x[Q + k]!, value);
      return Math.max(LEAST_SHARE * value, moved);
    });
  const camerasOf = (x: Float64Array) =>
    problem.views.map(({ camera }, v) => {
      const own = cameraRoots[v];
      if (!own) return camera;
      const from = Q + BODY + HOLD + CAMERA * v;
      return movedCamera(
        camera,
        own.map((_, i) => own.reduce((sum, c, k) => sum + c[i]! * x[from + k]!, 0)),
      );
    });
  const figureOf = keptFigure(problem, lengthsOf);
  const rest = 2 * problem.marks.length;
  const stray = rest + STANCE_TERMS.length;
  return {
    problem,
    unknowns,
    terms: stray + unknowns - Q,
    figureOf,
    lengthsOf,
    camerasOf,
    residualsAt(x, into) {
      const seen = figureOf(x);
      writeMarks({ problem, seen, cameras: camerasOf(x), robustAt }, into);
      termResiduals(seen.stance, x.subarray(0, Q), into.subarray(rest, stray));
      for (let k = Q; k < unknowns; k++) into[stray + k - Q] = x[k]!;
    },
  };
}

/** Covariance of the lengths with the doubt that a problem adds, m². */
function doubtedCovariance({ body, bodyDoubt }: PostureProblem): number[][] {
  return body.covariance.map((row, i) =>
    row.map((value, j) =>
      i === j ? value + (bodyDoubt * body.lengths[BODY_LENGTHS[i]!].value) ** 2 : value,
    ),
  );
}

/** Figures at vectors of unknowns. Unchanged parts are kept from the last call: a camera's turn moves no joint. */
function keptFigure(problem: PostureProblem, lengthsOf: (x: Float64Array) => number[]) {
  let known: { x: Float64Array; stance: StanceProblem; seen: SeenFigure } | null = null;
  return (x: Float64Array): SeenFigure => {
    const same = (from: number, to: number) => known !== null && sameBetween(x, known.x, { from, to });
    const sameBody = same(Q, Q + BODY);
    if (known && sameBody && same(0, Q) && same(Q + BODY, Q + BODY + HOLD)) return known.seen;
    const stance = known && sameBody ? known.stance : plainStance(problem, lengthsOf(x));
    known = { x: x.slice(), stance, seen: seenFigure(problem, stance, x) };
    return known.seen;
  };
}

/** Whether a range of unknowns is unchanged. */
function sameBetween(a: Float64Array, b: Float64Array, { from, to }: { from: number; to: number }): boolean {
  for (let i = from; i < to; i++) if (a[i] !== b[i]) return false;
  return true;
}

/** The stance's own problem for a body of these lengths (metres, order of `BODY_LENGTHS`). */
function plainStance({ body, seat, moment }: PostureProblem, lengths: readonly number[]): StanceProblem {
  const own = recordOf(BODY_LENGTHS, (name, i) => ({ ...body.lengths[name], value: lengths[i]! }));
  const plain = stanceProblem({ ...body, lengths: own }, withoutNeutral(seat), {
    phase: moment === 'drive' ? 'catch' : moment,
  });
  const pitch = pitchTaken(seat, moment);
  const at = STANCE_TERMS.indexOf('trunkPitch');
  const taken = pitch ? plain.terms.map((term, i) => (i === at ? { ...term, ...pitch } : term)) : plain.terms;
  const terms = taken.map((term) =>
    term.sense === 'near' ? { ...term, tolerance: WIDER * term.tolerance } : term,
  );
  return { ...plain, hold: holdAt(plain.lengths, seat, moment), terms };
}

/** The seat without what earlier pictures taught: each picture is read independently. */
function withoutNeutral(seat: Seat): Seat {
  if (!seat.athlete?.neutral) return seat;
  const { neutral: _, ...athlete } = seat.athlete;
  return { ...seat, athlete };
}

/** The figure at an unknown vector. */
function seenFigure({ seat, frame }: PostureProblem, plain: StanceProblem, x: Float64Array): SeenFigure {
  const { upperArm, forearm, hand } = plain.lengths;
  const hold = strayedHold(plain.hold, x.subarray(Q + BODY, Q + BODY + HOLD), {
    arm: upperArm + forearm + hand,
    side: paddlingSign(seat),
  });
  const stance = { ...plain, hold };
  const q = x.subarray(0, Q);
  const figure = figureAt(q, stance);
  const points = figurePoints(stance, figure);
  const inBoat = {} as Record<FigurePoint, BoatPoint>;
  for (const name of FIGURE_POINTS) inBoat[name] = toBoatFrame(points[name], frame);
  return {
    stance,
    figure,
    points: inBoat,
    angles: figureAngles(stance, { figure, points, q }),
    topHandOver: hold.topHand.z,
    shoulderTurn: Math.atan2(hold.square.x, hold.square.y * paddlingSign(seat)),
  };
}

/** Standard deviation of a mark, pixels: in the picture, and on the body at its distance. */
export function markSd({ sdPx, jointSdM }: PostureProblem, camera: Camera, at: BoatPoint): number {
  return Math.hypot(sdPx, (jointSdM * camera.focalPx) / Math.max(0.1, depthOf(camera, at)));
}

/** Residuals of the marks, across and down, in standard deviations; with `robustAt` far ones count less. */
function writeMarks(
  {
    problem,
    seen,
    cameras,
    robustAt,
  }: { problem: PostureProblem; seen: SeenFigure; cameras: readonly Camera[]; robustAt: number | null },
  into: Float64Array,
): void {
  problem.marks.forEach(({ view, joint, pixel }, i) => {
    const camera = cameras[view]!;
    const at = projectPoint(camera, seen.points[joint]);
    const sd = markSd(problem, camera, seen.points[joint]);
    const across = (at.u - pixel.u) / sd;
    const down = (at.v - pixel.v) / sd;
    const share = robustAt === null ? 1 : cauchyFactor(Math.hypot(across, down) / robustAt);
    into[2 * i] = across * share;
    into[2 * i + 1] = down * share;
  });
}
