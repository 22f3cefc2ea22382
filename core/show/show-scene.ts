import type { Fit } from '../document/fit-schema.ts';
import type { Seat } from '../document/seat-schema.ts';
import type { Report } from '../evaluation/report.ts';
import { seatFrame } from '../evaluation/seat-state.ts';
import type { FigureBody } from '../figure/body-part.ts';
import type { SeatFrame } from '../frame/mirror.ts';
import { along, type Vec3 } from '../frame/vec3.ts';
import type { Board } from '../parts/board.ts';
import { FIGURE_POINTS, type FigurePoint } from '../posture/stance.ts';
import { recordOf } from '../units/entries.ts';

/** Input of the picture of one paddler. Boat frame, metres and radians; degrees where a seat has them. */
export interface ShowScene {
  /** Joints and ends of the body. */
  readonly points: Readonly<Record<FigurePoint, Vec3>>;
  readonly body: FigureBody;
  /** Heel to toe. */
  readonly footLength: number;
  readonly frame: SeatFrame;
  readonly seat: Pick<Seat, 'kneePad' | 'rearRest' | 'frontFoot' | 'paddle'>;
  readonly board: Board;
  /** Water plane over the hull's lowest point amidships, and trim; null where the boat does not float. */
  readonly water: { readonly draft: number; readonly trim: number } | null;
}

/** The scene of a seat in its ready stance; null when the seat does not exist or is empty. */
export function showScene(fit: Fit, report: Report, index: number): ShowScene | null {
  const seat = fit.seats[index];
  const solved = report.seats[index];
  if (!seat?.athlete || !solved) return null;
  const { ready } = report.afloat;
  return {
    points: solved.stances.ready.points,
    body: {
      stature: solved.body.stature,
      sex: seat.athlete.sex,
      lengths: { kneeRadius: solved.body.lengths.kneeRadius },
    },
    footLength: solved.body.lengths.footLength.value,
    frame: seatFrame(fit.boat, seat, index),
    seat,
    board: fit.boat.floorboard,
    water: ready.kind === 'afloat' ? { draft: ready.draft, trim: ready.trim } : null,
  };
}

/**
 * A scene a share `t` of the way from one to another (0 the first, 1 the second), for a picture that moves between
 * before and after. Everything that is a number moves evenly; a side changes half way.
 */
export function blendScenes(from: ShowScene, to: ShowScene, t: number): ShowScene {
  if (t <= 0) return from;
  if (t >= 1) return to;
  const points = recordOf(FIGURE_POINTS, (name) => along(from.points[name], to.points[name], t));
  return { ...(blend(from, to, t) as ShowScene), points };
}

/** Numbers move evenly, records go field by field, all else is taken from the nearer end. */
function blend(from: unknown, to: unknown, t: number): unknown {
  if (typeof from === 'number' && typeof to === 'number') return from + (to - from) * t;
  if (isRecord(from) && isRecord(to)) {
    return Object.fromEntries(Object.keys(to).map((key) => [key, blend(from[key], to[key], t)]));
  }
  return t < 0.5 ? from : to;
}

/** Whether something is an object with fields. */
function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
