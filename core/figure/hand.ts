import { add, cross, dot, scale, subtract, type Vec3 } from '../frame/vec3.ts';
import type { Oval } from '../graphics/oval.ts';
import { ball, type Posed, squareTo, unit } from './body-part.ts';

/** A closed hand in space: its flesh, and the lines between its fingers. */
export interface DrawnHand {
  /** Finger by finger, ovals from knuckle to tip; the thumb is the last. */
  readonly fingers: readonly (readonly Oval[])[];
  /** The palm with the heel of the hand, and that with the wrist. */
  readonly hulls: readonly (readonly Oval[])[];
  /** Lines between the fingers, metres. */
  readonly lines: readonly (readonly Vec3[])[];
}

/** Middles of the four fingers along what is held, from the thumb on, in half hand breadths. */
const FINGERS = [-0.72, -0.24, 0.24, 0.7];

/** How far each reaches round what is held. */
const FINGER_ENDS = [-0.4, -0.48, -0.46, -0.36];

/** A closed hand: the lower one round the shaft, the top one over the grip, which lies across it. */
export function handOf({ points, body, form }: Posed, which: 'lower' | 'top', wrist: Oval): DrawnHand {
  const hand = points[`${which}Hand`];
  const { held, back, out } = handFrame(points, which, wrist.at);
  const half = (form.handBreadth / 2) * body.stature;
  const at = (along: number, behind: number, aside = 0): Vec3 =>
    add(add(add(hand, scale(held, along * half)), scale(back, behind * half)), scale(out, aside * half));
  const oval = (centre: Vec3, [a, b, c]: readonly [number, number, number]): Oval => ({
    at: centre,
    axes: [scale(held, a * half), scale(back, b * half), scale(out, c * half)],
  });
  const palm = oval(at(0, 0.36), [0.92, 0.5, 0.6]);
  const heel = oval(at(0, 0.85), [0.66, 0.5, 0.46]);
  const fingers = FINGERS.map((place, k) => {
    const reach = FINGER_ENDS[k]!;
    return [oval(at(place, 0.36), [0.25, 0.5, 0.6]), oval(at(place * 0.97, reach), [0.25, 0.36, 0.56])];
  });
  const thumb = [oval(at(-0.66, 0.55, 0.3), [0.3, 0.34, 0.3]), oval(at(-1, -0.12, 0.42), [0.23, 0.3, 0.23])];
  return {
    fingers: [...fingers, thumb],
    hulls: [
      [palm, heel],
      [heel, wrist],
    ],
    lines: [-0.48, 0, 0.47].map((place) => [at(place, 0.02), at(place, -0.4), at(place, -0.84)]),
  };
}

/**
 * Unit vectors of a hand: what is held runs along `held`, `back` looks to the wrist, `out` is square to both and looks to the
 * thumb's side: inboard from the shaft, down from the grip.
 */
function handFrame(points: Posed['points'], which: 'lower' | 'top', wrist: Vec3) {
  const shaft = unit(subtract(points.lowerHand, points.topHand));
  const hand = points[`${which}Hand`];
  const inboard = -Math.sign(points.lowerHand.y - points.midShoulder.y);
  const held = which === 'lower' ? shaft : squareTo({ x: 0, y: inboard, z: 0 }, shaft);
  const back = squareTo(subtract(wrist, hand), held);
  const out = cross(held, back);
  const toThumb = which === 'top' ? shaft : { x: 0, y: inboard, z: 0 };
  return { held, back, out: dot(out, toThumb) < 0 ? scale(out, -1) : out };
}

/** Sections of an open hand beyond the middle of the grip: along the hand, half-breadth, half-thickness, shares of stature. */
const OPEN: readonly (readonly [number, number, number])[] = [
  [-0.02, 0.02, 0.011],
  [0, 0.0235, 0.01],
  [0.014, 0.0235, 0.009],
  [0.036, 0.02, 0.0065],
  [0.052, 0.015, 0.0055],
  [0.06, 0.009, 0.005],
];

/** An open hand that goes on straight from the forearm, its palm to the body or, where the arm is level, ahead. */
export function openHand({ points, body }: Posed, which: 'lower' | 'top', wrist: Oval): DrawnHand {
  const hand = points[`${which}Hand`];
  const { stature } = body;
  const direction = unit(subtract(hand, wrist.at));
  const broad = squareTo(
    Math.abs(direction.z) > 0.7 ? { x: 1, y: 0, z: 0 } : { x: 0, y: 0, z: 1 },
    direction,
  );
  const thick = cross(direction, broad);
  const ovals = OPEN.map(
    ([ahead, half, thin]): Oval => ({
      at: add(hand, scale(direction, ahead * stature)),
      axes: [scale(broad, half * stature), scale(thick, thin * stature), scale(direction, 0.004 * stature)],
    }),
  );
  const thumbAt = (ahead: number, aside: number) =>
    add(add(hand, scale(direction, ahead * stature)), scale(broad, aside * stature));
  const thumb = [
    ball(thumbAt(-0.014, 0.016), 0.008 * stature),
    ball(thumbAt(0.01, 0.026), 0.006 * stature),
    ball(thumbAt(0.026, 0.026), 0.005 * stature),
  ];
  return { fingers: [[wrist, ...ovals], thumb], hulls: [], lines: [] };
}
