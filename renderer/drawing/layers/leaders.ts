import { permutations } from '../../../core/crew/compare-orders.ts';
import type { Finding } from '../../../core/evaluation/finding.ts';
import { figureShapes } from '../../../core/figure/figure-shapes.ts';
import { along, type Vec3 } from '../../../core/frame/vec3.ts';
import { pointsOf, ringsOf } from '../../../core/graphics/shape.ts';
import type { Stance } from '../../../core/posture/stance.ts';
import type { NotePlace } from '../../document/bench-view.ts';
import { handlePlace, seatPlace } from '../view/handle-places.ts';
import { projectorOf, type Scene, seatReport } from '../view/scene.ts';
import { isWithin, type ScreenPoint } from '../view/screen-point.ts';
import { stripPlace } from './strip.ts';

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

interface Anchor {
  readonly at: ScreenPoint;
  readonly lane: Lane;
}

/** Where a leader can end at its part, and the free lane that leads there without crossing another view: best first. */
export function partAnchors(scene: Scene, part: Finding['part']): Anchor[] {
  if (part === 'hull') {
    if (isOneLane(scene)) return [];
    const place = stripPlace(scene);
    return [{ at: { x: place.along(scene.lines.hull.foreX - 0.3), y: place.waterY + 3 }, lane: 'upper' }];
  }
  const { fit, report } = scene.picture;
  const stance = seatReport(scene)?.stances.ready;
  switch (part) {
    case 'kneePad':
    case 'rearRest':
    case 'frontFoot':
      return inSight(scene, handlePlace(seatPlace(fit, report, scene.seat), part), FROM_ABOVE_FIRST);
    case 'support':
      return inSight(scene, stance?.centreOfMass ?? null, FROM_ABOVE_FIRST);
    case 'paddle':
      return inSight(scene, stance?.points.topHand ?? null, FROM_SIDE_FIRST);
    case 'trunk':
      return inSight(scene, stance ? backOf(scene, stance.points) : null, FROM_SIDE_FIRST);
    case 'hip':
      return inSight(scene, stance?.points.kneelingHip ?? null, FROM_SIDE_FIRST);
    default:
      return inSight(scene, stance?.points[part] ?? null, FROM_SIDE_FIRST);
  }
}

/** Whether the plan's name takes the upper lane, so that every leader runs in along the middle one. */
function isOneLane({ layout: { lanes } }: Scene): boolean {
  return lanes.upper === lanes.middle;
}

const FROM_ABOVE_FIRST = ['plan', 'profile'] as const;
const FROM_SIDE_FIRST = ['profile', 'plan'] as const;

function inSight(scene: Scene, point: Vec3 | null, views: readonly ('plan' | 'profile')[]): Anchor[] {
  if (!point) return [];
  return views.flatMap((view): Anchor[] => {
    const at = projectorOf(scene, view)(point);
    if (!isWithin(at, scene.layout.windows[view])) return [];
    return [{ at, lane: view === 'plan' && !isOneLane(scene) ? 'upper' : 'middle' }];
  });
}

/** Share of the trunk's length where a leader meets the back, clear of head and arms; how far in it ends, and what counts as beside it, metres. */
const BACK = { up: 0.75, inside: 0.02, beside: 0.03 };

/** A point of the back as it is drawn. */
function backOf({ picture, seat }: Scene, { midHip, midShoulder }: Stance['points']): Vec3 {
  const at = along(midHip, midShoulder, BACK.up);
  const figure = picture.figures[seat];
  const trunk = figure ? figureShapes(figure, 'profile').filter(({ of }) => of === 'trunk') : [];
  const beside = ringsOf(trunk)
    .flatMap(pointsOf)
    .filter(([, z]) => Math.abs(z - at.z) < BACK.beside);
  return beside.length === 0 ? at : { ...at, x: Math.min(...beside.map(([x]) => x)) + BACK.inside };
}

interface Wanted {
  readonly note: NotePlace;
  readonly anchor: Anchor;
  /** Height of the note on the sheet. */
  readonly y: number;
}

/**
 * Leaders for the notes that want something done, the lit part's before all, then as they stand in the margin. None
 * crosses another: one that could only be drawn across those before it is left out until its note is pointed at. `top`
 * is the drawing's own place in the page, client pixels.
 */
export function leadersOf(scene: Scene, notes: readonly NotePlace[], top: number): Leader[] {
  const wanted = onePerPart(
    notes.filter((note) => note.severity !== 'good' || note.part === scene.lit),
  ).toSorted((a, b) => Number(b.part === scene.lit) - Number(a.part === scene.lit));
  let drawn: Leader[] = [];
  let taken: Candidate[] = [];
  for (const note of wanted) {
    if (taken.length === MOST) break;
    const tried = [...taken, { note, y: note.clientY - top, anchors: partAnchors(scene, note.part) }];
    const routed = anchorings(tried).reduce<Leader[] | null>(
      (found, anchored) => found ?? routesOf(scene, anchored),
      null,
    );
    if (!routed) continue;
    taken = tried;
    drawn = routed;
  }
  return drawn;
}

/** A note with every place where its leader can end. */
interface Candidate {
  readonly note: NotePlace;
  readonly y: number;
  readonly anchors: readonly Anchor[];
}

/** Every choice of one anchor each, the most with their first choice first; none where a part is out of sight. */
function anchorings(candidates: readonly Candidate[]): Wanted[][] {
  const choices = candidates.reduce<{ seconds: number; wanted: Wanted[] }[]>(
    (all, { note, y, anchors }) =>
      all.flatMap(({ seconds, wanted }) =>
        anchors.map((anchor, k) => ({ seconds: seconds + k, wanted: [...wanted, { note, y, anchor }] })),
      ),
    [{ seconds: 0, wanted: [] }],
  );
  return choices.toSorted((a, b) => a.seconds - b.seconds).map(({ wanted }) => wanted);
}

/** Finds leaders for a drawing that asks at every frame, and computes them again only when notes or parts have moved. */
export function leaderRouter(pageTop: () => number): (scene: Scene) => readonly Leader[] {
  let last: { key: string; leaders: readonly Leader[] } | null = null;
  return (scene) => {
    const { notes } = scene;
    const top = pageTop();
    const key = JSON.stringify([notes, top, scene.lit, notes.map(({ part }) => partAnchors(scene, part))]);
    if (last?.key !== key) last = { key, leaders: leadersOf(scene, notes, top) };
    return last.leaders;
  };
}

/** Routes for these leaders on which none crosses another; null if there are none. */
function routesOf(scene: Scene, wanted: readonly Wanted[]): Leader[] | null {
  const lanes = lanesOf(scene, wanted);
  for (const order of permutations(wanted.length)) {
    const leaders = wanted.map((want, k): Leader => {
      const { findingId, part, severity } = want.note;
      const path = pathOf(want, { right: scene.layout.width, track: order[k]!, lane: lanes[k]! });
      return { findingId, part, severity, path };
    });
    if (crossingsOf(leaders.map(({ path }) => path)) === 0) return leaders;
  }
  return null;
}

function pathOf(
  { anchor, y }: Wanted,
  { right, track, lane }: { right: number; track: number; lane: number },
): ScreenPoint[] {
  const x = right - 6 - track * TRACK;
  return [{ x: right, y }, { x, y }, { x, y: lane }, { x: anchor.at.x, y: lane }, anchor.at];
}

/**
 * Heights that the leaders run in at. Of those that go down from a lane, the farther left the higher; those that go up
 * run above them, the farther left the lower: so no drop meets another's run.
 */
function lanesOf(scene: Scene, wanted: readonly Wanted[]): number[] {
  const { lanes } = scene.layout;
  const goesUp = ({ anchor }: Wanted) => anchor.at.y < lanes[anchor.lane];
  const rank = (want: Wanted) => (goesUp(want) ? -want.anchor.at.x - 1e6 : want.anchor.at.x);
  return wanted.map((want) => {
    const same = wanted.filter(({ anchor }) => anchor.lane === want.anchor.lane);
    const place = same.filter((other) => rank(other) < rank(want)).length;
    return lanes[want.anchor.lane] + (place - (same.length - 1) / 2) * LANE_GAP;
  });
}

/** How often paths of level and upright lines cross one another. */
export function crossingsOf(paths: readonly (readonly ScreenPoint[])[]): number {
  let count = 0;
  paths.forEach((a, i) => {
    for (const b of paths.slice(i + 1)) {
      for (let k = 1; k < a.length; k++) {
        for (let j = 1; j < b.length; j++) {
          if (squareCross([a[k - 1]!, a[k]!], [b[j - 1]!, b[j]!])) count += 1;
        }
      }
    }
  });
  return count;
}

type Stretch = readonly [ScreenPoint, ScreenPoint];

function squareCross(a: Stretch, b: Stretch): boolean {
  const level = (s: Stretch) => s[0].y === s[1].y;
  if (level(a) === level(b)) return false;
  const [flat, upright] = level(a) ? [a, b] : [b, a];
  return between(upright[0].x, flat[0].x, flat[1].x) && between(flat[0].y, upright[0].y, upright[1].y);
}

function between(value: number, a: number, b: number): boolean {
  return value > Math.min(a, b) && value < Math.max(a, b);
}

/** The first note of each part: further ones of the same part would lie on top of its leader. */
function onePerPart(notes: readonly NotePlace[]): NotePlace[] {
  const seen = new Set<string>();
  return notes.filter(({ part }) => !seen.has(part) && seen.add(part));
}
