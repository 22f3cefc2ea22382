import type { Boat } from '../document/boat-schema.ts';
import { boardEnds, boardHalfWidthAt, boardStations } from '../parts/board.ts';
import { railStretch } from '../parts/rails.ts';
import { millimetres } from '../text/sheet-length.ts';
import type { Words } from '../text/words.ts';
import type { BoardPlan } from './board-plan.ts';
import {
  BOARD_ASIDE,
  circle,
  crossLines,
  type FullSizeDrawing,
  textAt as lettering,
  line,
  type MillimetrePoint,
  type TemplateLayer,
  type TemplateShape,
} from './template-drawing.ts';

/** Layers of the paddlers, in the order of their letters; past the sixth they begin again: the letter tells them apart. */
export const PADDLER_LAYERS = [
  'paddlerA',
  'paddlerB',
  'paddlerC',
  'paddlerD',
  'paddlerE',
  'paddlerF',
] as const satisfies readonly TemplateLayer[];

/** Board shown beyond the outermost hole, millimetres. */
const BEYOND_MM = 50;
/** Rings of the paddlers round a hole: from its edge to the first, and from one to the next, millimetres. */
const RING_MM = 1.6;
/** Height of the letters beside a hole, and of its number. */
const LETTER_MM = 2.8;
/** Millimetres; larger than the letters, for it is read first. */
const NUMBER_MM = 4;
/** White between rings and lettering. */
const BESIDE_MM = 0.8;

/** The layer of the paddler at a place in the list. */
export function paddlerLayer(place: number): TemplateLayer {
  return PADDLER_LAYERS[place % PADDLER_LAYERS.length]!;
}

/**
 * The floorboard at full size with every hole: drilled, new, unused and plugged, each with its number, the letters of all
 * whose fittings stand in it, and a ring in the colour of each, in their order from the hole outward: in grey the letters tell. x
 * forward of mid-length, y to port, millimetres.
 */
export function boardPlanDrawing(boat: Boat, plan: BoardPlan, words: Words): FullSizeDrawing {
  const marks = [...holeShapes(plan), ...unusedShapes(plan), ...onRailShapes(boat, plan)];
  const onRails = plan.people.flatMap(({ padRailsXM, restRailsXM }) => [padRailsXM, restRailsXM]);
  const xs = [
    ...[...plan.holes, ...plan.unused].map(({ xM }) => xM),
    ...onRails.filter((x) => x !== undefined),
  ].map(millimetres);
  const ends = boardEnds(boat.floorboard).map(millimetres);
  const aft = Math.max(Math.min(...xs, 0) - BEYOND_MM, Math.min(...ends));
  const fore = Math.min(Math.max(...xs, 0) + BEYOND_MM, Math.max(...ends));
  const halfAt = (x: number) => millimetres(boardHalfWidthAt(boat.floorboard, x / 1000));
  return {
    title: words.say('board.paper.floorboard'),
    seen: words.say('template.floorboard.seen'),
    facing: words.say('board.paper.facing'),
    aside: BOARD_ASIDE,
    shapes: [
      ...sides(boat, { aft, fore, halfAt }),
      ...railLines(boat, { aft, fore }),
      line('centreline', [aft, 0], [fore, 0]),
      line('centreMark', [0, -halfAt(0) - 5], [0, halfAt(0) + 5]),
      lettering(words.say('board.paper.middle'), [2.5, halfAt(0) - 8]),
      lettering(words.say('template.left'), [aft + 6, halfAt(aft) + 3]),
      lettering(words.say('template.right'), [aft + 6, -halfAt(aft) - 6.5]),
      lettering(words.say('template.bow'), [fore - 4, 3], { anchor: 'end' }),
      ...marks,
    ],
  };
}

/** The board's long edges between two places, and its ends where they lie there. */
function sides(
  { floorboard }: Boat,
  { aft, fore, halfAt }: { aft: number; fore: number; halfAt: (x: number) => number },
): TemplateShape[] {
  const bends = boardStations(floorboard)
    .map(millimetres)
    .filter((x) => x > aft && x < fore);
  const side = [aft, ...bends, fore].map((x): MillimetrePoint => [x, halfAt(x)]);
  const ends = boardEnds(floorboard).map(millimetres);
  return [
    line('outline', ...side),
    line('outline', ...side.map(([x, y]): MillimetrePoint => [x, -y])),
    ...ends
      .filter((x) => x >= aft - 1e-6 && x <= fore + 1e-6)
      .map((x) => line('outline', [x, -halfAt(x)], [x, halfAt(x)])),
  ];
}

/** Every hole with its cross, one ring for each paddler who uses it, and its number. */
function holeShapes({ holes, people }: BoardPlan): TemplateShape[] {
  const placeOf = (letter: string) => people.findIndex((one) => one.letter === letter);
  return holes.flatMap(({ number, xM, yM, diameterM, drilled, letters }) => {
    const at: MillimetrePoint = [millimetres(xM), millimetres(yM)];
    const radius = millimetres(diameterM) / 2;
    const layer = drilled ? 'drill' : 'drillNow';
    const outer = radius + RING_MM * (letters.length + 1);
    return [
      circle(layer, at, radius),
      ...crossLines(layer, at, radius + 1.2),
      ...letters.map((letter, k) => circle(paddlerLayer(placeOf(letter)), at, radius + RING_MM * (k + 1))),
      // Number over the rings, letters under them: holes in a row along the boat stand closer than any across it.
      lettering(String(number), [at[0], at[1] + outer + BESIDE_MM], { height: NUMBER_MM, anchor: 'middle' }),
      ...letters.map((letter, k) => {
        const aside = (k - (letters.length - 1) / 2) * LETTER_MM * 1.4;
        return lettering(letter, [at[0] + aside, at[1] - outer - BESIDE_MM - LETTER_MM], {
          height: LETTER_MM,
          anchor: 'middle',
          strong: true,
        });
      }),
    ];
  });
}

/** The rails as far as the drawing goes. */
function railLines({ floorboard, hardware }: Boat, shown: { aft: number; fore: number }): TemplateShape[] {
  return (hardware.rails ?? []).flatMap((pair) => {
    const [aft, fore] = railStretch(pair, floorboard).map(millimetres) as [number, number];
    const [from, to] = [Math.max(aft, shown.aft), Math.min(fore, shown.fore)];
    if (to <= from) return [];
    return [1, -1].map((side) => {
      const y = (side * millimetres(pair.apartM)) / 2;
      return line('fitting', [from, y], [to, y]);
    });
  });
}

/** Where each paddler's bolts stand in the rails: a ring in both, and a letter that stands farther out where it would meet another. */
function onRailShapes({ hardware }: Boat, { people }: BoardPlan): TemplateShape[] {
  return (hardware.rails ?? []).flatMap(({ fitting, apartM, holeM }) => {
    const stationOf = (person: BoardPlan['people'][number]) =>
      fitting === 'kneePad' ? person.padRailsXM : person.restRailsXM;
    return people.flatMap((person, place) => {
      const station = stationOf(person);
      if (station === undefined) return [];
      const layer = paddlerLayer(place);
      const near = people.slice(0, place).filter((other) => {
        const there = stationOf(other);
        return there !== undefined && Math.abs(millimetres(there - station)) < 1.4 * LETTER_MM;
      });
      const out = 1 + near.length * 1.3 * LETTER_MM;
      return [1, -1].flatMap((side) => {
        const at: MillimetrePoint = [millimetres(station), (side * millimetres(apartM)) / 2];
        const radius = millimetres(holeM) / 2 + RING_MM;
        return [
          circle(layer, at, radius),
          lettering(person.letter, [at[0], at[1] + side * (radius + out) - (side < 0 ? LETTER_MM : 0)], {
            height: LETTER_MM,
            anchor: 'middle',
            strong: true,
          }),
        ];
      });
    });
  });
}

/** Holes that nobody uses: bare where they are drilled, crossed out where they are plugged. */
function unusedShapes({ unused }: BoardPlan): TemplateShape[] {
  return unused.flatMap(({ xM, yM, diameterM, state }) => {
    const [x, y] = [millimetres(xM), millimetres(yM)];
    const radius = millimetres(diameterM) / 2;
    const reach = radius * Math.SQRT1_2;
    const crossed = [
      line('drill', [x - reach, y - reach], [x + reach, y + reach]),
      line('drill', [x - reach, y + reach], [x + reach, y - reach]),
    ];
    return [circle('drill', [x, y], radius), ...(state === 'plugged' ? crossed : [])];
  });
}
