import { bodyOfAthlete } from '../body/body-of-athlete.ts';
import type { Fit } from '../document/fit-schema.ts';
import { evaluateFit } from '../evaluation/evaluator.ts';
import { seatFrame, solveSeat } from '../evaluation/seat-state.ts';
import { figureOf } from '../figure/figure.ts';
import type { BoatPoint } from '../frame/vec3.ts';
import { hullOfBoat } from '../hull/hull-of-boat.ts';
import type { FigurePoint, StanceAngle } from '../posture/stance.ts';
import { STROKE_LEGS, strokeFigure } from '../stroke/stroke-figure.ts';
import { keysOf, recordOf } from '../units/entries.ts';
import { type BoatMark, boatMarks } from './boat-marks.ts';
import { type Camera, type Pixel, projectPoint } from './camera.ts';
import type { PhotoStudy } from './photo-study-schema.ts';
import { gunwalesIn, type PictureShapes, pictureShapes } from './picture-shapes.ts';
import { type PostureResult, postureFromMarks } from './posture-from-marks.ts';
import type { PostureView } from './posture-problem.ts';
import { type SolvedCamera, solveCamera } from './solve-camera.ts';
import { type SeenWaterline, seenWaterline } from './waterline.ts';

/** How truly a joint is felt for under its mark, metres: 1 cm (see the spreads of readings in `evaluation/doubt-sources.ts`). */
export const JOINT_SD_M = 0.01;

/** What the marks of a picture say. */
export interface ReadPicture {
  /** The camera, or why there is none. */
  readonly camera: SolvedCamera;
  /** Boat points in the order in which the camera was given them: its residuals name them by their place. */
  readonly points: readonly BoatMark[];
  /** Null while there is no camera. */
  readonly posture: PostureResult | null;
  /** The plan's figure: its joints in the picture (pixels), its angles (radians), and as it is drawn. Null without camera or paddler. */
  readonly plan: {
    readonly points: Readonly<Record<FigurePoint, Pixel>>;
    readonly angles: Readonly<Record<StanceAngle, number>>;
    readonly drawn: PictureShapes | null;
  } | null;
  /** The boat's gunwales in the picture, pixels; empty without a camera. */
  readonly gunwales: readonly (readonly Pixel[])[];
  /** How the boat was seen to float, beside the trim that the plan expects (radians); null where the water is not marked. */
  readonly afloat: { readonly seen: SeenWaterline; readonly planned: PlannedTrim | null } | null;
  /** The joints as they were seen, in the picture, pixels. */
  readonly seen: Readonly<Record<FigurePoint, Pixel>> | null;
}

/** The trim that is expected of a fit, and its doubt, radians. */
export interface PlannedTrim {
  /** Positive bow up. */
  readonly value: number;
  /** Null where the doubt is not known. */
  readonly sd: number | null;
}

const [, DRIVE] = STROKE_LEGS;
const NO_CAMERA = { posture: null, plan: null, gunwales: [], afloat: null, seen: null };

/** Camera, posture and plan of a marked picture, `others` being pictures of the same moment whose marks are joined with it. */
export function readPicture(fit: Fit, study: PhotoStudy, others: readonly PhotoStudy[] = []): ReadPicture {
  const { points, camera } = cameraOf(fit, study);
  if (camera.kind !== 'solved') return { camera, points, ...NO_CAMERA };
  const joined = others.flatMap((other): PostureView[] => {
    const solved = cameraOf(fit, other).camera;
    return solved.kind === 'solved' ? [{ camera: solved.camera, marks: defined(other.joints) }] : [];
  });
  const posture = postureFromMarks({
    fit,
    seat: study.seat,
    phase: study.moment,
    camera: camera.camera,
    marks: defined(study.joints),
    others: joined,
    jointSdM: JOINT_SD_M,
  });
  return {
    camera,
    points,
    posture,
    plan: planIn(camera.camera, fit, study),
    gunwales: gunwalesIn(camera.camera, hullOfBoat(fit.boat)),
    afloat: afloatIn(camera.camera, fit, study),
    seen: posture.kind === 'measured' ? projected(camera.camera, posture.points) : null,
  };
}

/** How the boat was seen to float, beside what the plan expects. */
function afloatIn(camera: Camera, fit: Fit, { boat }: PhotoStudy): ReadPicture['afloat'] {
  const seen = seenWaterline(camera, boat);
  if (!seen) return null;
  const trim = evaluateFit(fit).quantities.find(({ id }) => id === 'trimAngle');
  const value = trim?.value ?? null;
  return { seen, planned: value === null ? null : { value, sd: trim?.sd ?? null } };
}

/** The camera by the boat's marks that are known on this boat. */
function cameraOf(fit: Fit, { seat, boat, image }: PhotoStudy): { points: BoatMark[]; camera: SolvedCamera } {
  const places = boatMarks(fit, seat);
  const points = keysOf<BoatMark>(boat).filter((name) => places && name in places);
  const marked = points.map((name) => ({ world: places![name], pixel: boat[name]! }));
  return { points, camera: solveCamera({ points: marked, image }) };
}

/** Joints that are marked. */
function defined(joints: PhotoStudy['joints']): Partial<Record<FigurePoint, Pixel>> {
  return Object.fromEntries(Object.entries(joints).filter(([, pixel]) => pixel !== undefined));
}

/** The plan's figure at the moment. Null where nobody kneels. */
function planIn(camera: Camera, fit: Fit, { seat: index, moment }: PhotoStudy): ReadPicture['plan'] {
  const seat = fit.seats[index];
  if (!seat?.athlete) return null;
  const body = bodyOfAthlete(seat.athlete);
  const state = solveSeat({ seat, body, frame: seatFrame(fit.boat, seat, index) });
  const stance = moment === 'drive' ? strokeFigure(state, DRIVE, 0.5) : state.stances[moment];
  const form = { stature: body.stature, sex: seat.athlete.sex, lengths: body.lengths };
  const figure = figureOf(stance.points, form, { paddle: seat.paddle, fineness: 'screen' });
  return {
    points: projected(camera, stance.points),
    angles: stance.angles,
    drawn: pictureShapes(camera, figure),
  };
}

/** Where the camera sees each point. */
function projected(
  camera: Camera,
  points: Readonly<Record<FigurePoint, BoatPoint>>,
): Record<FigurePoint, Pixel> {
  return recordOf(keysOf(points), (name) => projectPoint(camera, points[name]));
}
