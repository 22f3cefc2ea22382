import type { SetOutCaution } from './set-out-caution.ts';
import { type SheetUnits, writtenLength } from './sheet-length.ts';

const THE = { kneePad: 'the pad', rearRest: 'the rest', frontFoot: 'the front foot' } as const;

/** Cautions of every sheet, plain and short. They defer to local rules, makers and people licensed to say more. */
export const STANDING_CAUTIONS: readonly string[] = [
  'Class rules and the boat maker’s limits come before anything on this sheet.',
  'Drill the floorboard only: find out what lies under it and set a depth stop.',
  'Let the paddler kneel in it on land before anything is glued. Numbness, tingling or pain: stop and change the fit.',
  'Foot straps must let go by themselves in a capsize: check on land, then in shallow water.',
  'First trial near the shore with someone watching, buoyancy aid as local rules ask, cold water respected.',
  'Angles of the body and loads are estimates of a model; the lengths on this sheet are as the coach set them.',
];

/** One sentence for the builder: what is the matter, and what to do. */
export function cautionSentence(caution: SetOutCaution, units: SheetUnits): string {
  const length = (mm: number) => writtenLength(mm, units);
  switch (caution.code) {
    case 'between-holes':
      return `At ${length(caution.aftMm)} aft ${THE[caution.fitting]} stands between two holes; the nearest is hole ${caution.number} at ${length(caution.nearestMm)}. Ask the coach which hole to use, or drill for this place.`;
    case 'no-hole-in-travel':
      return `No hole falls within the travel set for ${THE[caution.fitting]}. Check pitch and travel with the coach.`;
    case 'outside-travel':
      return `Set ${length(caution.byMm)} beyond the travel of ${THE[caution.fitting]}’s fixing. Ask the coach before cutting.`;
    case 'pitch-too-fine':
      return `Holes at the pitch given for ${THE[caution.fitting]} would run into one another; only the present bolts are listed.`;
    case 'one-bolt':
      return `The base is too narrow for two bolts: one is shown. Add a second screw when ${THE[caution.fitting]} stands right, or it will turn.`;
    case 'hole-off-board':
      return `A hole for ${THE[caution.fitting]} falls at or over the edge of the floorboard. Widen the board there or use another fixing.`;
    case 'on-rails':
      return `In this boat ${THE[caution.fitting]} stands on rails ${length(caution.apartMm)} apart with holes of ${length(caution.holeMm)}: bolt it in their lines, not where this sheet has its holes. Heights here count from the floorboard; cut the block lower by the rails’ ${length(caution.heightMm)}.`;
    case 'floor-not-level':
      return `The floorboard under ${THE[caution.part]} lies ${length(Math.abs(caution.byMm))} ${caution.byMm > 0 ? 'higher' : 'lower'} than at the seat’s mark. Heights here count from the mark: make that part so much ${caution.byMm > 0 ? 'lower' : 'higher'}.`;
    case 'bevel':
      return `By the hull’s measurements the hull’s side cuts ${length(caution.byMm)} into ${THE[caution.fitting]}. Offer it up and cut its base to the side; do not force it.`;
    case 'foot-in-hull':
      return `By the hull’s measurements the front foot reaches ${length(caution.byMm)} into the hull’s side. Ask the coach for another place.`;
    case 'hole-at-skin':
      return caution.roomMm < 0
        ? `Do not drill as drawn: a fixing of ${THE[caution.fitting]} would go ${length(-caution.roomMm)} into the hull’s skin. Ask the coach for another place or fixing.`
        : `A fixing of ${THE[caution.fitting]} ends ${length(caution.roomMm)} from the hull’s skin. Look beneath before drilling and set the depth stop.`;
    case 'overhang':
      return `${capital(THE[caution.part])} overhangs the floorboard’s edge by ${length(caution.byMm)}. Pack it up from the hull there, or widen the board.`;
    case 'board-in-hull':
      return `By their measurements the floorboard reaches ${length(caution.byMm)} into the hull’s skin. Measure board and hull again before building on it.`;
    case 'knee-estimated':
      return `Measure the knee, bent, across its knuckles. The recess is drawn for ${length(caution.breadthMm)} ± ${length(caution.doubtMm)}, estimated from the body; nobody has measured it.`;
    case 'thin-wall':
      return `Only ${length(Math.max(0, caution.wallMm))} of wood is left beside the recess. Make the block wider or line its sides.`;
    case 'thin-floor':
      return `Only ${length(Math.max(0, caution.woodMm))} of wood is left under the recess. Use thinner foam or ask the coach for a higher pad.`;
    case 'shank-off-axis':
      return `The shank lies ${caution.offDeg.toFixed(0)}° off the recess’s axis. Ask the coach whether the recess should follow it.`;
    case 'recess-open-aft':
      return 'The shin is still below the top of the block at its aft end: the recess runs out there.';
    case 'no-reach':
      return `By the model the leg is ${length(caution.byMm)} short of ${THE[caution.part]}. Try it on land before drilling.`;
    case 'wedge-below-floor':
      return 'The wedge asked for would put the toes below the floorboard. Ask the coach to raise the heel or flatten the wedge.';
    case 'strap':
      return caution.strap === 'none'
        ? 'No strap is planned for the rear foot. If one is fitted it must let go by itself.'
        : 'A fixed strap is planned for the rear foot. Fit one that lets go by itself instead.';
    case 'not-braced':
      return 'The pad is planned without a brace; under the drive it will work loose. Agree a brace with the coach.';
    case 'not-non-slip':
      return 'No non-slip face is planned under the front foot; wet feet will slide.';
  }
}

const capital = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);
