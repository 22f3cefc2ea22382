import { COORDINATES, type FittingCoordinate, isAngle } from '../../../core/document/coordinates.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { coordinateOf, withCoordinate } from '../../../core/document/fitting-coordinate.ts';
import { type DrilledPlace, drilledPlaces } from '../../../core/drilling/drilled-places.ts';
import type { Report } from '../../../core/evaluation/report.ts';
import type { BoatPoint } from '../../../core/frame/vec3.ts';
import { entriesOf, keysOf } from '../../../core/units/entries.ts';
import { type Grip, HANDLES } from '../view/handle.ts';
import { handlePlace, type SeatPlace, seatPlace } from '../view/handle-places.ts';
import { type DragLimits, dragLimits, possibleRange } from '../view/limits.ts';
import type { ScreenPoint } from '../view/screen-point.ts';
import { unproject, type ViewGeometry } from '../view/view-geometry.ts';
import { wantedBy } from './drag-to.ts';
import { FINE, HOLE_PLAY_M, rounded, snapped } from './snap.ts';

/** One drag: everything about its start that the movement is measured from. */
export interface Drag {
  readonly grip: Grip;
  readonly seat: number;
  readonly place: SeatPlace;
  readonly geometry: ViewGeometry;
  /** Where the handle stood: the depth of the view that the drag keeps. */
  readonly through: BoatPoint;
  /** The boat point under the pointer when the drag began. */
  readonly from: BoatPoint;
  readonly limits: ReadonlyMap<FittingCoordinate, DragLimits>;
  /** Where it would stand on holes that are drilled in the board. */
  readonly drilled: readonly DrilledPlace[];
}

/** Keys held during a drag. */
export interface DragKeys {
  /** Alt: leaves holes, soft edges and the hardware's travel. */
  readonly free: boolean;
  /** Ctrl: a tenth of the usual snap step. */
  readonly fine: boolean;
  /** Shift: the part moves by a fifth of the pointer's movement. */
  readonly slow?: boolean;
  /** Ctrl and Shift: every paddler's fitting moves by as much, in a crew. */
  readonly all: boolean;
}

/** The distance within which a soft edge attracts, pixels; for turns, degrees. */
const MAGNET_PX = 7;
const MAGNET_DEG = 1.5;
/** A coordinate that is dragged by less than this counts as not dragged. */
const STILL_PX = 0.5;
const STILL_DEG = 0.05;
/** A front foot is mostly slid along the board: it leaves its height only when dragged this far up or down, pixels. */
const LIFT_PX = 8;

/** Starts a drag of a grip at a screen point; null where there is nothing to drag. */
export function startDrag(
  grip: Grip,
  state: { fit: Fit; report: Report; seat: number },
  { screen, geometry }: { screen: ScreenPoint; geometry: ViewGeometry },
): Drag | null {
  const place = seatPlace(state.fit, state.report, state.seat);
  const through = handlePlace(place, grip.handle);
  if (!through) return null;
  const coordinates = HANDLES[grip.handle].views[grip.view] ?? [];
  return {
    grip,
    seat: state.seat,
    place,
    geometry,
    through,
    from: unproject(geometry, grip.view, { screen, through }),
    limits: new Map(coordinates.map((c) => [c, dragLimits(c, state)])),
    drilled:
      grip.handle === 'kneePad' || grip.handle === 'rearRest'
        ? drilledPlaces(state.fit, state.seat, grip.handle)
        : [],
  };
}

/** The edit that a drag to a screen point means, made on the fit as it stood at the start. */
export function draggedTo(drag: Drag, screen: ScreenPoint, keys: DragKeys): (fit: Fit) => Fit {
  const { grip, geometry, through, place, limits, seat } = drag;
  const to = unproject(geometry, grip.view, { screen, through });
  const asked = wantedBy(grip, place, { from: drag.from, to });
  return (fit) => {
    let edited = fit;
    for (const [coordinate, value] of entriesOf(asked)) {
      const between = limits.get(coordinate);
      if (!between) continue;
      const start = coordinateOf(place.seat, coordinate);
      const wanted = coordinate === 'frontFoot.heightM' ? lifted(value, start, geometry) : value;
      const rest = snapped(wanted, between, { ...graspOf(coordinate, drag, keys), free: keys.free, start });
      if (rest !== coordinateOf(edited.seats[seat]!, coordinate)) {
        edited = withCoordinate(edited, { seat, coordinate }, rest);
        if (keys.all) edited = othersMoved(edited, drag, { coordinate, by: rest - start });
      }
    }
    return keys.free || keys.fine || keys.all ? edited : onHoles(edited, drag, keysOf(asked));
  };
}

/** A pad or rest that comes near holes of the board that are drilled goes into them, as far as the view moves it. */
function onHoles(fit: Fit, { grip, seat, geometry, drilled }: Drag, held: readonly FittingCoordinate[]): Fit {
  const { handle } = grip;
  if ((handle !== 'kneePad' && handle !== 'rearRest') || drilled.length === 0) return fit;
  const [aft, out] = [`${handle}.aftM`, `${handle}.outM`] as const;
  const now = fit.seats[seat]!;
  const [aftM, outM] = [coordinateOf(now, aft), coordinateOf(now, out)];
  const within = (by: number, coordinate: FittingCoordinate) =>
    Math.abs(by) <= (held.includes(coordinate) ? MAGNET_PX / geometry.camera.pixelsPerMetre : HOLE_PLAY_M);
  const near = drilled
    .filter((place) => within(place.aftM - aftM, aft) && within(place.outM - outM, out))
    .sort((a, b) => Math.hypot(a.aftM - aftM, a.outM - outM) - Math.hypot(b.aftM - aftM, b.outM - outM));
  if (!near[0]) return fit;
  const along = held.includes(aft) ? withCoordinate(fit, { seat, coordinate: aft }, near[0].aftM) : fit;
  return held.includes(out) ? withCoordinate(along, { seat, coordinate: out }, near[0].outM) : along;
}

/** A height that changes only after the first few pixels of a drag. */
function lifted(value: number, start: number, { camera }: ViewGeometry): number {
  const by = value - start;
  const left = Math.abs(by) - LIFT_PX / camera.pixelsPerMetre;
  return left <= 0 ? start : start + Math.sign(by) * left;
}

/** The same movement for every other paddler whose fitting is not locked, from each one's own datum and side. */
function othersMoved(
  fit: Fit,
  { grip, seat }: Drag,
  { coordinate, by }: { coordinate: FittingCoordinate; by: number },
): Fit {
  const { fitting } = HANDLES[grip.handle];
  return fit.seats.reduce((moved, other, index) => {
    if (index === seat || !other.athlete || other.locks.includes(fitting)) return moved;
    const [least, most] = possibleRange(coordinate, moved, index);
    const start = coordinateOf(other, coordinate);
    const to = rounded(Math.min(Math.max(most, start), Math.max(Math.min(least, start), start + by)), 1e-6);
    return withCoordinate(moved, { seat: index, coordinate }, to);
  }, fit);
}

function graspOf(coordinate: FittingCoordinate, { geometry }: Drag, { fine }: DragKeys) {
  const turn = isAngle(coordinate);
  const snapStep = COORDINATES[coordinate].snapStep * (fine ? FINE : 1);
  const magnet = fine ? 0 : turn ? MAGNET_DEG : MAGNET_PX / geometry.camera.pixelsPerMetre;
  const still = turn ? STILL_DEG : STILL_PX / geometry.camera.pixelsPerMetre;
  return { snapStep, magnet, still: fine ? still * FINE : still };
}
