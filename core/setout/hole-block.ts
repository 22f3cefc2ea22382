import { markName } from './floorboard-template.ts';
import type { HoleList, HoleRow } from './hole-list.ts';
import type { SeatSetOut } from './set-out.ts';
import type { GridEntry, SheetBlock } from './sheet-block.ts';
import type { SheetUnits } from './sheet-length.ts';
import { acrossText, alongText, FITTING_NAMES } from './sheet-names.ts';

/**
 * Holes of one fitting in words: every hole of a row by its number, or every screw by its place. Both rows lie straight
 * across from each other, so one list serves two. The pitch stays in millimetres in either units (see `pitchText`).
 */
export function holeBlock(list: HoleList, out: SeatSetOut): SheetBlock {
  const { units } = out.work.options;
  const size = `${list.diameterMm.toFixed(1)} mm`;
  const pitch = list.pitchMm === null ? '' : `, every ${pitchText(list.pitchMm)}`;
  const entries =
    list.pitchMm === null
      ? list.rows.flatMap((row) => screwEntries(row, list, units))
      : holeEntries(list.rows[0], units);
  return {
    kind: 'grid',
    heading: `Holes: ${FITTING_NAMES[list.fitting].toLowerCase()}, ${size}${pitch}`,
    sentence: holesSentence(list, out),
    perRow: list.pitchMm === null ? 2 : 4,
    entries,
  };
}

/** Holes of a row by number. The holes of both rows lie straight across from each other, so one list serves. */
function holeEntries(row: HoleRow | undefined, units: SheetUnits): GridEntry[] {
  return (row?.holes ?? []).map(({ at, number, now }) => ({
    label: `${number}`,
    value: alongText({ forwardMm: Math.round(at[0]) }, units),
    now,
  }));
}

function screwEntries({ holes }: HoleRow, { tooFine }: HoleList, units: SheetUnits): GridEntry[] {
  return holes.map(({ at, now }) => ({
    label: tooFine ? 'bolt' : 'screw',
    value: `${alongText({ forwardMm: Math.round(at[0]) }, units)}, ${across(at[1], units)}`,
    now,
  }));
}

/** The hardware's own pitch, in millimetres in either units: a rounded inch would add up along the row. */
function pitchText(pitchMm: number): string {
  return `${Math.round(pitchMm * 100) / 100} mm`;
}

function across(portMm: number, units: SheetUnits): string {
  return acrossText({ portMm: Math.round(portMm) }, units);
}

function holesSentence(list: HoleList, out: SeatSetOut): string {
  const { units } = out.work.options;
  const from = `the ${markName(out)}`;
  if (list.pitchMm === null) return `Along from ${from}, across from the centreline.`;
  const rows = list.rows.map(({ holes }) => across(holes[0]?.at[1] ?? 0, units)).join(' and ');
  const what = list.fitting === 'kneePad' ? 'the knee' : 'the bearing edge';
  const now =
    list.numberNow === null
      ? 'The setting stands between two holes.'
      : `This setting uses hole ${list.numberNow} of each row.`;
  return `${list.rows.length === 1 ? 'One row' : 'Two rows'}, ${rows} of the centreline. Along: each hole from ${from}. Hole n sets ${what} n × ${pitchText(list.pitchMm)} aft. ${now}`;
}
