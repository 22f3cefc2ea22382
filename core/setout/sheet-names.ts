import { bareLength, type SheetUnits, writtenLength } from '../text/sheet-length.ts';
import type { Words } from '../text/words.ts';
import { seatOf } from './floorboard-template.ts';
import type { AngleName, AngleRow, HeightName, HeightRow } from './heights-and-angles.ts';
import type { Mark, MarkName } from './marks.ts';
import type { SeatSetOut } from './set-out.ts';

/** What lengths and messages of a sheet are written with. */
export interface SheetWriting {
  /** Millimetres, centimetres or inches. */
  readonly units: SheetUnits;
  /** The reader's language. */
  readonly words: Words;
}

/** How this sheet is written. */
export function writingOf({ work }: Pick<SeatSetOut, 'work'>): SheetWriting {
  return { units: work.options.units, words: work.words };
}

/** What a mark is, in words. */
export function markWhat(out: SeatSetOut, name: MarkName): string {
  return out.work.words.say(`work-mark.${name}`, name === 'M' ? seatOf(out) : undefined);
}

/** Forward or aft of the seat's mark, as a tape reads: `175 aft`. */
export function alongText({ forwardMm }: Pick<Mark, 'forwardMm'>, { units, words }: SheetWriting): string {
  const direction = forwardMm === 0 ? 'on' : forwardMm > 0 ? 'forward' : 'aft';
  return words.say('work-along', { direction, by: bareLength(Math.abs(forwardMm), units) });
}

/** Left or right of the centreline, as a tape reads: `35 left`. */
export function acrossText({ portMm }: Pick<Mark, 'portMm'>, { units, words }: SheetWriting): string {
  const direction = portMm === 0 ? 'on' : portMm > 0 ? 'left' : 'right';
  return words.say('work-across', { direction, by: bareLength(Math.abs(portMm), units) });
}

/** Name of a height over the floorboard. */
export function heightName(height: HeightName, words: Words): string {
  return words.say(`work-height.${height}`);
}

/** How a height is proved, in words. */
export function heightCheck({ check }: HeightRow, { units, words }: SheetWriting): string {
  return words.say(`work-check.${check.how}`, { by: writtenLength(Math.abs(check.lengthMm), units) });
}

/** Name of an angle. */
export function angleName(angle: AngleName, words: Words): string {
  return words.say(`work-angle.${angle}`);
}

/** Which way an angle goes, and the same with a tape: `aft end to the right: 43 mm aside over 200 mm`. */
export function angleText(
  { angle, toward, deg, overMm, byMm }: AngleRow,
  { units, words }: SheetWriting,
): string {
  const values = { over: writtenLength(overMm, units), by: writtenLength(Math.abs(byMm), units) };
  if (angle === 'restTilt') return words.say(`work-angle.${overMm === 0 ? 'upright' : 'up-over'}`, values);
  if (angle === 'footWedge') {
    if (deg === 0) return words.say('work-angle.flat');
    return words.say('work-angle.toes', { ...values, direction: byMm > 0 ? 'up' : 'down' });
  }
  if (!toward) return words.say('work-angle.straight');
  const end = angle === 'footTurn' ? 'toes-aside' : 'end-aside';
  return words.say(`work-angle.${end}`, { ...values, side: toward });
}
