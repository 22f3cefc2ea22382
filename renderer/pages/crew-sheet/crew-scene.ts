import { fittingShapes } from '../../../core/drawing/fitting-shapes.ts';
import { figureShapes } from '../../../core/figure/figure-shapes.ts';
import { areaOf, lineThrough, ringThrough, type Shape } from '../../../core/graphics/shape.ts';
import type { ViewPoint } from '../../../core/graphics/view.ts';
import { nameInSeat } from '../../bench/crew-names.ts';
import { seatPlace } from '../../drawing/view/handle-places.ts';
import { hullDrawing, waterHeight, waterlines } from '../../drawing/view/hull-drawing.ts';
import { boatBox } from '../../drawing/view/picture.ts';
import { afloatReady, type Picture } from '../../drawing/view/scene.ts';
import { say } from '../../language/messages.ts';

/** Width of the sheet's drawing, CSS pixels; print scales it to the paper. */
const WIDTH = 1000;
/** Room above each view for the names of the marks, and beside the boat for the names of its ends. */
const HEAD = 34;
const SIDE = 62;
/** A boat's outline and a figure still read at this size; a short boat is drawn no larger. Pixels per metre. */
const GREATEST_SCALE = 150;
/** From above the figure is fainter than from the side, and the fittings are laid over it once more. */
const FROM_ABOVE = { figure: 0.72, fittingsOver: 0.42 };
/** A mark's name nearer than this to another would hide it, pixels. */
const NAME_ROOM = 90;

/** Shapes that are drawn together, how strongly. */
interface CrewLayer {
  readonly shapes: readonly Shape[];
  readonly opacity: number;
}

/** One view of the whole boat: where it stands on the drawing, pixels, and what point of the boat its upper left corner is. */
interface CrewView {
  readonly top: number;
  readonly height: number;
  readonly corner: ViewPoint;
  readonly layers: readonly CrewLayer[];
}

/** The whole boat with everybody in it, from above and from the side. */
export interface CrewDrawing {
  readonly width: number;
  readonly height: number;
  readonly pixelsPerMetre: number;
  readonly views: readonly CrewView[];
  /** Marks across both views: x in pixels, its name, and whether somebody kneels there. */
  readonly marks: readonly { readonly x: number; readonly name: string; readonly seat: boolean }[];
  /** Where the names of the boat's ends stand. */
  readonly ends: { readonly stern: number; readonly bow: number; readonly y: number };
}

/** The drawing of a crew's sheet, made of the same shapes as the bench's. */
export function crewDrawing(picture: Picture): CrewDrawing {
  const { fit } = picture;
  const lines = hullDrawing(fit.boat);
  const { least, most } = boatBox(picture, lines);
  const pixelsPerMetre = Math.min(GREATEST_SCALE, (WIDTH - 2 * SIDE) / (most.x - least.x));
  const left = (least.x + most.x) / 2 - WIDTH / 2 / pixelsPerMetre;
  const across = (x: number) => (x - left) * pixelsPerMetre;
  const tall = (metres: number) => Math.ceil(metres * pixelsPerMetre);
  const plan = { top: HEAD, height: tall(most.y - least.y), corner: [left, most.y] as const };
  const below = plan.top + plan.height + HEAD;
  const profile = { top: below, height: tall(most.z - least.z), corner: [left, most.z] as const };
  const seats = fit.boat.seats.map(({ stationM }, index) => ({
    x: across(stationM),
    name: say('bench.seat.of', { number: index + 1, name: firstOf(nameInSeat(fit, index)) }),
    seat: true,
  }));
  const middle = { x: across(0), name: say('drawing.centre-mark'), seat: false };
  const clear = seats.every(({ x }) => Math.abs(x - middle.x) > NAME_ROOM);
  const { hull } = lines;
  return {
    width: WIDTH,
    height: profile.top + profile.height,
    pixelsPerMetre,
    views: [
      { ...plan, layers: fromAbove(picture, lines) },
      { ...profile, layers: fromSide(picture, lines, [left, left + WIDTH / pixelsPerMetre]) },
    ],
    marks: clear ? [...seats, middle] : seats,
    ends: {
      stern: across(hull.aftX) - 6,
      bow: across(hull.foreX) + 6,
      y: plan.top + most.y * pixelsPerMetre,
    },
  };
}

/** Seats of a four stand close: the first name is enough, the table has the whole. */
const firstOf = (name: string) => name.split(' ')[0]!;

type Drawn = ReturnType<typeof hullDrawing>;

function fittingsOf({ fit, report }: Picture, view: 'plan' | 'profile') {
  const all = fit.seats.map((_, index) => fittingShapes(seatPlace(fit, report, index), view));
  return { under: all.flatMap(({ under }) => under), over: all.flatMap(({ over }) => over) };
}

function figuresOf({ figures }: Picture, view: 'plan' | 'profile'): Shape[] {
  return figures.flatMap((figure) => (figure ? figureShapes(figure, view) : []));
}

function fromAbove(picture: Picture, lines: Drawn): CrewLayer[] {
  const { hull, edge, board } = lines.drawn.plan;
  const afloat = afloatReady(picture);
  const water: Shape[] = [
    {
      kind: 'line',
      of: 'water',
      role: 'waterLine',
      weight: 'detail',
      lines: afloat ? waterlines(lines, afloat) : [],
    },
  ];
  const { under, over } = fittingsOf(picture, 'plan');
  return [
    { shapes: [...hull, ...board, ...water, ...edge, ...under], opacity: 1 },
    { shapes: figuresOf(picture, 'plan'), opacity: FROM_ABOVE.figure },
    { shapes: [...under, ...over, ...edge], opacity: FROM_ABOVE.fittingsOver },
  ];
}

function fromSide(picture: Picture, lines: Drawn, [aft, fore]: readonly [number, number]): CrewLayer[] {
  const { hull, edge, board } = lines.drawn.profile;
  const afloat = afloatReady(picture);
  const surface = afloat ? [aft, fore].map((x): ViewPoint => [x, waterHeight(afloat, x)]) : [];
  const deep = surface.toReversed().map(([x]): ViewPoint => [x, -1]);
  const water: Shape[] = [
    areaOf('water', { role: 'water', outline: null }, [ringThrough([...surface, ...deep])]),
    { kind: 'line', of: 'water', role: 'waterLine', weight: 'contour', lines: [lineThrough(surface)] },
  ];
  const { under, over } = fittingsOf(picture, 'profile');
  const boat = [...hull, ...(afloat ? water : []), ...edge, ...board];
  return [{ shapes: [...boat, ...under, ...figuresOf(picture, 'profile'), ...over], opacity: 1 }];
}
