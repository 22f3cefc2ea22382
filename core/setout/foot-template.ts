import { bowInBlock } from './block-frame.ts';
import { footPrint } from './foot-print.ts';
import type { SeatSetOut } from './set-out.ts';
import { figureOf } from './sheet-length.ts';
import { cross, dimension, line, ring, type TemplateDrawing, words } from './template-drawing.ts';

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
  const across = (x: number) => [[x, -half] as const, [x, half] as const];
  return {
    id: 'front-foot',
    title: say('template.foot', { side: foot.foot }),
    seen: say('template.foot.seen'),
    shapes: [
      ring('outline', footPrint(foot)),
      line('axis', [-AXIS_OVERRUN_MM, 0], [foot.length + AXIS_OVERRUN_MM, 0]),
      line('toeLine', ...across(foot.length)),
      line('edge', ...across(0)),
      line('depthLine', ...across(foot.heelToBall)),
      ...cross('centreMark', [0, 0], AXIS_OVERRUN_MM),
      words('F', [3, 3]),
      words('T', [foot.length - 3, 3], { anchor: 'end' }),
      words(say('template.toe-line'), [foot.length - 2, half - 1], { height: 2.5, anchor: 'end' }),
      words(say('template.ball'), [foot.heelToBall + 2, half - 1], { height: 2.5 }),
      words(say('template.heel-back'), [2, half - 1], { height: 2.5 }),
      ...(Math.abs(by) > 1e-6
        ? [
            line('centreline', [0, 0], [bx * foot.length, by * foot.length]),
            words(say('template.to-bow'), [bx * foot.length * 0.55, by * foot.length * 0.55 + 1.5], {
              height: 2.5,
              anchor: 'end',
            }),
          ]
        : []),
      dimension([0, -half], [foot.length, -half], { offset: -8, text: figureOf(foot.length, units) }),
    ],
  };
}
