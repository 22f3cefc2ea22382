import { tapeReading } from '../text/sheet-length.ts';
import { withUnit } from '../text/with-unit.ts';
import { seatOf } from './floorboard-template.ts';
import type { HoleList, HoleRow } from './hole-list.ts';
import type { SeatSetOut } from './set-out.ts';
import type { GridEntry, SheetBlock } from './sheet-block.ts';
import { acrossText, alongText, type SheetWriting, writingOf } from './sheet-names.ts';

/**
 * Holes of one fitting in words: every hole of a row by its number, or every screw by its place. Both rows lie straight
 * across from each other, so one list serves two. The pitch stays in millimetres in either units (see `pitchText`).
 */
export function holeBlock(list: HoleList, out: SeatSetOut): SheetBlock {
  const writing = writingOf(out);
  const { fitting, pitchMm } = list;
  const size = withUnit(out.work.words.number(list.diameterMm, 1), 'mm');
  const entries =
    pitchMm === null
      ? list.rows.flatMap((row) => screwEntries(row, list, writing))
      : holeEntries(list.rows[0], writing);
  return {
    kind: 'grid',
    heading:
      pitchMm === null
        ? writing.words.say('work-sheet.holes', { fitting, size })
        : writing.words.say('work-sheet.holes.every', { fitting, size, pitch: pitchText(pitchMm) }),
    sentence: holesSentence(list, out),
    perRow: pitchMm === null ? 2 : 4,
    entries,
  };
}

/** Holes of a row by number. The holes of both rows lie straight across from each other, so one list serves. */
function holeEntries(row: HoleRow | undefined, writing: SheetWriting): GridEntry[] {
  return (row?.holes ?? []).map(({ at, number, now }) => ({
    label: `${number}`,
    value: alongText({ forwardMm: tapeReading(at[0], writing.units) }, writing),
    now,
  }));
}

/** Bolts or screws that stand in no row: each by its own place. */
function screwEntries(
  { holes }: HoleRow,
  { tooFine, onRails }: HoleList,
  writing: SheetWriting,
): GridEntry[] {
  const { words } = writing;
  return holes.map(({ at, now }) => ({
    label: words.say(tooFine || onRails ? 'work-sheet.bolt' : 'work-sheet.screw'),
    value: words.say('work-sheet.place', {
      along: alongText({ forwardMm: tapeReading(at[0], writing.units) }, writing),
      across: across(at[1], writing),
    }),
    now,
  }));
}

/** The hardware's own pitch, in millimetres in either units: a rounded inch would add up along the row. */
function pitchText(pitchMm: number): string {
  return withUnit(String(Math.round(pitchMm * 100) / 100), 'mm');
}

/** A distance to either side of the centreline, in words. */
function across(portMm: number, writing: SheetWriting): string {
  return acrossText({ portMm: tapeReading(portMm, writing.units) }, writing);
}

/** Where the rows lie, how they are counted, and which hole is in use. */
function holesSentence(list: HoleList, out: SeatSetOut): string {
  const writing = writingOf(out);
  const { words } = writing;
  const from = words.say('work-sheet.holes.from', seatOf(out));
  if (list.pitchMm === null) return from;
  const places = words.list(list.rows.map(({ holes }) => across(holes[0]?.at[1] ?? 0, writing)));
  return words.sentences([
    words.say('work-sheet.rows', { rows: list.rows.length, places }),
    from,
    words.say('work-sheet.hole-n', { fitting: list.fitting, pitch: pitchText(list.pitchMm) }),
    list.numberNow === null
      ? words.say('work-sheet.hole-between')
      : words.say('work-sheet.hole-now', { number: list.numberNow }),
  ]);
}
