import { findQuantity } from '../evaluation/quantities.ts';
import { markName } from './floorboard-template.ts';
import { frontWedge } from './front-foot.ts';
import type { HoleList } from './hole-list.ts';
import type { SeatSetOut } from './set-out.ts';
import { millimetres, writtenLength } from './sheet-length.ts';
import { CHECK_TOLERANCE_MM, HEIGHT_TOLERANCE_MM, PLACE_TOLERANCE_MM } from './tolerances.ts';

/**
 * What to do, step by step, from bare floorboard to the first kneel on land. Marks are proved before anything is drilled,
 * and everything is fixed dry before anything is glued (*common practice, no source*).
 */
export function orderOfWork(out: SeatSetOut): string[] {
  const { units, foamM } = out.work.options;
  const length = (mm: number) => writtenLength(mm, units);
  const name = markName(out);
  const foam = millimetres(foamM);
  return [
    'Set the boat level and still. Stretch a line from stem to stern and mark the centreline along the floorboard.',
    seatMarkStep(out),
    `Mark ${listed(['K', 'P1–P4', 'R1', 'R2', 'F', 'T'])} by the table, each from the ${name} and the centreline, never from one another.`,
    `Prove every mark by its check dimensions. One that is out by more than ${length(CHECK_TOLERANCE_MM)}: measure again before drilling.`,
    `Lay the drilling template on the lines as a second check. Drill ${holesText(out.holes)}, with a depth stop.`,
    `Saw the pad block, carve the recess to its depth lines, ${foam > 0 ? `cut ${length(foam)} deeper and wider for the foam, ` : ''}and try it against the section.`,
    `Saw the rest to its profile, both ends the same height within ${length(HEIGHT_TOLERANCE_MM)}.`,
    ...(frontWedge(out.fittings.foot).kind === 'wedge'
      ? ['Saw the wedge for the front foot and give its top a non-slip face.']
      : []),
    `Fix pad and rest dry. Measure K, R1, R2 and F again: within ${length(PLACE_TOLERANCE_MM)} of the table.`,
    'Let the paddler kneel in it on land with the coach watching; then seal the holes, glue the foam, and date the sheet.',
  ];
}

function seatMarkStep(out: SeatSetOut): string {
  const name = markName(out);
  const from = out.seatMarkForwardMm;
  if (out.work.fit.seats.length === 1) {
    return `Square the ${name} across the board at mid-length${from === 0 ? '' : `, moved ${offset(out)}`}. Where it crosses the centreline is M.`;
  }
  return `Square the ${name} across the board ${from === 0 ? 'at' : `${offset(out)} of`} the boat’s centre mark. Where it crosses the centreline is M.`;
}

function offset({ seatMarkForwardMm, work }: SeatSetOut): string {
  const length = writtenLength(Math.abs(seatMarkForwardMm), work.options.units);
  return `${length} ${seatMarkForwardMm > 0 ? 'forward' : 'aft'}`;
}

function holesText(lists: readonly HoleList[]): string {
  const sizes = [...new Set(lists.map(({ diameterMm }) => diameterMm))];
  return sizes
    .map((size) => {
      const of = lists.filter(({ diameterMm }) => diameterMm === size);
      const what = of.map(({ fitting }) => (fitting === 'kneePad' ? 'pad' : 'rest')).join(' and ');
      return `${size.toFixed(1)} mm for ${what}${of.some(({ pitchMm }) => pitchMm === null) ? '' : ` (every ${of.map(({ pitchMm }) => `${pitchMm ?? 0} mm`).join(' and ')})`}`;
    })
    .join(', ');
}

function listed(names: readonly string[]): string {
  return `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}

/** Notes on fixing, brace, strap and floor. */
export function fixingNotes(out: SeatSetOut): string[] {
  const { seat, report, index } = out.work;
  const forceOf = (id: 'padFixing' | 'padFixingSide') =>
    findQuantity(report.quantities, id, index)?.value ?? null;
  const [forward, sideways] = [forceOf('padFixing'), forceOf('padFixingSide')];
  return [
    'Pad and rest are bolted through the floorboard with washers both sides, or screwed where the hardware is for screws; bed them against water.',
    seat.kneePad.braced
      ? 'Brace the pad forward and to the kneeling side: it passes the drive into the boat.'
      : 'No brace is planned for the pad.',
    ...(forward === null || sideways === null
      ? []
      : [
          `At the stroke’s peak the model has the pad pushed forward with up to ${toTens(forward)} N and toward the ${seat.side} with about ${toTens(sideways)} N, stroke after stroke; choose a fixing that holds well above both.`,
        ]),
    {
      releases: 'The rear strap holds the foot down and lets go by itself when the foot is pulled back.',
      fixed: 'The rear strap as planned does not let go by itself: replace it before anyone paddles.',
      none: 'No rear strap is planned.',
    }[seat.rearRest.strap],
    seat.frontFoot.nonSlip
      ? 'Non-slip face under the whole front foot, from the heel to past the toe line.'
      : 'No non-slip face is planned under the front foot.',
  ];
}

const toTens = (newtons: number) => (Math.round(newtons / 10) * 10).toFixed(0);
