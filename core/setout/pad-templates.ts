import type { Words } from '../text/words.ts';
import { bowInBlock, toBlock } from './block-frame.ts';
import type { HoleList } from './hole-list.ts';
import { floorLevel, halfWidthAt, recessOutline } from './knee-recess.ts';
import { type PadBlock, padCorners } from './pad-block.ts';
import type { SeatSetOut } from './set-out.ts';
import { figureOf, millimetres, writtenLength } from './sheet-length.ts';
import {
  circle,
  cross,
  dimension,
  line,
  type MillimetrePoint,
  ring,
  shifted,
  type TemplateDrawing,
  type TemplateShape,
  words,
} from './template-drawing.ts';

/** Depth lines are drawn at every so many millimetres below the top of the block. */
const DEPTH_STEP_MM = 5;
/** Gap between two views of one drawing, millimetres: room for dimensions. */
const VIEW_GAP_MM = 34;
/** How far axes run out beyond the block, millimetres. */
const OVERRUN_MM = 12;
/** Points along the bottom of the recess in the side view. */
const FLOOR_POINTS = 60;

/**
 * Full-size template of the recess, seen from above: its edge at the block's top, lines every 5 mm of depth, the wider cut
 * for the foam, the recess's axis, the shank as it lies in the ready stance, and the way to the bow. Origin K, where the
 * knee bears; x along the axis, forward. It says which knee it is drawn for and how sure that is.
 */
export function padRecessTemplate(out: SeatSetOut): TemplateDrawing {
  const { say } = out.work.words;
  const { pad } = out.fittings;
  const { units, foamM } = out.work.options;
  const foam = millimetres(foamM);
  const rim = pad.recess.depth;
  const half = halfWidthAt(pad.recess, 0, { level: rim, foam: 0 }) ?? 0;
  const { foreEnd, aftEnd, halfWidth } = pad;
  return {
    id: 'pad-recess',
    title: say('template.recess'),
    seen: say('template.recess.seen'),
    shapes: [
      ring('outline', padCorners(pad)),
      ...hollow('recess', pad, { level: rim, foam: 0 }),
      ...(foam > 0 ? hollow('foamCut', pad, { level: rim, foam }) : []),
      ...depthLines(pad),
      ...axes(pad, out.work.words),
      ...shankLine(pad, out.work.words),
      dimension([0, -half], [0, half], { offset: -(foreEnd - 6), text: figureOf(2 * half, units) }),
      dimension([aftEnd, halfWidth], [0, halfWidth], { offset: 10, text: figureOf(-aftEnd, units) }),
      dimension([0, halfWidth], [foreEnd, halfWidth], { offset: 10, text: figureOf(foreEnd, units) }),
      dimension([aftEnd, -halfWidth], [aftEnd, halfWidth], {
        offset: 10,
        text: figureOf(2 * halfWidth, units),
      }),
      words(say('template.fore'), [foreEnd - 4, -halfWidth + 4], { anchor: 'end' }),
      words(say('template.aft'), [aftEnd + 4, -halfWidth + 4]),
      words(
        say('template.recess.depth', {
          depth: writtenLength(rim, units),
          step: writtenLength(DEPTH_STEP_MM, units),
        }),
        [aftEnd, -halfWidth - 10],
      ),
      words(kneeText(out), [aftEnd, -halfWidth - 17]),
      ...(foam > 0
        ? [
            words(say('template.recess.foam', { foam: writtenLength(foam, units) }), [
              aftEnd,
              -halfWidth - 24,
            ]),
          ]
        : []),
    ],
  };
}

/** The knee that the recess is drawn for, and how sure that is. */
function kneeText({ knee, work }: SeatSetOut): string {
  const { say } = work.words;
  const breadth = writtenLength(knee.breadthMm, work.options.units);
  const doubt = writtenLength(knee.doubtMm, work.options.units);
  return knee.measured
    ? say('template.recess.knee', { breadth })
    : say('template.recess.knee.estimate', { breadth, half: doubt });
}

/**
 * Full-size pad block: plan with its bolts, profile on the axis under it, section at the bearing point beside the profile.
 * Bolts come from below and stop short of the recess: the plan shows where.
 */
export function padBlockTemplate(out: SeatSetOut): TemplateDrawing {
  const { say } = out.work.words;
  const { pad } = out.fittings;
  const { units } = out.work.options;
  const { foreEnd, aftEnd, halfWidth, topHeight } = pad;
  const down = -halfWidth - VIEW_GAP_MM - topHeight;
  const right = foreEnd + VIEW_GAP_MM + halfWidth;
  return {
    id: 'pad-block',
    title: say('template.block'),
    seen: say('template.block.seen'),
    shapes: [
      ring('outline', padCorners(pad)),
      ...hollow('recess', pad, { level: pad.recess.depth, foam: 0 }),
      ...axes(pad, out.work.words),
      ...boltMarks(
        pad,
        out.holes.find(({ fitting }) => fitting === 'kneePad'),
      ),
      dimension([aftEnd, halfWidth], [foreEnd, halfWidth], {
        offset: 10,
        text: figureOf(foreEnd - aftEnd, units),
      }),
      dimension([aftEnd, -halfWidth], [aftEnd, halfWidth], {
        offset: 10,
        text: figureOf(2 * halfWidth, units),
      }),
      words(say('template.block.plan'), [aftEnd, -halfWidth - 8]),
      ...shifted(profile(out), [0, down]),
      ...shifted(section(out), [right, down]),
    ],
  };
}

/** The hollow at a level as a line: a ring where it is closed, open where it runs out of the block's aft end. */
function hollow(
  layer: 'recess' | 'depthLine' | 'foamCut',
  { recess }: PadBlock,
  at: { level: number; foam: number },
): TemplateShape[] {
  const outline = recessOutline(recess, at);
  if (!outline) return [];
  return [{ kind: 'polyline', layer, points: outline.points, closed: !outline.open }];
}

function depthLines(pad: PadBlock): TemplateShape[] {
  const count = Math.ceil(pad.recess.depth / DEPTH_STEP_MM) - 1;
  return Array.from({ length: Math.max(0, count) }, (_, k) =>
    hollow('depthLine', pad, { level: pad.recess.depth - DEPTH_STEP_MM * (k + 1), foam: 0 }),
  ).flat();
}

/** The recess's axis, the boat's fore-and-aft line through the bearing point, and the bearing point itself. */
function axes({ place, foreEnd, aftEnd, halfWidth }: PadBlock, said: Words): TemplateShape[] {
  const [bx, by] = bowInBlock(place);
  const reach = Math.min(
    (foreEnd + OVERRUN_MM) / Math.max(bx, 0.2),
    (halfWidth + OVERRUN_MM) / Math.max(Math.abs(by), 1e-6),
  );
  return [
    line('axis', [aftEnd - OVERRUN_MM, 0], [foreEnd + OVERRUN_MM, 0]),
    line('centreline', [-bx * reach, -by * reach], [bx * reach, by * reach]),
    words(said.say('template.to-bow'), [bx * reach + 2, by * reach - 1.2]),
    ...cross('centreMark', [0, 0], 6),
    circle('centreMark', [0, 0], 2.5),
    words('K', [3.5, 3]),
  ];
}

function shankLine({ shankOffAxis, aftEnd }: PadBlock, said: Words): TemplateShape[] {
  const end: MillimetrePoint = [aftEnd, aftEnd * Math.tan(shankOffAxis)];
  return [
    line('fitting', [0, 0], end),
    words(said.say('template.shank'), [end[0] + 3, end[1] + 1.5], { height: 2.5 }),
  ];
}

/** The present bolts where they come up through the block. */
function boltMarks({ place }: PadBlock, list: HoleList | undefined): TemplateShape[] {
  if (!list) return [];
  const radius = list.diameterMm / 2;
  return list.bolts.flatMap((bolt) => {
    const centre = toBlock(place, bolt);
    return [circle('drillNow', centre, radius), ...cross('drillNow', centre, radius + 3)];
  });
}

/** Side view on the axis: base at y = 0. */
function profile({ fittings: { pad }, work }: SeatSetOut): TemplateShape[] {
  const { units, foamM } = work.options;
  const { foreEnd, aftEnd, bearingHeight, topHeight } = pad;
  const foam = millimetres(foamM);
  return [
    ring('outline', [
      [foreEnd, 0],
      [foreEnd, topHeight],
      [aftEnd, topHeight],
      [aftEnd, 0],
    ]),
    line('recess', ...bottomLine(pad, 0)),
    ...(foam > 0 ? [line('foamCut', ...bottomLine(pad, foam))] : []),
    line('axis', [0, -OVERRUN_MM / 2], [0, topHeight + OVERRUN_MM / 2]),
    dimension([0, 0], [0, bearingHeight], { offset: 0, text: figureOf(bearingHeight, units) }),
    dimension([aftEnd, 0], [aftEnd, topHeight], { offset: 10, text: figureOf(topHeight, units) }),
    words('K', [2, bearingHeight + 2]),
    words(work.words.say('template.profile'), [aftEnd, -8]),
  ];
}

/** The recess's bottom under its axis, cut off at the block's top. */
function bottomLine(pad: PadBlock, foam: number): MillimetrePoint[] {
  const { recess, bearingHeight, topHeight, foreEnd, aftEnd } = pad;
  const points: MillimetrePoint[] = [];
  for (let k = 0; k <= FLOOR_POINTS; k++) {
    const x = aftEnd + ((foreEnd - aftEnd) * k) / FLOOR_POINTS;
    const level = floorLevel(recess, x, foam);
    if (level !== null && level <= recess.depth) points.push([x, bearingHeight + level]);
  }
  const last = points.at(-1);
  return last && last[0] < foreEnd ? [...points, [last[0], topHeight]] : points;
}

/** Section across the block at the bearing point, seen from behind: port to the left. */
function section({ fittings: { pad }, work }: SeatSetOut): TemplateShape[] {
  const { halfWidth, bearingHeight, topHeight, recess } = pad;
  const foam = millimetres(work.options.foamM);
  return [
    ring('outline', [
      [halfWidth, 0],
      [halfWidth, topHeight],
      [-halfWidth, topHeight],
      [-halfWidth, 0],
    ]),
    line('recess', ...hollowAcross(recess, bearingHeight, 0)),
    ...(foam > 0 ? [line('foamCut', ...hollowAcross(recess, bearingHeight, foam))] : []),
    line('axis', [0, -OVERRUN_MM / 2], [0, topHeight + OVERRUN_MM / 2]),
    words(work.words.say('template.section'), [-halfWidth, -8]),
  ];
}

function hollowAcross(recess: PadBlock['recess'], bearingHeight: number, foam: number): MillimetrePoint[] {
  const steps = 24;
  const low = -foam;
  const half = Array.from({ length: steps + 1 }, (_, k): MillimetrePoint => {
    const level = low + (recess.depth - low) * (k / steps) ** 2;
    return [halfWidthAt(recess, 0, { level, foam }) ?? 0, bearingHeight + level];
  });
  const other = half.map(([x, y]): MillimetrePoint => [-x, y]).reverse();
  return [...other, ...half.slice(1)];
}
