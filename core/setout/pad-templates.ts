import { bareLength, millimetres, tapeReadingBelow, writtenLength } from '../text/sheet-length.ts';
import type { Words } from '../text/words.ts';
import { bowInBlock, toBlock } from './block-frame.ts';
import type { HoleList } from './hole-list.ts';
import { halfWidthAt } from './knee-recess.ts';
import { type PadBlock, padCorners } from './pad-block.ts';
import { padProfile, padSection } from './pad-sections.ts';
import { DEPTH_STEP_MM, figuresLast, finishedLines, hollowAt, woodLines } from './recess-contours.ts';
import { smallestRadius } from './recess-floor.ts';
import type { SeatSetOut } from './set-out.ts';
import {
  circle,
  crossLines,
  dimension,
  inViews,
  line,
  type MillimetrePoint,
  ring,
  shifted,
  type TemplateDrawing,
  type TemplateShape,
  textAt,
} from './template-drawing.ts';

/** Gap between two views of one drawing, millimetres: room for dimensions. */
const VIEW_GAP_MM = 34;
/** How far axes run out beyond the block, millimetres. */
const OVERRUN_MM = 12;
/** Height of small lettering, millimetres. */
const SMALL_MM = 2.5;
/** Where the shank's name stands on its line, as a share of the line's length. */
const NAME_OF_SHANK = 0.8;
/** Figures across an axis stand aside of it. */
const ASIDE = 0.2;

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
      ...hollowAt('recess', pad, { level: rim, foam: 0 }),
      ...(foam > 0 ? hollowAt('foamCut', pad, { level: rim, foam }) : []),
      ...figuresLast([...finishedLines(pad, units), ...woodLines(pad, foam, units)]),
      ...axes(pad, out.work.words),
      ...shankLine(pad, out.work.words),
      dimension([0, -half], [0, half], {
        offset: -(foreEnd - 6),
        text: bareLength(2 * half, units),
        // The line to the bow runs out on one side of the axis: the figure stands on the other.
        figureAt: bowInBlock(pad.place)[1] < 0 ? 1 - ASIDE : ASIDE,
      }),
      dimension([aftEnd, halfWidth], [0, halfWidth], { offset: 10, text: bareLength(-aftEnd, units) }),
      dimension([0, halfWidth], [foreEnd, halfWidth], { offset: 10, text: bareLength(foreEnd, units) }),
      dimension([aftEnd, -halfWidth], [aftEnd, halfWidth], {
        offset: 10,
        text: bareLength(2 * halfWidth, units),
        figureAt: ASIDE,
      }),
      textAt(say('template.fore'), [foreEnd - 4, -halfWidth + 4], { anchor: 'end' }),
      textAt(say('template.aft'), [aftEnd + 4, -halfWidth + 4]),
      textAt(
        say('template.recess.depth', {
          depth: writtenLength(rim, units),
          step: writtenLength(DEPTH_STEP_MM, units),
        }),
        [aftEnd, -halfWidth - 10],
      ),
      textAt(kneeText(out), [aftEnd, -halfWidth - 17]),
      textAt(radiusText(out), [aftEnd, -halfWidth - (foam > 0 ? 31 : 24)]),
      ...(foam > 0
        ? [
            textAt(say('template.recess.foam', { foam: writtenLength(foam, units) }), [
              aftEnd,
              -halfWidth - 24,
            ]),
          ]
        : []),
    ],
  };
}

/** What a cutter must be able to do: the smallest radius of the wood's surface, rounded down. */
function radiusText({ fittings, work }: SeatSetOut): string {
  const radius = smallestRadius(fittings.pad.recess, millimetres(work.options.foamM));
  const { units } = work.options;
  const least = writtenLength(tapeReadingBelow(radius, units), units);
  return work.words.say('template.recess.radius', { radius: least });
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
  const { foreEnd, halfWidth, topHeight } = out.fittings.pad;
  const down = -halfWidth - VIEW_GAP_MM - topHeight;
  const right = foreEnd + VIEW_GAP_MM + halfWidth;
  return {
    id: 'pad-block',
    title: say('template.block'),
    seen: say('template.block.seen'),
    ...inViews(padPlan(out), shifted(padProfile(out), [0, down]), shifted(padSection(out), [right, down])),
  };
}

/** The block from above with its bolts, millimetres from K. */
function padPlan(out: SeatSetOut): TemplateShape[] {
  const { pad } = out.fittings;
  const { units } = out.work.options;
  const { foreEnd, aftEnd, halfWidth } = pad;
  return [
    ring('outline', padCorners(pad)),
    ...hollowAt('recess', pad, { level: pad.recess.depth, foam: 0 }),
    ...axes(pad, out.work.words),
    ...boltMarks(
      pad,
      out.holes.find(({ fitting }) => fitting === 'kneePad'),
    ),
    dimension([aftEnd, halfWidth], [foreEnd, halfWidth], {
      offset: 10,
      text: bareLength(foreEnd - aftEnd, units),
    }),
    dimension([aftEnd, -halfWidth], [aftEnd, halfWidth], {
      offset: 10,
      text: bareLength(2 * halfWidth, units),
      figureAt: ASIDE,
    }),
    textAt(out.work.words.say('template.block.plan'), [aftEnd, -halfWidth - 8]),
  ];
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
    textAt(said.say('template.to-bow'), [bx * reach + 2, by * reach - 1.2]),
    ...crossLines('centreMark', [0, 0], 6),
    circle('centreMark', [0, 0], 2.5),
    textAt('K', [3.5, 3]),
  ];
}

/** The line along which the shin lies, named beside it. */
function shankLine({ shankOffAxis, aftEnd }: PadBlock, said: Words): TemplateShape[] {
  const end: MillimetrePoint = [aftEnd, aftEnd * Math.tan(shankOffAxis)];
  // On the side of the line away from the axis, between the edge of the hollow and the block's end as a rule.
  const [x, y] = [NAME_OF_SHANK * end[0], NAME_OF_SHANK * end[1]];
  const beside = end[1] >= 0 ? y + 1 : y - 1 - SMALL_MM;
  return [
    line('fitting', [0, 0], end),
    textAt(said.say('template.shank'), [x, beside], { height: SMALL_MM, anchor: 'middle', clear: true }),
  ];
}

/** The present bolts where they come up through the block. */
function boltMarks({ place }: PadBlock, list: HoleList | undefined): TemplateShape[] {
  if (!list) return [];
  const radius = list.diameterMm / 2;
  return list.bolts.flatMap((bolt) => {
    const centre = toBlock(place, bolt);
    return [circle('drillNow', centre, radius), ...crossLines('drillNow', centre, radius + 3)];
  });
}
