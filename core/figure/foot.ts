import { add, along, cross, dot, scale, subtract, type Vec3 } from '../frame/vec3.ts';
import type { Oval } from '../graphics/oval.ts';
import { type Posed, squareTo, unit } from './body-part.ts';

/** Heights of the flesh over the sole, half of them, shares of stature. */
const HALF = { heel: 0.019, instep: 0.0165, ball: 0.0115, toe: 0.0075, ankle: 0.0185 };

/** A foot from the ankle to the toes: heel, ball and toe points lie on the sole, the flesh on the ankle's side of it. */
export function footHulls({ points, body, form }: Posed, which: 'kneeling' | 'front'): Oval[][] {
  const { stature } = body;
  const end = which === 'kneeling' ? 'rear' : 'front';
  const ankle = points[`${which}Ankle`];
  const [heelAt, ballAt, toeAt] = [points[`${end}Heel`], points[`${end}Ball`], points[`${end}Toe`]];
  const sole = unit(subtract(ballAt, heelAt));
  const up = squareTo(subtract(ankle, heelAt), sole);
  const across = cross(up, sole);
  const half = (form.footBreadth / 2) * stature;
  const onSole = (at: Vec3, [long, high, wide]: readonly [number, number, number]): Oval => ({
    at: add(at, scale(up, high * stature)),
    axes: [scale(sole, long * stature), scale(up, high * stature), scale(across, wide * half)],
  });
  const ahead = (share: number) => along(heelAt, ballAt, share);
  const heel = onSole(add(heelAt, scale(sole, 0.015 * stature)), [0.015, HALF.heel, 0.68]);
  const arch = onSole(ahead(0.55), [0.02, HALF.instep, 0.72]);
  const front = onSole(ballAt, [0.016, HALF.ball, 0.98]);
  // A foot that stands on its toes has its ankle near sole and heel: the flesh does not go beyond them.
  const within = (room: number) => Math.min(HALF.ankle * stature, Math.max(0.008 * stature, room));
  const room = within(dot(subtract(ankle, ballAt), up));
  const behind = within(dot(subtract(ankle, heelAt), sole));
  const top: Oval = {
    at: ankle,
    axes: [scale(sole, behind), scale(up, room), scale(across, 0.62 * half)],
  };
  const neck: Oval = {
    at: add(ankle, add(scale(sole, 0.016 * stature), scale(up, -0.35 * room))),
    axes: [scale(sole, 0.014 * stature), scale(up, 0.62 * room), scale(across, 0.6 * half)],
  };
  return [
    [top, heel],
    [heel, arch, top],
    [top, neck, arch],
    [neck, arch, front],
    [front, toes(toeAt, ballAt, { up, across, half, stature })],
  ];
}

/** The toes as one flat oval that ends at the toe's point and rests on the line from there to the ball. */
function toes(
  toeAt: Vec3,
  ballAt: Vec3,
  { up, across, half, stature }: { up: Vec3; across: Vec3; half: number; stature: number },
): Oval {
  const direction = unit(subtract(toeAt, ballAt));
  const lift = squareTo(up, direction);
  const back = 0.01 * stature;
  return {
    at: add(add(toeAt, scale(direction, -back)), scale(lift, HALF.toe * stature)),
    axes: [scale(direction, back), scale(lift, HALF.toe * stature), scale(across, 0.8 * half)],
  };
}
