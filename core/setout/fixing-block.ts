import { bareLength, millimetres, tapeReading, writtenForce } from '../text/sheet-length.ts';
import { type Fixing, fixingsOf, padForce } from './fixing-schedule.ts';
import { frontWedge } from './front-foot.ts';
import type { SeatSetOut } from './set-out.ts';
import { column, type SheetBlock } from './sheet-block.ts';
import { acrossText, alongText, writingOf } from './sheet-names.ts';

/** Column of the figures that are worked to. */
const FIGURE = { anchor: 'end', strong: true } as const;
const PLAIN = { anchor: 'end' } as const;

/** Every fixing: what it is and how long, how deep its hole goes, and how much room is left under and beside it. */
export function fixingBlock(out: SeatSetOut): SheetBlock {
  const { units, words } = writingOf(out);
  const length = (mm: number) => bareLength(mm, units);
  const place = ({ at }: Fixing) =>
    words.say('work-sheet.place', {
      along: alongText({ forwardMm: tapeReading(at[0], units) }, { units, words }),
      across: acrossText({ portMm: tapeReading(at[1], units) }, { units, words }),
    });
  return {
    kind: 'table',
    heading: words.say('work-sheet.fixings', { unit: units }),
    columns: [
      column(words.say('work-sheet.fixing-of'), 48, { strong: true }),
      column(words.say('work-sheet.place-of'), 32),
      column(words.say('work-sheet.hole-depth'), 18, FIGURE),
      column(words.say('work-sheet.to-skin'), 16, PLAIN),
      column(words.say('work-sheet.to-edge'), 17, PLAIN),
    ],
    cells: fixingsOf(out.work).map((fixing) => [
      fixingText(fixing, out),
      place(fixing),
      length(fixing.depthMm),
      length(fixing.skinMm),
      fixing.edgeMm === null ? '–' : length(fixing.edgeMm),
    ]),
  };
}

/** What a fixing is: its own millimetres in either unit, for so it is sold. */
function fixingText({ block, kind, lengthMm, depthMm }: Fixing, { work }: SeatSetOut): string {
  const { words, options } = work;
  if (kind === 'rails' && depthMm > 0) return words.say('work-fixing.rails', { block });
  if (lengthMm === null) return words.say('work-fixing.none', { block });
  const values = { block, length: lengthMm, size: Math.round(millimetres(options.boltM)) };
  return words.say(`work-fixing.${kind}`, values);
}

/** What the pad's fixings bear by this athlete's drive, and by how much the board holds more. */
export function forceNote(out: SeatSetOut): string[] {
  const { words } = out.work;
  const fixings = fixingsOf(out.work).filter(({ block }) => block === 'kneePad');
  // What a rail holds is its maker's to say.
  if (fixings.some(({ kind }) => kind === 'rails')) return [];
  const count = fixings.length;
  const { eachN, holdsN, margin } = padForce(out.work, count);
  if (margin === null) return [];
  const values = {
    each: writtenForce(eachN),
    holds: writtenForce(holdsN),
    margin: words.number(margin, margin < 10 ? 1 : 0),
    count,
  };
  const note = words.say('work-note.margin', values);
  return [margin < 2 ? words.sentences([note, words.say('work-note.margin.thin')]) : note];
}

/** What is cut and what is bought, with sizes, grain and count. Nothing that lies on the shelf. */
export function cutListBlock(out: SeatSetOut): SheetBlock {
  const { units, words } = writingOf(out);
  const { pad, rest, foot } = out.fittings;
  const { shelf, options } = out.work;
  const size = (...lengths: number[]) =>
    lengths.map((mm) => bareLength(tapeReading(mm, units), units)).join(' × ');
  const row = (id: string, sizes: string, count = 1) => [
    words.say(`work-part.${id}`),
    sizes,
    words.say(`work-part.${id}.of`),
    String(count),
  ];
  const wedge = frontWedge(foot);
  const high = Math.max(pad.topHeight - pad.bedFore, pad.topHeight - pad.bedAft);
  const fixings = fixingsOf(out.work).filter(({ lengthMm }) => lengthMm !== null);
  const bolts = fixings.filter(({ kind }) => kind === 'bolt').length;
  const foam = millimetres(options.foamM);
  return {
    kind: 'table',
    heading: words.say('work-sheet.cut-list', { unit: units }),
    columns: [
      column(words.say('work-sheet.part'), 34, { strong: true }),
      column(words.say('work-sheet.size'), 34),
      column(words.say('work-sheet.material'), 54),
      column(words.say('work-sheet.count'), 10, FIGURE),
    ],
    cells: [
      ...(shelf.pad ? [] : [row('pad', size(pad.foreEnd - pad.aftEnd, 2 * pad.halfWidth, high))]),
      ...(shelf.pad || foam === 0
        ? []
        : [row('foam', size(pad.foreEnd - pad.aftEnd, 2 * pad.halfWidth, foam))]),
      ...(shelf.rest
        ? []
        : [
            row(
              'rest',
              size(rest.footAhead + rest.depthBehind, 2 * rest.halfWidth, rest.height - rest.bedAft),
            ),
          ]),
      ...(wedge.kind === 'wedge'
        ? [
            row(
              'wedge',
              size(wedge.length, 2 * wedge.halfWidth, Math.max(...wedge.profile.map(([, y]) => y))),
            ),
          ]
        : []),
      ...(out.work.seat.frontFoot.nonSlip ? [row('grip', size(foot.length, foot.breadth))] : []),
      ...(bolts > 0 ? [row('bolts', `M${Math.round(millimetres(options.boltM))}`, bolts)] : []),
      ...(fixings.length > bolts ? [row('screws', '4 mm', fixings.length - bolts)] : []),
    ],
  };
}
