import { cautionSentence, STANDING_CAUTIONS } from './caution-sentences.ts';
import { markName } from './floorboard-template.ts';
import { holeBlock } from './hole-block.ts';
import { fixingNotes, orderOfWork } from './order-of-work.ts';
import { recessBlock } from './recess-block.ts';
import type { SeatSetOut } from './set-out.ts';
import { column, listBlock, type SheetBlock } from './sheet-block.ts';
import { figureOf, writtenLength } from './sheet-length.ts';
import {
  acrossText,
  alongText,
  angleName,
  angleText,
  heightCheck,
  heightName,
  markWhat,
} from './sheet-names.ts';

const FIGURE = { anchor: 'end', strong: true } as const;
const TOLERANCE = column('±', 9, { anchor: 'end' });

/**
 * Everything on a set-out sheet but the drawing, in the order it is worked through: what to heed before cutting, marks,
 * checks, heights, angles, recess, holes, the order of work, fixing, cautions. Words only: paper flows them through
 * columns, the screen sets them as tables and lists, and neither can say another thing than the other.
 */
export function sheetBlocks(out: SeatSetOut): SheetBlock[] {
  const { units } = out.work.options;
  const special = out.cautions.map((caution) => cautionSentence(caution, units));
  return [
    ...(special.length === 0 ? [] : [listBlock('Before cutting: this fit', special, { strong: true })]),
    marksBlock(out),
    checksBlock(out),
    heightsBlock(out),
    anglesBlock(out),
    recessBlock(out),
    ...out.holes.map((list) => holeBlock(list, out)),
    listBlock('Order of work', orderOfWork(out), { numbered: true }),
    listBlock('Fixing and strap', fixingNotes(out)),
    listBlock('Cautions', STANDING_CAUTIONS),
  ];
}

function marksBlock(out: SeatSetOut): SheetBlock {
  const { units } = out.work.options;
  return {
    kind: 'table',
    heading: `Marks on the floorboard, ${units} from the ${markName(out)} and the centreline`,
    columns: [
      column('mark', 9, { strong: true }),
      column('what it is', 52),
      column('along', 26, FIGURE),
      column('across', 24, FIGURE),
      TOLERANCE,
    ],
    cells: out.marks.map((mark) => [
      mark.name,
      markWhat(out, mark.name),
      alongText(mark, units),
      acrossText(mark, units),
      mark.toleranceMm === 0 ? '' : figureOf(mark.toleranceMm, units),
    ]),
  };
}

function checksBlock(out: SeatSetOut): SheetBlock {
  const { units } = out.work.options;
  const tolerance = writtenLength(out.checks[0]?.toleranceMm ?? 0, units);
  return {
    kind: 'grid',
    heading: `Check dimensions, mark to mark, ± ${tolerance}`,
    sentence: null,
    perRow: 4,
    entries: out.checks.map(({ from, to, lengthMm }) => ({
      label: `${from} – ${to}`,
      value: figureOf(lengthMm, units),
      now: false,
    })),
  };
}

function heightsBlock(out: SeatSetOut): SheetBlock {
  const { units } = out.work.options;
  return {
    kind: 'table',
    heading: `Heights over the floorboard, ${units}`,
    columns: [column('what', 48), column('height', 15, FIGURE), TOLERANCE, column('check', 48)],
    cells: out.heights.map((row) => [
      heightName(row.height),
      figureOf(row.aboveFloorMm, units),
      figureOf(row.toleranceMm, units),
      heightCheck(row, units),
    ]),
  };
}

function anglesBlock(out: SeatSetOut): SheetBlock {
  const { units } = out.work.options;
  return {
    kind: 'table',
    heading: 'Angles',
    columns: [column('what', 42), column('angle', 15, FIGURE), TOLERANCE, column('the same with a tape', 54)],
    cells: out.angles.map((row) => [
      angleName(row.angle),
      `${row.deg.toFixed(1)}°`,
      `${row.toleranceDeg}°`,
      angleText(row, units),
    ]),
  };
}
