import { bodyOfAthlete } from '../body/body-of-athlete.ts';
import type { Fit } from '../document/fit-schema.ts';
import type { SeatReport } from '../evaluation/report.ts';
import { seatFrame, solveSeat } from '../evaluation/seat-state.ts';
import type { BoatPoint } from '../frame/vec3.ts';
import type { FigurePoint, StanceAngle } from '../posture/stance.ts';
import { type BoatMark, boatMarks } from './boat-marks.ts';
import { type Camera, type Pixel, projectPoint } from './camera.ts';
import type { PhotoStudy } from './photo-study-schema.ts';
import { type PostureResult, postureFromMarks } from './posture-from-marks.ts';
import type { PostureView } from './posture-problem.ts';
import { type SolvedCamera, solveCamera } from './solve-camera.ts';

/** How truly a joint is felt for under its mark, metres: 1 cm (see the spreads of readings in `evaluation/doubt-sources.ts`). */
export const JOINT_SD_M = 0.01;

/** What the marks of a picture say. */
export interface ReadPicture {
  readonly camera: SolvedCamera;
  /** Boat points in the order in which the camera was given them: its residuals name them by their place. */
  readonly points: readonly BoatMark[];
  /** Null while there is no camera. */
  readonly posture: PostureResult | null;
  /** The plan's figure: its joints in the picture (pixels) and its angles (radians). Null without camera or paddler. */
  readonly plan: {
    readonly points: Readonly<Record<FigurePoint, Pixel>>;
    readonly angles: Readonly<Record<StanceAngle, number>>;
  } | null;
  /** The joints as they were seen, in the picture, pixels. */
  readonly seen: Readonly<Record<FigurePoint, Pixel>> | null;
}

/** Camera, posture and plan of a marked picture, `others` being pictures of the same moment whose marks are joined with it. */
export function readPicture(fit: Fit, study: PhotoStudy, others: readonly PhotoStudy[] = []): ReadPicture {
  const { points, camera } = cameraOf(fit, study);
  if (camera.kind !== 'solved') return { camera, points, posture: null, plan: null, seen: null };
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
  const seen = posture.kind === 'measured' ? projected(camera.camera, posture.points) : null;
  const plan = plannedStance(fit, study);
  return {
    camera,
    points,
    posture,
    plan: plan && { points: projected(camera.camera, plan.points), angles: plan.angles },
    seen,
  };
}

function cameraOf(fit: Fit, { seat, boat, image }: PhotoStudy): { points: BoatMark[]; camera: SolvedCamera } {
  const places = boatMarks(fit, seat);
  const points = (Object.keys(boat) as BoatMark[]).filter((name) => places && name in places);
  const marked = points.map((name) => ({ world: places![name], pixel: boat[name]! }));
  return { points, camera: solveCamera({ points: marked, image }) };
}

function defined(joints: PhotoStudy['joints']): Partial<Record<FigurePoint, Pixel>> {
  return Object.fromEntries(Object.entries(joints).filter(([, pixel]) => pixel !== undefined));
}

/** The plan's stance at the moment; in the middle of the drive that of the catch. Null where nobody kneels. */
function plannedStance(fit: Fit, { seat: index, moment }: PhotoStudy) {
  const seat = fit.seats[index];
  if (!seat?.athlete) return null;
  const state: Pick<SeatReport, 'stances'> = solveSeat({
    seat,
    body: bodyOfAthlete(seat.athlete),
    frame: seatFrame(fit.boat, seat, index),
  });
  return state.stances[moment === 'drive' ? 'catch' : moment];
}

function projected(
  camera: Camera,
  points: Readonly<Record<FigurePoint, BoatPoint>>,
): Record<FigurePoint, Pixel> {
  return Object.fromEntries(
    Object.entries(points).map(([name, point]) => [name, projectPoint(camera, point)]),
  ) as Record<FigurePoint, Pixel>;
}
