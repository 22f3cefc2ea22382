import { bareLength, writtenLength } from '../text/sheet-length.ts';
import { cautionSentence, STANDING_CAUTIONS } from './caution-sentences.ts';
import { finishedBlock, recessDepthBlock } from './finished-block.ts';
import { cutListBlock, fixingBlock, forceNote } from './fixing-block.ts';
import { seatOf } from './floorboard-template.ts';
import { holeBlock } from './hole-block.ts';
import { fixingNotes, orderOfWork } from './order-of-work.ts';
import { recessBlock } from './recess-block.ts';
import type { SeatSetOut } from './set-out.ts';
import { column, listBlock, type SheetBlock } from './sheet-block.ts';
import {
  acrossText,
  alongText,
  angleName,
  angleText,
  heightCheck,
  heightName,
  markWhat,
  writingOf,
} from './sheet-names.ts';

/** Column of figures to work to. */
const FIGURE = { anchor: 'end', strong: true } as const;
const TOLERANCE = column('±', 9, { anchor: 'end' });

/**
 * Everything on a set-out sheet but the drawing, in the order it is worked through: what to watch for before cutting, marks,
 * checks, heights, angles, recess, holes, the order of work, fixing, cautions. Words only: paper flows them through
 * columns, the screen sets them as tables and lists, and neither can say another thing than the other.
 */
export function sheetBlocks(out: SeatSetOut): SheetBlock[] {
  const { units, words } = writingOf(out);
  const depths = recessDepthBlock(out);
  const special = out.cautions.map((caution) => cautionSentence(caution, words, units));
  return [
    ...(special.length === 0
      ? []
      : [listBlock(words.say('work-sheet.before-cutting'), special, { strong: true })]),
    marksBlock(out),
    checksBlock(out),
    heightsBlock(out),
    anglesBlock(out),
    finishedBlock(out),
    ...(out.work.shelf.pad ? [] : [recessBlock(out)]),
    ...(depths ? [depths] : []),
    ...out.holes.map((list) => holeBlock(list, out)),
    fixingBlock(out),
    cutListBlock(out),
    listBlock(words.say('work-sheet.order'), orderOfWork(out), { numbered: true }),
    listBlock(words.say('work-sheet.fixing'), [...fixingNotes(out), ...forceNote(out)]),
    listBlock(
      words.say('work-sheet.cautions'),
      STANDING_CAUTIONS.map((key) => words.say(key)),
    ),
  ];
}

/** The table of marks. */
function marksBlock(out: SeatSetOut): SheetBlock {
  const { units, words } = writingOf(out);
  return {
    kind: 'table',
    heading: words.say('work-sheet.marks', { ...seatOf(out), unit: units }),
    columns: [
      column(words.say('work-sheet.mark'), 9, { strong: true }),
      column(words.say('work-sheet.what-it-is'), 52),
      column(words.say('work-sheet.along'), 26, FIGURE),
      column(words.say('work-sheet.across'), 24, FIGURE),
      TOLERANCE,
    ],
    cells: out.marks.map((mark) => [
      mark.name,
      markWhat(out, mark.name),
      alongText(mark, { units, words }),
      acrossText(mark, { units, words }),
      mark.toleranceMm === 0 ? '' : bareLength(mark.toleranceMm, units),
    ]),
  };
}

/** Lengths between marks, four to a row. */
function checksBlock(out: SeatSetOut): SheetBlock {
  const { units, words } = writingOf(out);
  const tolerance = writtenLength(out.checks[0]?.toleranceMm ?? 0, units);
  return {
    kind: 'grid',
    heading: words.say('work-sheet.checks', { by: tolerance }),
    sentence: null,
    perRow: 4,
    entries: out.checks.map(({ from, to, lengthMm }) => ({
      label: `${from} – ${to}`,
      value: bareLength(lengthMm, units),
      now: false,
    })),
  };
}

/** The table of heights. */
function heightsBlock(out: SeatSetOut): SheetBlock {
  const { units, words } = writingOf(out);
  return {
    kind: 'table',
    heading: words.say('work-sheet.heights', { unit: units }),
    columns: [
      column(words.say('work-sheet.what'), 48),
      column(words.say('work-sheet.height'), 15, FIGURE),
      TOLERANCE,
      column(words.say('work-sheet.check'), 48),
    ],
    cells: out.heights.map((row) => [
      heightName(row.height, words),
      bareLength(row.aboveFloorMm, units),
      bareLength(row.toleranceMm, units),
      heightCheck(row, { units, words }),
    ]),
  };
}

/** The table of angles. */
function anglesBlock(out: SeatSetOut): SheetBlock {
  const { units, words } = writingOf(out);
  return {
    kind: 'table',
    heading: words.say('work-sheet.angles'),
    columns: [
      column(words.say('work-sheet.what'), 42),
      column(words.say('work-sheet.angle'), 15, FIGURE),
      TOLERANCE,
      column(words.say('work-sheet.with-tape'), 54),
    ],
    cells: out.angles.map((row) => [
      angleName(row.angle, words),
      `${words.number(row.deg, 1)}°`,
      `${words.number(row.toleranceDeg, Number.isInteger(row.toleranceDeg) ? 0 : 1)}°`,
      angleText(row, { units, words }),
    ]),
  };
}
