import { halfWidthAt } from './knee-recess.ts';
import type { SeatSetOut } from './set-out.ts';
import { column, type SheetBlock } from './sheet-block.ts';
import { figureOf, millimetres, writtenLength } from './sheet-length.ts';
import { HEIGHT_TOLERANCE_MM } from './tolerances.ts';

/**
 * The knee that the recess is drawn for and how sure that is, and the recess's own sizes at K: across the finished hollow
 * at the block's top, and across the cut in the wood where foam lines it. An estimated knee tells the reader to measure.
 */
export function recessBlock(out: SeatSetOut): SheetBlock {
  const { units, foamM } = out.work.options;
  const { recess } = out.fittings.pad;
  const foam = millimetres(foamM);
  const across = (at: { level: number; foam: number }) => 2 * (halfWidthAt(recess, 0, at) ?? 0);
  const rim = recess.depth;
  const tolerance = figureOf(2 * HEIGHT_TOLERANCE_MM, units);
  const row = (what: string, lengthMm: number, check: string) => [
    what,
    figureOf(lengthMm, units),
    tolerance,
    check,
  ];
  const { breadthMm, doubtMm, measured } = out.knee;
  return {
    kind: 'table',
    heading: `Knee and recess at K, ${units}`,
    columns: [
      column('what', 42),
      column('size', 15, { anchor: 'end', strong: true }),
      column('±', 9, { anchor: 'end' }),
      column('how sure', 54),
    ],
    cells: [
      [
        'Knee, across its knuckles',
        figureOf(breadthMm, units),
        figureOf(doubtMm, units),
        measured ? 'measured' : 'estimate; measure the knee before carving',
      ],
      row('Recess across, at the block’s top', across({ level: rim, foam: 0 }), 'finished, over the foam'),
      ...(foam > 0
        ? [
            row(
              'Cut across, at the block’s top',
              across({ level: rim, foam }),
              `for ${writtenLength(foam, units)} foam`,
            ),
          ]
        : []),
    ],
  };
}
