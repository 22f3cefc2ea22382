import { boatShapes } from '../drawing/boat-shapes.ts';
import { fittingShapes } from '../drawing/fitting-shapes.ts';
import { figureOf } from '../figure/figure.ts';
import { aroundBoat, figureShapes } from '../figure/figure-shapes.ts';
import { areaOf, lineThrough, ringThrough, type Shape } from '../graphics/shape.ts';
import type { ViewName, ViewPoint } from '../graphics/view.ts';
import type { Hull } from '../hull/hull.ts';
import { seatParts } from '../parts/seat-parts.ts';
import type { ShowScene } from './show-scene.ts';

/** From where the paddler is seen. From the side the bow is to the right; from behind port is on the left. */
export const SHOW_VIEWS = ['side', 'behind', 'above'] as const;
/** The sides that an athlete is shown from. */
export type ShowView = (typeof SHOW_VIEWS)[number];

/** The drawing's view of each. */
export const SHOWN_IN = {
  side: 'profile',
  behind: 'section',
  above: 'plan',
} as const satisfies Record<ShowView, ViewName>;

/** Boat shown on each side of the paddler, metres. */
const BOAT_EACH_WAY = 1.45;
/** Water shown beyond it, and how deep it is drawn under the hull, metres. */
const WATER_BEYOND = 0.15;
/** Depth of that water, metres. */
const WATER_DEPTH = 1;

/** A picture in two halves: what does not move between before and now, and the paddler with the fittings. */
export interface ShowPicture {
  readonly ground: readonly Shape[];
  readonly person: readonly Shape[];
}

/** The picture of a scene in a hull, from the far to the near. Metres to the right and up in the view, boat frame. */
export function showPicture(scene: ShowScene, hull: Hull, view: ShowView): ShowPicture {
  const seen = SHOWN_IN[view];
  const { frame, seat, footLength, board } = scene;
  const holes = { padHolePitchM: null, restHolePitchM: null };
  const parts = seatParts(seat, { seat: 0, frame, footLength, board, ...holes });
  const { under, over } = fittingShapes({ seat, frame, parts }, seen);
  const figure = figureOf(scene.points, scene.body, { paddle: seat.paddle, fineness: 'paper' });
  const boat = {
    hull,
    board,
    span: [frame.stationX - BOAT_EACH_WAY, frame.stationX + BOAT_EACH_WAY] as const,
    cutX: frame.stationX - seat.kneePad.aftM,
  };
  const { water, surface } = waterShapes(scene, view);
  const [beyond, rest] = aroundBoat(figureShapes(figure, seen));
  return {
    // The surface lies over the hull: how the boat floats is seen.
    ground: [...water, ...boatShapes(boat, seen), ...surface],
    person: [...beyond, ...under, ...rest, ...over],
  };
}

/** The water and its surface: a slope where the boat trims, level from behind; nothing from above. */
function waterShapes({ water, frame }: ShowScene, view: ShowView): { water: Shape[]; surface: Shape[] } {
  if (!water || view === 'above') return { water: [], surface: [] };
  const wide = BOAT_EACH_WAY + WATER_BEYOND;
  const middle = view === 'side' ? frame.stationX : 0;
  const rise = view === 'side' ? Math.tan(water.trim) : 0;
  const ends = [middle - wide, middle + wide].map((x): ViewPoint => [x, water.draft - x * rise]) as [
    ViewPoint,
    ViewPoint,
  ];
  const low = ends.map(([x]): ViewPoint => [x, -WATER_DEPTH]).toReversed();
  return {
    water: [areaOf('water', { role: 'water', outline: null }, [ringThrough([...ends, ...low])])],
    surface: [
      { kind: 'line', of: 'water', role: 'waterLine', weight: 'contour', lines: [lineThrough(ends)] },
    ],
  };
}
