import type { Format } from '../../../app/language/format.ts';
import type { Report } from '../../../core/evaluation/report.ts';
import type { TransferAnswer } from '../../jobs/transfer-to-boat.ts';
import { say } from '../../language/messages.ts';
import { notAfloatSentence } from '../../language/sentences.ts';

/** A shift below this is none, metres: less than a tape reads. */
const NO_SHIFT = 0.0005;

/** Bow over stern, metres; null where the boat does not float. */
function bowOf({ afloat: { ready } }: Report): number | null {
  return ready.kind === 'afloat' ? ready.bowOverStern : null;
}

function trimText(bow: number, format: Format): string {
  const by = format.length(Math.abs(bow), { fine: true });
  return say(bow < 0 ? 'drawing.strip.down' : 'drawing.strip.up', { by });
}

/** What the other boat asks for, in words: the shift, what the holes leave over, or why there is none. */
export function shiftSentences({ old, moved }: TransferAnswer, format: Format): string[] {
  const { asIs, trimKept, inHoles } = moved;
  const { ready } = asIs.report.afloat;
  if (ready.kind !== 'afloat') return [notAfloatSentence(ready, format.value)];
  if (bowOf(old.report) === null) return [say('transfer.no-float')];
  if (!trimKept) return [say('transfer.no-trim')];
  const { shiftAft } = trimKept;
  const bow = bowOf(trimKept.report) ?? 0;
  const trim = trimText(bow, format);
  const boat = asIs.fit.boat.name;
  const by = format.length(Math.abs(shiftAft));
  const shift =
    Math.abs(shiftAft) < NO_SHIFT
      ? say('transfer.shift.none', { trim })
      : say(shiftAft > 0 ? 'transfer.shift.aft' : 'transfer.shift.forward', { trim, by, boat });
  const drilled = inHoles && bowOf(inHoles.report);
  if (drilled === null) return [shift];
  const miss = format.length(Math.abs(drilled - bow), { fine: true });
  return [shift, say('transfer.holes.miss', { by: miss })];
}
