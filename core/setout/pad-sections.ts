import { bareLength, millimetres } from '../text/sheet-length.ts';
import { floorLevel, halfWidthAt } from './knee-recess.ts';
import type { PadBlock } from './pad-block.ts';
import type { SeatSetOut } from './set-out.ts';
import {
  dimension,
  line,
  type MillimetrePoint,
  ring,
  type TemplateShape,
  textAt,
} from './template-drawing.ts';

/** Points along the bottom of the recess in the side view. */
const FLOOR_POINTS = 60;
/** How far axes run out beyond the block, millimetres. */
const OVERRUN_MM = 12;
/** Under a view they end above its name. */
const UNDER_MM = 2;

/**
 * Side view of the pad block on its axis. y = 0 is the floorboard at the seat's mark; the base follows the board's slope and stands
 * on the rails, so that the heights written are those of the finished block.
 */
export function padProfile({ fittings: { pad }, bases, work }: SeatSetOut): TemplateShape[] {
  const { units, foamM } = work.options;
  const { foreEnd, aftEnd, bearingHeight, topHeight, bedFore, bedAft } = pad;
  const foam = millimetres(foamM);
  const bedAtK = bases.kneePad.middle.bed;
  return [
    ring('outline', [
      [foreEnd, bedFore],
      [foreEnd, topHeight],
      [aftEnd, topHeight],
      [aftEnd, bedAft],
    ]),
    line('recess', ...bottomLine(pad, 0)),
    ...(foam > 0 ? [line('foamCut', ...bottomLine(pad, foam))] : []),
    line('axis', [0, bedAtK - UNDER_MM], [0, topHeight + OVERRUN_MM / 2]),
    dimension([0, bedAtK], [0, bearingHeight], {
      offset: 0,
      text: bareLength(bearingHeight - bedAtK, units),
    }),
    dimension([aftEnd, bedAft], [aftEnd, topHeight], {
      offset: 10,
      text: bareLength(topHeight - bedAft, units),
    }),
    dimension([foreEnd, bedFore], [foreEnd, topHeight], {
      offset: -10,
      text: bareLength(topHeight - bedFore, units),
    }),
    textAt('K', [2, bearingHeight + 2]),
    textAt(work.words.say('template.profile'), [aftEnd, Math.min(bedAft, bedFore) - 8]),
  ];
}

/** The recess's bottom under its axis, cut off at the block's top. */
function bottomLine(pad: PadBlock, foam: number): MillimetrePoint[] {
  const { recess, bearingHeight, topHeight, foreEnd, aftEnd } = pad;
  const points: MillimetrePoint[] = [];
  for (let k = 0; k <= FLOOR_POINTS; k++) {
    const x = aftEnd + ((foreEnd - aftEnd) * k) / FLOOR_POINTS;
    const level = floorLevel(recess, x, foam);
    if (level !== null && level <= recess.depth) points.push([x, bearingHeight + level]);
  }
  const last = points.at(-1);
  return last && last[0] < foreEnd ? [...points, [last[0], topHeight]] : points;
}

/** Section square across the block at the bearing point, seen from behind: port to the left; its base as it is cut. */
export function padSection({ fittings: { pad }, bases, work }: SeatSetOut): TemplateShape[] {
  const { halfWidth, bearingHeight, topHeight, recess } = pad;
  const { bed, base } = bases.kneePad.middle;
  const foam = millimetres(work.options.foamM);
  return [
    ring('outline', [
      ...base.map(([across, height]): MillimetrePoint => [-across, height]),
      [-halfWidth, topHeight],
      [halfWidth, topHeight],
    ]),
    line('recess', ...hollowAcross(recess, bearingHeight, 0)),
    ...(foam > 0 ? [line('foamCut', ...hollowAcross(recess, bearingHeight, foam))] : []),
    line('axis', [0, bed - UNDER_MM], [0, topHeight + OVERRUN_MM / 2]),
    textAt(work.words.say('template.section'), [-halfWidth, bed - 8]),
  ];
}

/**
 * The hollow across at the knee, from starboard to port; levels lie closer together near the bottom, where it
 * curves most.
 */
function hollowAcross(recess: PadBlock['recess'], bearingHeight: number, foam: number): MillimetrePoint[] {
  const steps = 24;
  const low = -foam;
  const half = Array.from({ length: steps + 1 }, (_, k): MillimetrePoint => {
    const level = low + (recess.depth - low) * (k / steps) ** 2;
    return [halfWidthAt(recess, 0, { level, foam }) ?? 0, bearingHeight + level];
  });
  const other = half.map(([x, y]): MillimetrePoint => [-x, y]).reverse();
  return [...other, ...half.slice(1)];
}
