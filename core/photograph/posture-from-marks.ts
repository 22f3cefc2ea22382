import { BODY_LENGTHS, type BodyLength } from '../body/body.ts';
import { bodyOfAthlete } from '../body/body-of-athlete.ts';
import type { Fit } from '../document/fit-schema.ts';
import { seatFrame } from '../evaluation/seat-state.ts';
import type { BoatPoint } from '../frame/vec3.ts';
import {
  type FigurePoint,
  STANCE_ANGLES,
  STANCE_UNKNOWNS,
  type StanceAngle,
  type StanceUnknown,
} from '../posture/stance.ts';
import type { Radians } from '../units/angle.ts';
import { entriesOf, recordOf } from '../units/entries.ts';
import { type Contradiction, contradictionsOf } from './body-contradictions.ts';
import { type Camera, depthOf, type Pixel, projectPoint } from './camera.ts';
import { BAD_MARK, findPosture, spreadsOf } from './find-posture.ts';
import { doubtedMarks } from './hidden-bad-marks.ts';
import {
  type PlacedMark,
  type PostureProblem,
  type PostureView,
  type ProblemPoint,
  readyProblem,
  type SeenFigure,
} from './posture-problem.ts';
import type { SeenMoment } from './seen-moment.ts';
import { MARK_SD_PX } from './solve-camera.ts';

/** What `postureFromMarks` is given. */
export interface PostureInput {
  /** Plan and athlete: what is taken of the posture before anything is marked. */
  readonly fit: Fit;
  /** Which seat of the fit, from 0. */
  readonly seat: number;
  /** The moment of the stroke that the picture shows. */
  readonly phase: SeenMoment;
  /** The first picture's camera, solved or known. */
  readonly camera: Camera;
  /** Joints marked in the first picture. */
  readonly marks: Readonly<Partial<Record<FigurePoint, Pixel>>>;
  /** More pictures of the same moment, joined with the first. */
  readonly others?: readonly PostureView[];
  /** How truly marks are set, one standard deviation, pixels; 3 unless said otherwise. */
  readonly sdPx?: number;
  /** How truly a joint is felt for under its mark, metres; nothing unless said otherwise. */
  readonly jointSdM?: number;
}

/** A mark that lies off, and by how much: pixels, and millimetres at the joint's distance. */
export interface MarkResidual {
  /** Which picture, from 0. */
  readonly view: number;
  /** Which joint was marked. */
  readonly joint: FigurePoint;
  /** Distance in the picture. */
  readonly px: number;
  /** The same at the joint's distance from the camera. */
  readonly mm: number;
}

/** A posture read off pictures, with its doubt. Radians, metres (boat frame), pixels. */
export interface SeenPosture {
  readonly kind: 'measured';
  /** Every angle of the stance, those included that follow from others. */
  readonly angles: Readonly<Record<StanceAngle, Radians>>;
  /** One standard deviation of each, with body, marks and camera in doubt. */
  readonly sd: Readonly<Record<StanceAngle, Radians>>;
  /** How far each joint marked in the first picture lies from where the posture has it, pixels. */
  readonly residuals: Readonly<Partial<Record<FigurePoint, number>>>;
  /** The same for the marks of all pictures. */
  readonly marks: readonly MarkResidual[];
  /** Marks that do not agree with the others; they do not count. */
  readonly bad: readonly MarkResidual[];
  /** Marks that count and disagree all the same, for more do than may be left out: the posture is not to be relied on. */
  readonly unsettled: readonly MarkResidual[];
  /** Lengths that the marks show otherwise than the body has them. */
  readonly contradictions: readonly Contradiction[];
  /** Joints and ends in the boat. */
  readonly points: Readonly<Record<FigurePoint, BoatPoint>>;
  /** Top hand over the middle of the shoulders, metres. */
  readonly topHandOver: { readonly value: number; readonly sd: number };
  /** Turn of the shoulders against the boat. */
  readonly shoulderTurn: { readonly value: Radians; readonly sd: Radians };
  /**
   * The doubt of each unknown of the stance as a measurement of its own, what was taken before it not counted in, radians. Left out
   * where the marks tell next to nothing of it.
   */
  readonly measuredSd: Readonly<Partial<Record<StanceUnknown, Radians>>>;
}

/** A posture, or why there is none. */
export type PostureResult =
  | SeenPosture
  | { readonly kind: 'emptySeat' }
  | { readonly kind: 'tooFew'; readonly marks: number; readonly needed: number }
  | { readonly kind: 'invalid' };

/** With fewer marks nothing is said. */
const LEAST_MARKS = 3;
/** While bad marks are looked for each length is doubted by this share more: a long thigh is no bad mark. */
const LOOSE_BODY = 0.06;
/** An angle whose variance the marks cut by less than this share was not measured. */
const LEAST_GAIN = 0.05;

/**
 * The posture that marks of joints in one or more pictures of a moment show: the stance's unknowns, the hold of arms and
 * shoulders, the body's lengths and the cameras, each within its own doubt, by least squares on the reprojected joints
 * (Levenberg–Marquardt; covariance by Gauss–Newton). A bad mark is left out and named; lengths that contradict the body are
 * told, and then the body is doubted more. Radians, metres, pixels.
 */
export function postureFromMarks(input: PostureInput): PostureResult {
  const views = [{ camera: input.camera, marks: input.marks }, ...(input.others ?? [])];
  const marks = placedMarks(views);
  const seat = input.fit.seats[input.seat];
  if (!seat?.athlete) return { kind: 'emptySeat' };
  if (marks.length < LEAST_MARKS) return { kind: 'tooFew', marks: marks.length, needed: LEAST_MARKS };
  if (!marks.every(({ pixel }) => Number.isFinite(pixel.u) && Number.isFinite(pixel.v)))
    return { kind: 'invalid' };
  const problem: PostureProblem = {
    body: bodyOfAthlete(seat.athlete),
    seat,
    frame: seatFrame(input.fit.boat, seat, input.seat),
    moment: input.phase,
    views,
    marks,
    sdPx: input.sdPx ?? MARK_SD_PX,
    jointSdM: input.jointSdM ?? 0,
    bodyDoubt: LOOSE_BODY,
  };
  const loose = findPosture(problem);
  const contradictions = contradictionsOf(problem, lengthsAt(loose), LOOSE_BODY);
  if (contradictions.length > 0) return described(problem, loose, contradictions);
  const left = marks.filter((mark) => !loose.ready.problem.marks.includes(mark));
  return described(problem, findPosture({ ...problem, bodyDoubt: 0 }, left), []);
}

/** Marks of all pictures as one list. */
function placedMarks(views: readonly PostureView[]): PlacedMark[] {
  return views.flatMap(({ marks }, view) =>
    entriesOf(marks).map(([joint, pixel]) => ({ view, joint, pixel })),
  );
}

/** Lengths of the body as the marks have them, and their spreads, metres. */
function lengthsAt({ ready, x }: ProblemPoint): Record<BodyLength, { value: number; sd: number }> {
  const values = ready.lengthsOf(x);
  const sds = spreadsOf({ ready, x }, BODY_LENGTHS.length, (at, into) => into.set(ready.lengthsOf(at)));
  return recordOf(BODY_LENGTHS, (_, i) => ({ value: values[i]!, sd: sds[i]! }));
}

/** Everything that is read off a posture, in one order: angles, hand, turn. */
function writeRead({ angles, topHandOver, shoulderTurn }: SeenFigure, into: Float64Array): void {
  STANCE_ANGLES.forEach((name, i) => {
    into[i] = angles[name];
  });
  into[STANCE_ANGLES.length] = topHandOver;
  into[STANCE_ANGLES.length + 1] = shoulderTurn;
}

/**
 * What is told of the posture found: its angles and their doubt, and what of that doubt the marks alone would
 * leave.
 */
function described(
  problem: PostureProblem,
  found: ProblemPoint,
  contradictions: readonly Contradiction[],
): SeenPosture {
  const { ready, x } = found;
  const seen = ready.figureOf(x);
  const count = STANCE_ANGLES.length + 2;
  const read = (at: Float64Array, into: Float64Array) => writeRead(ready.figureOf(at), into);
  const doubted = doubtedMarks(found);
  const sds = spreadsOf({ ...found, doubted }, count, read);
  const bare = readyProblem({ ...ready.problem, marks: [] }, null);
  const before = spreadsOf({ ready: bare, x }, count, read);
  const sd = recordOf(STANCE_ANGLES, (_, i) => sds[i]!);
  const marks = residualsOf(problem.marks, ready.camerasOf(x), seen);
  const kept = ready.problem.marks;
  const unsettled = new Set(doubted.flatMap(({ mark, square }) => (square < BAD_MARK ? [] : [mark])));
  const those = (are: (mark: PlacedMark) => boolean) =>
    marks.filter((_, i) => are(problem.marks[i]!)).sort((a, b) => b.px - a.px);
  return {
    kind: 'measured',
    angles: seen.angles,
    sd,
    residuals: Object.fromEntries(marks.flatMap(({ view, joint, px }) => (view === 0 ? [[joint, px]] : []))),
    marks,
    bad: those((mark) => !kept.includes(mark)),
    unsettled: those((mark) => unsettled.has(mark)),
    contradictions,
    points: seen.points,
    topHandOver: { value: seen.topHandOver, sd: sds[count - 2]! },
    shoulderTurn: { value: seen.shoulderTurn, sd: sds[count - 1]! },
    measuredSd: Object.fromEntries(
      STANCE_UNKNOWNS.flatMap((name) => {
        const after = sd[name] ** 2;
        const prior = before[STANCE_ANGLES.indexOf(name)]! ** 2;
        return after > (1 - LEAST_GAIN) * prior ? [] : [[name, 1 / Math.sqrt(1 / after - 1 / prior)]];
      }),
    ),
  };
}

/** How far each mark lies from where the posture has its joint. */
function residualsOf(
  marks: readonly PlacedMark[],
  cameras: readonly Camera[],
  { points }: SeenFigure,
): MarkResidual[] {
  return marks.map(({ view, joint, pixel }) => {
    const camera = cameras[view]!;
    const at = projectPoint(camera, points[joint]);
    const px = Math.hypot(at.u - pixel.u, at.v - pixel.v);
    return { view, joint, px, mm: (1000 * px * depthOf(camera, points[joint])) / camera.focalPx };
  });
}
