import { bareLength, millimetres, writtenLength } from '../text/sheet-length.ts';
import { halfWidthAt } from './knee-recess.ts';
import type { SeatSetOut } from './set-out.ts';
import { column, type SheetBlock } from './sheet-block.ts';
import { HEIGHT_TOLERANCE_MM } from './tolerances.ts';

/**
 * The knee that the recess is drawn for and how sure that is, and the recess's own sizes at K: across the finished hollow
 * at the block's top, and across the cut in the wood where foam lines it. An estimated knee tells the reader to measure.
 */
export function recessBlock(out: SeatSetOut): SheetBlock {
  const { units, foamM } = out.work.options;
  const { say } = out.work.words;
  const { recess } = out.fittings.pad;
  const foam = millimetres(foamM);
  const across = (at: { level: number; foam: number }) => 2 * (halfWidthAt(recess, 0, at) ?? 0);
  const rim = recess.depth;
  const tolerance = bareLength(2 * HEIGHT_TOLERANCE_MM, units);
  const row = (what: string, lengthMm: number, check: string) => [
    what,
    bareLength(lengthMm, units),
    tolerance,
    check,
  ];
  const { breadthMm, doubtMm, measured } = out.knee;
  return {
    kind: 'table',
    heading: say('work-sheet.recess', { unit: units }),
    columns: [
      column(say('work-sheet.what'), 42),
      column(say('work-sheet.size'), 15, { anchor: 'end', strong: true }),
      column('±', 9, { anchor: 'end' }),
      column(say('work-sheet.how-sure'), 54),
    ],
    cells: [
      [
        say('athlete.knee-breadth'),
        bareLength(breadthMm, units),
        bareLength(doubtMm, units),
        say(measured ? 'work-sheet.knee.measured' : 'work-sheet.knee.estimate'),
      ],
      row(
        say('work-sheet.recess.across'),
        across({ level: rim, foam: 0 }),
        say('work-sheet.recess.finished'),
      ),
      ...(foam > 0
        ? [
            row(
              say('work-sheet.cut.across'),
              across({ level: rim, foam }),
              say('work-sheet.cut.for-foam', { foam: writtenLength(foam, units) }),
            ),
          ]
        : []),
    ],
  };
}
