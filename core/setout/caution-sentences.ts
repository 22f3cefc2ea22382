import { type SheetUnits, writtenAngle, writtenLength } from '../text/sheet-length.ts';
import { withUnit } from '../text/with-unit.ts';
import type { MessageValues, Words } from '../text/words.ts';
import type { SetOutCaution } from './set-out-caution.ts';

/** Cautions of every sheet, by their messages. They defer to local rules, makers and people licensed to say more. */
export const STANDING_CAUTIONS = [
  'work-sheet.caution.class',
  'work-sheet.caution.drill',
  'work-sheet.caution.kneel',
  'start.caution.strap',
  'start.caution.water',
  'work-sheet.caution.model',
] as const;

/** One sentence for the builder: what is the matter, and what to do. */
export function cautionSentence(caution: SetOutCaution, words: Words, units: SheetUnits): string {
  const [form, values] = formOf(caution, { words, length: (mm) => writtenLength(mm, units) });
  return words.say(`work-caution.${caution.code}${form}`, values);
}

/** Which of a caution's messages, and its values. Lengths in millimetres. */
function formOf(
  caution: SetOutCaution,
  { words, length }: { words: Words; length: (mm: number) => string },
): [form: string, values: MessageValues] {
  const fitting = 'fitting' in caution ? caution.fitting : undefined;
  const part = 'part' in caution ? caution.part : undefined;
  const by = 'byMm' in caution ? length(Math.abs(caution.byMm)) : undefined;
  switch (caution.code) {
    case 'between-holes':
      return [
        '',
        { fitting, at: length(caution.aftMm), nearest: length(caution.nearestMm), number: caution.number },
      ];
    case 'on-rails': {
      // As drills are sold: in millimetres in either unit.
      const [apart, hole] = [length(caution.apartMm), withUnit(words.number(caution.holeMm, 1), 'mm')];
      return ['', { fitting, apart, hole, height: length(caution.heightMm) }];
    }
    case 'floor-not-level':
      return ['', { direction: caution.byMm > 0 ? 'higher' : 'lower', part, by }];
    case 'hole-at-skin':
      return [caution.roomMm < 0 ? '.in' : '.near', { fitting, by: length(Math.abs(caution.roomMm)) }];
    case 'knee-estimated':
      return ['', { breadth: length(caution.breadthMm), half: length(caution.doubtMm) }];
    case 'thin-wall':
      return ['', { left: length(Math.max(0, caution.wallMm)) }];
    case 'thin-floor':
      return ['', { left: length(Math.max(0, caution.woodMm)) }];
    case 'shank-off-axis':
      return ['', { by: writtenAngle(caution.offDeg) }];
    case 'strap':
      return [`.${caution.strap}`, {}];
    default:
      return ['', { fitting, part, by }];
  }
}
