import { SIGMAS_95 } from '../evaluation/probability.ts';
import { findQuantity } from '../evaluation/quantities.ts';
import { millimetres, writtenForce, writtenLength } from '../text/sheet-length.ts';
import { withUnit } from '../text/with-unit.ts';
import type { Words } from '../text/words.ts';
import { seatOf } from './floorboard-template.ts';
import { frontWedge } from './front-foot.ts';
import type { HoleList } from './hole-list.ts';
import type { SeatSetOut } from './set-out.ts';
import { CHECK_TOLERANCE_MM, HEIGHT_TOLERANCE_MM, PLACE_TOLERANCE_MM } from './tolerances.ts';

/**
 * What to do, step by step, from bare floorboard to the first kneel on land. Marks are proved before anything is drilled,
 * and everything is fixed dry before anything is glued (*common practice, no source*).
 */
export function orderOfWork(out: SeatSetOut): string[] {
  const { shelf, options } = out.work;
  const { say, list } = out.work.words;
  const length = (mm: number) => writtenLength(mm, options.units);
  return [
    say('work-step.level'),
    seatMarkStep(out),
    say('work-step.mark', { marks: list(['K', 'P1–P4', 'R1', 'R2', 'F', 'T']) }),
    say('work-step.prove', { by: length(CHECK_TOLERANCE_MM) }),
    ...drillStep(out),
    padStep(out),
    shelf.rest
      ? say('work-step.shelf.rest', { name: shelf.rest.name })
      : say('work-step.rest', { by: length(HEIGHT_TOLERANCE_MM) }),
    ...scribeStep(out),
    ...(frontWedge(out.fittings.foot).kind === 'wedge' ? [say('work-step.wedge')] : []),
    say('work-step.dry', { by: length(PLACE_TOLERANCE_MM) }),
    say('work-step.kneel'),
  ];
}

/** Making the knee's block, or fetching it from the shelf. */
function padStep({ work: { shelf, options, words } }: SeatSetOut): string {
  const foam = writtenLength(millimetres(options.foamM), options.units);
  if (shelf.pad) return words.say('work-step.shelf.pad', { name: shelf.pad.name, foam });
  const saw = words.say('work-step.pad');
  return options.foamM > 0 ? words.sentences([saw, words.say('work-step.pad.foam', { foam })]) : saw;
}

/** How the bases that the hull cuts into are cut to it. */
function scribeStep({ bases: { kneePad, rearRest }, work }: SeatSetOut): string[] {
  const most = Math.max(kneePad.cutMm, rearRest.cutMm);
  if (most === 0) return [];
  const what = kneePad.cutMm === 0 ? 'rearRest' : rearRest.cutMm === 0 ? 'kneePad' : 'both';
  return [work.words.say('work-step.scribe', { what, by: writtenLength(most, work.options.units) })];
}

/** Where the seat's mark goes, from the boat's own. */
function seatMarkStep(out: SeatSetOut): string {
  const { words, options } = out.work;
  const from = out.seatMarkForwardMm;
  const direction = from === 0 ? 'on' : from > 0 ? 'forward' : 'aft';
  const values = { ...seatOf(out), direction, by: writtenLength(Math.abs(from), options.units) };
  return words.say(values.seats > 1 ? 'work-step.crew' : 'work-step.single', values);
}

/** What is drilled in the board; nothing for what stands on rails. */
function drillStep({ holes, work: { words } }: SeatSetOut): string[] {
  const drilled = holes.filter(({ onRails }) => !onRails);
  return drilled.length === 0 ? [] : [words.say('work-step.drill', { holes: holesText(drilled, words) })];
}

/** Holes by their size: one entry where pad and rest have the same, and the pitch where every row has one. */
function holesText(holes: readonly HoleList[], words: Words): string {
  const sizes = [...new Set(holes.map(({ diameterMm }) => diameterMm))];
  const texts = sizes.map((diameter) => {
    const of = holes.filter(({ diameterMm }) => diameterMm === diameter);
    const pitches = [...new Set(of.map(({ pitchMm }) => pitchMm))];
    const values = {
      fitting: of.length > 1 ? 'both' : of[0]?.fitting,
      size: withUnit(words.number(diameter, 1), 'mm'),
    };
    if (pitches.includes(null)) return words.say('work-step.drill.holes', values);
    const pitch = words.list(pitches.map((mm) => withUnit(String(mm), 'mm')));
    return words.say('work-step.drill.holes.every', { ...values, pitch });
  });
  return words.list(texts);
}

/** Notes on fixing, brace, strap and floor. */
export function fixingNotes(out: SeatSetOut): string[] {
  const { seat, report, index, words } = out.work;
  const forceOf = (id: 'padFixing' | 'padFixingSide') => {
    const { value, sd } = findQuantity(report.quantities, id, index) ?? {};
    return value === undefined ? null : writtenForce(value, SIGMAS_95 * (sd ?? 0));
  };
  const [forward, sideways] = [forceOf('padFixing'), forceOf('padFixingSide')];
  return [
    words.say('work-note.bolts'),
    words.say(seat.kneePad.braced ? 'work-note.brace' : 'work-note.no-brace'),
    ...(forward === null || sideways === null
      ? []
      : [
          words.say('work-note.force', {
            side: seat.side,
            forward,
            sideways,
          }),
        ]),
    words.say(`work-note.strap.${seat.rearRest.strap}`),
    words.say(seat.frontFoot.nonSlip ? 'work-note.grip' : 'work-note.no-grip'),
  ];
}
