import { bareLength } from '../text/sheet-length.ts';
import { bowInBlock } from './block-frame.ts';
import { type NamePlaces, withNames } from './clear-place.ts';
import { footPrint } from './foot-print.ts';
import type { SeatSetOut } from './set-out.ts';
import {
  crossLines,
  dimension,
  line,
  type MillimetrePoint,
  ring,
  type TemplateDrawing,
  textAt,
} from './template-drawing.ts';

/** How far the axis runs out beyond heel and toes, millimetres: no more, so that most feet find room on one page. */
const AXIS_OVERRUN_MM = 4;
/** How far toe line and heel line run out beyond the foot on each side, millimetres. */
const LINE_OVERRUN_MM = 18;

/**
 * Full-size print of the front foot with its heel line, ball and toe line, its axis, and the boat's fore-and-aft line where
 * the toes turn out. Origin the back of the heel, x to the toes. On a slope the print lies on the slope, not on the floor.
 */
export function frontFootTemplate(out: SeatSetOut): TemplateDrawing {
  const { say } = out.work.words;
  const { foot } = out.fittings;
  const { units } = out.work.options;
  const half = foot.breadth / 2 + LINE_OVERRUN_MM;
  const [bx, by] = bowInBlock(foot.place);
  const turned = Math.abs(by) > 1e-6;
  const bow: MillimetrePoint = [bx * foot.length, by * foot.length];
  const across = (x: number) => [[x, -half] as const, [x, half] as const];
  return {
    id: 'front-foot',
    title: say('template.foot', { side: foot.foot }),
    seen: say('template.foot.seen'),
    shapes: withNames(
      [
        ring('outline', footPrint(foot)),
        line('axis', [-AXIS_OVERRUN_MM, 0], [foot.length + AXIS_OVERRUN_MM, 0]),
        line('toeLine', ...across(foot.length)),
        line('edge', ...across(0)),
        line('depthLine', ...across(foot.heelToBall)),
        ...crossLines('centreMark', [0, 0], AXIS_OVERRUN_MM),
        textAt('F', [3, 3]),
        textAt('T', [foot.length - 3, 3], { anchor: 'end' }),
        textAt(say('work-mark.T'), [foot.length - 2, half - 1], { height: 2.5, anchor: 'end' }),
        textAt(say('template.ball'), [foot.heelToBall + 2, half - 1], { height: 2.5 }),
        textAt(say('work-mark.F'), [2, half - 1], { height: 2.5 }),
        ...(turned ? [line('centreline', [0, 0], bow)] : []),
        dimension([0, -half], [foot.length, -half], { offset: -8, text: bareLength(foot.length, units) }),
      ],
      turned ? [besideLine(say('template.to-bow'), bow)] : [],
    ),
  };
}

/** Places for small words beside a line that starts at the origin: over and under it, from its middle outward. */
function besideLine(text: string, [x, y]: MillimetrePoint): NamePlaces {
  return [0.55, 0.7, 0.4, 0.85].flatMap((share) =>
    [1.5, -4, 4, -6.5].map((lift) =>
      textAt(text, [x * share, y * share + lift], { height: 2.5, anchor: 'middle' }),
    ),
  );
}
