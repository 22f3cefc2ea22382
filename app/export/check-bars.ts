import { line, type MillimetrePoint, type TemplateShape, words } from '../../core/setout/template-drawing.ts';
import type { Words } from '../../core/text/words.ts';

/** Length of a check bar, millimetres. Whoever cuts lays a ruler on both: they prove the scale each way. */
export const CHECK_BAR_MM = 100;
/** End ticks reach this far to each side, millimetres. */
const TICK_MM = 2;

/** Two bars of 100 mm from a corner, one to the right and one up, with ticks every 10 mm. Millimetres at full size. */
export function checkBars([x, y]: MillimetrePoint, said: Words): TemplateShape[] {
  const tens = Array.from({ length: 11 }, (_, k) => k * 10);
  const reach = (at: number) => (at % 50 === 0 ? TICK_MM : TICK_MM / 2);
  return [
    line('checkBar', [x, y], [x + CHECK_BAR_MM, y]),
    line('checkBar', [x, y], [x, y + CHECK_BAR_MM]),
    ...tens.flatMap((at) => [
      line('checkBar', [x + at, y - reach(at)], [x + at, y + (at === 0 ? 0 : reach(at))]),
      line('checkBar', [x - reach(at), y + at], [x + (at === 0 ? 0 : reach(at)), y + at]),
    ]),
    words(said.say('paper.bars'), [x + 3, y + 2.6], { layer: 'checkBar', height: 2.5 }),
  ];
}
