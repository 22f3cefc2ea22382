import {
  line,
  type MillimetrePoint,
  type TemplateShape,
  textAt,
} from '../../core/setout/template-drawing.ts';
import type { Words } from '../../core/text/words.ts';

/** Length of a check bar, millimetres. Whoever cuts lays a ruler on both: they prove the scale each way. */
export const CHECK_BAR_MM = 100;
/** End ticks reach this far to each side, millimetres. */
const TICK_MM = 2;

/** Two bars of 100 mm from a corner, one to the right and one up, with ticks every 10 mm. Millimetres at full size. */
export function checkBars([x, y]: MillimetrePoint, said: Words): TemplateShape[] {
  // None at the corner: there each bar would reach past the end of the other, and a ruler would measure that too.
  const tens = Array.from({ length: 10 }, (_, k) => (k + 1) * 10);
  const reach = (at: number) => (at % 50 === 0 ? TICK_MM : TICK_MM / 2);
  return [
    line('checkBar', [x, y], [x + CHECK_BAR_MM, y]),
    line('checkBar', [x, y], [x, y + CHECK_BAR_MM]),
    ...tens.flatMap((at) => [
      line('checkBar', [x + at, y - reach(at)], [x + at, y + reach(at)]),
      line('checkBar', [x - reach(at), y + at], [x + reach(at), y + at]),
    ]),
    textAt(said.say('paper.bars'), [x + 3, y + 2.6], { role: 'checkBar', height: 2.5 }),
  ];
}
