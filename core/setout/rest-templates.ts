import { bareLength, writtenAngle } from '../text/sheet-length.ts';
import { toBlock } from './block-frame.ts';
import { frontWedge } from './front-foot.ts';
import { restBaseCorners, restProfile } from './rest-block.ts';
import type { SeatSetOut } from './set-out.ts';
import {
  circle,
  crossLines,
  dimension,
  inViews,
  line,
  ring,
  shifted,
  type TemplateDrawing,
  type TemplateShape,
  textAt,
} from './template-drawing.ts';

/** Gap between two views of one drawing, millimetres: room for dimensions. */
const VIEW_GAP_MM = 34;

/**
 * Full-size rear rest: plan of the wedge with its bolts, side profile, and the face at its true size (its height up the
 * slope, `height / sin(tilt)`), which the other two views show shortened. x forward from the bearing edge in plan and
 * profile; the face lies beside them. A rest 50 high at 60° has a face 58 up its slope.
 */
export function rearRestTemplate(out: SeatSetOut): TemplateDrawing {
  const { say } = out.work.words;
  const { footAhead, halfWidth, height } = out.fittings.rest;
  const down = -halfWidth - VIEW_GAP_MM - height;
  return {
    id: 'rear-rest',
    title: say('template.rest'),
    seen: say('template.rest.seen'),
    ...inViews(
      restPlan(out),
      shifted(restSide(out), [0, down]),
      shifted(restFace(out), [footAhead + VIEW_GAP_MM, down]),
    ),
  };
}

/** The wedge from above with its bolts, millimetres from the middle of the bearing edge. */
function restPlan(out: SeatSetOut): TemplateShape[] {
  const { say } = out.work.words;
  const { rest } = out.fittings;
  const { units } = out.work.options;
  const { footAhead, depthBehind, halfWidth } = rest;
  const holes = out.holes.find(({ fitting }) => fitting === 'rearRest');
  const radius = (holes?.diameterMm ?? 0) / 2;
  const bolts = (holes?.bolts ?? []).map((bolt) => toBlock(rest.place, bolt));
  return [
    ring('outline', restBaseCorners(rest)),
    line('edge', [0, halfWidth], [0, -halfWidth]),
    ...bolts.flatMap((at) => [circle('drillNow', at, radius), ...crossLines('drillNow', at, radius + 3)]),
    ...crossLines('centreMark', [0, 0], 5),
    textAt('R1', [2, halfWidth - 5]),
    textAt('R2', [2, -halfWidth + 2]),
    textAt(say('template.bearing-edge'), [2, -halfWidth - 4], { height: 2.5 }),
    dimension([-depthBehind, -halfWidth], [-depthBehind, halfWidth], {
      offset: 10,
      text: bareLength(2 * halfWidth, units),
    }),
    dimension([-depthBehind, halfWidth], [footAhead, halfWidth], {
      offset: 10,
      text: bareLength(depthBehind + footAhead, units),
    }),
    textAt(say('template.plan'), [-depthBehind, -halfWidth - 12]),
  ];
}

/** The wedge from the side, bearing edge at 0, millimetres. */
function restSide(out: SeatSetOut): TemplateShape[] {
  const { rest } = out.fittings;
  const { footAhead, depthBehind, height, tiltDeg, bedAft } = rest;
  return [
    ring('outline', restProfile(rest)),
    dimension([-depthBehind, bedAft], [-depthBehind, height], {
      offset: 10,
      text: bareLength(height - bedAft, out.work.options.units),
    }),
    textAt(writtenAngle(tiltDeg), [footAhead + 3, 2]),
    textAt(out.work.words.say('template.profile'), [-depthBehind, -8]),
  ];
}

/** The face square on, at its true size, millimetres from its lower left corner. */
function restFace(out: SeatSetOut): TemplateShape[] {
  const { halfWidth, slope } = out.fittings.rest;
  return [
    ring('outline', [
      [0, 0],
      [2 * halfWidth, 0],
      [2 * halfWidth, slope],
      [0, slope],
    ]),
    line('axis', [halfWidth, -2], [halfWidth, slope + 4]),
    dimension([2 * halfWidth, 0], [2 * halfWidth, slope], {
      offset: -10,
      text: bareLength(slope, out.work.options.units),
    }),
    textAt(out.work.words.say('template.rest.face'), [0, -8]),
  ];
}

/**
 * Full-size wedge of the front foot: side profile (x from the back of the heel to the toes) with the plan above it. Null
 * where the foot stands flat on the floorboard, or where the toes would come under it (that is a caution, not wood).
 */
export function frontWedgeTemplate(out: SeatSetOut): TemplateDrawing | null {
  const { say } = out.work.words;
  const wedge = frontWedge(out.fittings.foot);
  if (wedge.kind !== 'wedge') return null;
  const { units } = out.work.options;
  const [first] = wedge.profile;
  const { profile, halfWidth, length } = wedge;
  const aft = Math.min(...profile.map(([x]) => x));
  const tall = Math.max(...profile.map(([, y]) => y));
  const up = tall + VIEW_GAP_MM + halfWidth;
  return {
    id: 'front-wedge',
    title: say('template.wedge'),
    seen: say('template.wedge.seen'),
    ...inViews(
      [
        ring('outline', profile),
        dimension(first!, [first![0] + length, 0], { offset: -10, text: bareLength(length, units) }),
        ...profile
          .filter(([, y]) => y > 1)
          .map(([x, y]) =>
            dimension([x, 0], [x, y], { offset: x > aft ? -10 : 10, text: bareLength(y, units) }),
          ),
        textAt(say('template.heel'), [aft, -18]),
        textAt(say('template.toes'), [aft + length, -18], { anchor: 'end' }),
      ],
      shifted(
        [
          ring('outline', [
            [aft, -halfWidth],
            [aft + length, -halfWidth],
            [aft + length, halfWidth],
            [aft, halfWidth],
          ]),
          line('axis', [aft - 6, 0], [aft + length + 6, 0]),
          ...crossLines('centreMark', [0, 0], 5),
          textAt('F', [3, 3]),
          dimension([aft, -halfWidth], [aft, halfWidth], {
            offset: 10,
            text: bareLength(2 * halfWidth, units),
          }),
        ],
        [0, up],
      ),
    ),
  };
}
