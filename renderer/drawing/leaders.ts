import type { Finding } from '../../core/findings/finding.ts';
import type { NotePlace } from '../document/note-places.ts';
import { handlePlace, seatPlace } from '../hand/handle-places.ts';
import { stripPlace } from './parts/strip.ts';
import { onto, type Scene, seatReport } from './scene.ts';
import { isWithin, type ScreenPoint } from './screen-point.ts';

/** A leader line from a margin note to the part it speaks of, as a path from the sheet's right edge inward. */
export interface Leader {
  readonly findingId: string;
  readonly part: Finding['part'];
  readonly severity: Finding['severity'];
  readonly path: readonly ScreenPoint[];
}

/** Gaps between the parallel tracks of leaders, pixels. */
const TRACK = 4;
const LANE_GAP = 3;
/** As many leaders as the tracks have room for; the rest stay in the margin. */
const MOST = 5;

type Lane = 'upper' | 'middle';

/** Where a part lies and which free lane leads to it without crossing another view; null where it is not in sight. */
export function partAnchor(scene: Scene, part: Finding['part']): { at: ScreenPoint; lane: Lane } | null {
  if (part === 'hull') {
    const place = stripPlace(scene);
    return { at: { x: place.along(scene.lines.hull.foreX - 0.3), y: place.waterY + 3 }, lane: 'upper' };
  }
  const { fit, report } = scene.picture;
  const points = seatReport(scene)?.stances.ready.points;
  const place = seatPlace(fit, report, scene.seat);
  switch (part) {
    case 'kneePad':
    case 'rearRest':
    case 'frontFoot':
      return inSight(scene, handlePlace(place, part), 'plan');
    case 'support':
      return inSight(scene, seatReport(scene)?.stances.ready.centreOfMass ?? null, 'plan');
    case 'paddle':
      return inSight(scene, points?.topHand ?? null, 'profile');
    case 'trunk':
      return inSight(scene, points?.midShoulder ?? null, 'profile');
    case 'hip':
      return inSight(scene, points?.kneelingHip ?? null, 'profile');
    default:
      return inSight(scene, points?.[part] ?? null, 'profile');
  }
}

function inSight(
  scene: Scene,
  point: Parameters<ReturnType<typeof onto>>[0] | null,
  view: 'plan' | 'profile',
): { at: ScreenPoint; lane: Lane } | null {
  if (!point) return null;
  const at = onto(scene, view)(point);
  if (!isWithin(at, scene.layout.windows[view])) return null;
  return { at, lane: view === 'plan' ? 'upper' : 'middle' };
}

/**
 * Leaders for the notes that want something done (and for the lit part's). Tracks in the gutter are shared out so that
 * leaders which run the same way never cross; `top` is the drawing's own place in the page, client pixels.
 */
export function leadersOf(scene: Scene, notes: readonly NotePlace[], top: number): Leader[] {
  const { width, lanes } = scene.layout;
  const wanted = onePerPart(notes.filter((note) => note.severity !== 'good' || note.part === scene.lit))
    .slice(0, MOST)
    .flatMap((note) => {
      const anchor = partAnchor(scene, note.part);
      return anchor ? [{ note, anchor, y: note.clientY - top }] : [];
    });
  const rises = ({ anchor, y }: (typeof wanted)[number]) => lanes[anchor.lane] < y;
  const tracks = [...wanted.filter(rises), ...wanted.filter((w) => !rises(w)).reverse()];
  return wanted.map((want, k) => {
    const { note, anchor, y } = want;
    const track = width - 6 - tracks.indexOf(want) * TRACK;
    const lane = lanes[anchor.lane] + (k - (wanted.length - 1) / 2) * LANE_GAP;
    const { findingId, part, severity } = note;
    const path = [
      { x: width, y },
      { x: track, y },
      { x: track, y: lane },
      { x: anchor.at.x, y: lane },
      anchor.at,
    ];
    return { findingId, part, severity, path };
  });
}

/** The first note of each part: further ones of the same part would lie on top of its leader. */
function onePerPart(notes: readonly NotePlace[]): NotePlace[] {
  const seen = new Set<string>();
  return notes.filter(({ part }) => !seen.has(part) && seen.add(part));
}
