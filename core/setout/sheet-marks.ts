import { areaOf, lineThrough, pointsOf } from '../graphics/shape.ts';
import { halfBreadth as halfBreadthAt, sheerHeight } from '../hull/section-at.ts';
import { boardHalfWidthAt } from '../parts/board.ts';
import { bareLength, millimetres, tapeReading } from '../text/sheet-length.ts';
import { toFloor } from './block-frame.ts';
import { spreadRow } from './label-row.ts';
import { padCorners } from './pad-block.ts';
import { onPage, onPaper, type PaperShape, type Placement, paperWords } from './paper-marks.ts';
import { type SheetDrawing, VIEW_ROOM } from './sheet-drawing.ts';
import { CAPITALS_OVER_SIZE, SHEET_TYPE } from './sheet-inks.ts';
import { acrossText, writingOf } from './sheet-names.ts';
import { dimension, line, type MillimetrePoint, type TemplateShape } from './template-drawing.ts';
import { wholeBoatMarks } from './whole-boat.ts';

/** Where dimension lines stand under the plan, millimetres: two rows. */
const FIRST_LEVEL = 8;
/** Far enough below the first that its lettering stands clear. */
const SECOND_LEVEL = 15;
/** The floorboard's height is dimensioned this far outside the hull's greatest breadth, millimetres. */
const OUTSIDE_HULL = 5;
const FILLS = { fitting: 'woodFill', edge: 'boardFill' } as const;
const SMALL = { size: SHEET_TYPE.small } as const;

/**
 * Everything drawn on the first sheet: plan over profile on one x axis, the section beside the profile on one z axis, a
 * small plan of the whole boat. Box and marks in millimetres from the page's top left corner.
 */
export function sheetMarks(
  drawing: SheetDrawing,
  { box, scale }: { box: { left: number; top: number; width: number }; scale: number },
): PaperShape[] {
  const { stretch, halfBreadth, low, high } = drawing;
  const { say } = drawing.out.work.words;
  const { abovePlan, underPlan, aboveProfile, beside } = VIEW_ROOM;
  const wide = (stretch.fore - stretch.aft + 2 * halfBreadth) * scale + beside;
  const left = box.left + (box.width - wide) / 2 - stretch.aft * scale;
  const planMiddle = box.top + abovePlan + halfBreadth * scale;
  const base = planMiddle + halfBreadth * scale + underPlan + aboveProfile + high * scale;
  const at = (origin: MillimetrePoint): Placement => ({ scale, origin, fills: FILLS });
  const plan = at([left, planMiddle]);
  const profile = at([left, base]);
  const section = at([left + (stretch.fore + halfBreadth) * scale + beside, base]);
  return [
    ...ties(drawing, { plan, profile }),
    ...planMarks(drawing, plan),
    ...profileMarks(drawing, profile),
    ...sectionMarks(drawing, section),
    caption(say('work-view.plan'), onPage([stretch.aft, halfBreadth], plan), 14),
    caption(say('work-view.profile'), onPage([stretch.aft, high], profile), 14),
    caption(say('work-view.section'), onPage([-halfBreadth, high], section), 13),
    ...wholeBoatMarks(drawing, {
      right: section.origin[0] + halfBreadth * scale,
      top: box.top + abovePlan - 12,
      width: 2 * halfBreadth * scale + beside - 8,
    }),
    ...[onPage([stretch.fore, 0], plan), onPage([stretch.fore, (low + high) / 2], profile)].map(([x, y]) =>
      small(say('stroke.line.bow'), [x + 1.5, y + 0.9]),
    ),
    ...sides(drawing, { plan, section }),
    small(say('work-view.datum'), onPage([stretch.aft, low - 6 / scale], profile)),
  ];
}

/** Which side is which: inside the hull in the plan, over the section. */
function sides(
  { out, hull, stretch, halfBreadth, high }: SheetDrawing,
  { plan, section }: { plan: Placement; section: Placement },
): PaperShape[] {
  const { say } = out.work.words;
  // Between the board's edge and the hull's side, at the aft end of what is shown.
  const station = out.work.frame.stationX + stretch.aft / 1000;
  const board = millimetres(boardHalfWidthAt(out.work.boat.floorboard, station));
  const sheer = millimetres(halfBreadthAt(hull, station, sheerHeight(hull, station)) ?? 0);
  const inside = (side: 1 | -1): MillimetrePoint => {
    const [x, y] = onPage([stretch.aft, (side * (Math.min(board, sheer) + sheer)) / 2], plan);
    return [x + 1.5, y + 0.9];
  };
  const over = (x: number): MillimetrePoint => {
    const [right, top] = onPage([x, high], section);
    return [right, top - 1.5];
  };
  return [
    small(say('template.port'), inside(1)),
    small(say('template.starboard'), inside(-1)),
    small(say('template.port'), over(-halfBreadth)),
    small(say('template.starboard'), over(halfBreadth), 'end'),
  ];
}

/** Small lettering on a clear ground. */
function small(text: string, at: MillimetrePoint, anchor: 'start' | 'end' = 'start'): PaperShape {
  return paperWords(text, at, { ...SMALL, role: 'soft', anchor, clear: true });
}

/** A view's name over it. */
function caption(text: string, [x, y]: MillimetrePoint, up: number): PaperShape {
  return paperWords(text, [x, y - up], { size: SHEET_TYPE.body, strong: true, role: 'soft', clear: true });
}

/** Places that are dimensioned along the boat: mark, and its floor point. */
function places({ out }: SheetDrawing): { name: 'K' | 'R' | 'F' | 'T'; at: MillimetrePoint }[] {
  const { pad, rest, foot } = out.fittings;
  return [
    { name: 'K', at: pad.place.origin },
    { name: 'R', at: rest.place.origin },
    { name: 'F', at: foot.place.origin },
    { name: 'T', at: toFloor(foot.place, [foot.run, 0]) },
  ];
}

/** Faint lines that carry K, R, F, T and M from the plan down to the profile. */
function ties(
  drawing: SheetDrawing,
  { plan, profile }: { plan: Placement; profile: Placement },
): PaperShape[] {
  return [...places(drawing).map(({ at }) => at), [0, 0] as const].map(([x]) =>
    line('tie', onPage([x, drawing.halfBreadth], plan), onPage([x, drawing.low], profile)),
  );
}

/** The hull between its first two lines, filled. */
function hullFill(shapes: readonly TemplateShape[], placement: Placement): PaperShape[] {
  const lines = shapes.flatMap((shape) =>
    shape.kind === 'line' && shape.role === 'hull' ? shape.lines.map(pointsOf) : [],
  );
  const [first = [], second = []] = lines;
  const around = [...first, ...[...second].reverse()];
  if (around.length < 3) return [];
  const ring = lineThrough(around.map((point) => onPage(point, placement)));
  return [areaOf('hull', { role: 'hullFill', outline: null }, [ring])];
}

/** A mark's dot. */
function dot(centre: MillimetrePoint): PaperShape {
  return { kind: 'disc', of: 'mark', role: 'mark', at: centre, radius: 0.55, filled: true };
}

/** The view from above: distances along, from the seat's mark, and across. */
function planMarks(drawing: SheetDrawing, placement: Placement): PaperShape[] {
  const { out, stretch, halfBreadth, plan } = drawing;
  const { units } = out.work.options;
  const under = -halfBreadth;
  const level = { K: FIRST_LEVEL, R: SECOND_LEVEL, F: FIRST_LEVEL, T: SECOND_LEVEL };
  const along = places(drawing).map(({ name, at: [x] }): TemplateShape => {
    const [from, to] = x < 0 ? [x, 0] : [0, x];
    return dimension([from, under], [to, under], {
      offset: -level[name],
      text: bareLength(Math.abs(x), units),
    });
  });
  const overrun = 3 / placement.scale;
  const [mx, my] = onPage([0, halfBreadth], placement);
  return [
    ...hullFill(plan, placement),
    ...onPaper(
      [
        ...plan,
        line('centreline', [stretch.aft, 0], [stretch.fore, 0]),
        line('centreMark', [0, halfBreadth + overrun], [0, under - overrun]),
        ...along,
      ],
      placement,
    ),
    ...places(drawing).map(({ at }) => dot(onPage(at, placement))),
    ...acrossLabels(drawing, placement),
    paperWords('M', [mx, my - 3.6], { ...SMALL, anchor: 'middle', role: 'mark', strong: true }),
  ];
}

/** Over the plan: how far each place stands across. Long words move aside, so that none covers another or the M. */
function acrossLabels(drawing: SheetDrawing, placement: Placement): PaperShape[] {
  const { out, halfBreadth } = drawing;
  const { options, words } = out.work;
  const [mx, my] = onPage([0, halfBreadth], placement);
  const labels = places(drawing).map(({ name, at }) => {
    const across = acrossText({ portMm: tapeReading(at[1], options.units) }, writingOf(out));
    const text = name === 'T' ? 'T' : words.say('effect.written', { name, change: across });
    return { text, x: onPage([at[0], halfBreadth], placement)[0] };
  });
  const middles = spreadRow(labels, { text: 'M', x: mx }, SHEET_TYPE.small * CAPITALS_OVER_SIZE);
  return labels.map(({ text }, i) =>
    paperWords(text, [middles[i]!, my - 3], { ...SMALL, anchor: 'middle', role: 'measure', strong: true }),
  );
}

/** The view from the side: heights over the floorboard. */
function profileMarks(drawing: SheetDrawing, placement: Placement): PaperShape[] {
  const { out, profile } = drawing;
  const { units } = out.work.options;
  const { pad, rest, foot } = out.fittings;
  const floor = millimetres(out.work.frame.floorZ);
  const padXs = padCorners(pad).map((corner) => toFloor(pad.place, corner)[0]);
  const restXs = [1, -1].map((side) => toFloor(rest.place, [-rest.depthBehind, side * rest.halfWidth])[0]);
  const up = (x: number, height: number, offset: number): TemplateShape =>
    dimension([x, floor], [x, floor + height], { offset, text: bareLength(height, units) });
  return [
    ...hullFill(profile, placement),
    ...onPaper(
      [
        ...profile,
        up(Math.min(...padXs), pad.topHeight, 6),
        up(Math.max(...padXs), pad.bearingHeight, -6),
        up(Math.min(...restXs), rest.height, 6),
        ...(foot.heelHeight > 0.5 ? [up(foot.place.origin[0], foot.heelHeight, 6)] : []),
      ],
      placement,
    ),
    dot(onPage([pad.place.origin[0], floor + pad.bearingHeight], placement)),
    dot(onPage([rest.place.origin[0], floor + rest.height], placement)),
  ];
}

/** The view from behind, cut at the knee: how far out it lies and how high. */
function sectionMarks(drawing: SheetDrawing, placement: Placement): PaperShape[] {
  const { out, section, halfBreadth, low, high } = drawing;
  const { units } = out.work.options;
  const { pad } = out.fittings;
  const floor = millimetres(out.work.frame.floorZ);
  const knee = -pad.place.origin[1];
  const [from, to] = knee < 0 ? [knee, 0] : [0, knee];
  const half = millimetres(out.work.boat.floorboard.widthM) / 2;
  return [
    ...hullFill(section, placement),
    ...onPaper(
      [
        ...section,
        line('centreline', [0, low - 3 / placement.scale], [0, high + 4 / placement.scale]),
        dimension([from, high], [to, high], { offset: 5, text: bareLength(Math.abs(knee), units) }),
        dimension([half, low], [half, floor], {
          offset: -((halfBreadth - half) * placement.scale + OUTSIDE_HULL),
          text: bareLength(floor - low, units),
        }),
      ],
      placement,
    ),
    dot(onPage([knee, floor + pad.bearingHeight], placement)),
  ];
}
