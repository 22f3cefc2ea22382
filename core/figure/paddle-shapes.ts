import { along, type Vec3 } from '../frame/vec3.ts';
import { flatOval, hullRing } from '../graphics/oval.ts';
import { ringThrough, type Shape } from '../graphics/shape.ts';
import { inView, type ViewName } from '../graphics/view.ts';
import { ball } from './body-part.ts';
import type { PaddleShape } from './paddle-shape.ts';

/** Shaft of a paddle, metres (drawing only; usual tube of 28–30 mm), and half the thickness of a blade. */
const SHAFT_RADIUS = 0.0145;
/** Half of the blade's thickness, metres. */
const BLADE_HALF = 0.004;
/** A blade's thickness ends short of its tip. */
const NEARLY = 0.985;

/** A paddle as a view shows it, felt out in so many directions: the blade under the shaft that dies away in it. */
export function paddleShapes(
  { blade, shaft, spine, grip }: PaddleShape,
  view: ViewName,
  directions: number,
): Shape[] {
  const rod = ([from, to]: readonly [Vec3, Vec3], [a, b]: readonly [number, number]) =>
    hullRing([flatOval(ball(from, a), view), flatOval(ball(to, b), view)], directions);
  const edge = blade.map((point) => inView(view, point));
  const outline = { role: 'paddleLine', weight: 'contour' } as const;
  const paddle = { kind: 'area', of: 'paddle', outline } as const;
  return [
    {
      ...paddle,
      fills: [
        {
          role: 'blade',
          rings: [
            ringThrough(edge),
            rod([shaft[1], along(shaft[1], bladeEnd(blade), NEARLY)], [BLADE_HALF, BLADE_HALF]),
          ],
        },
      ],
    },
    {
      ...paddle,
      fills: [
        {
          role: 'shaft',
          rings: [
            rod(shaft, [SHAFT_RADIUS, SHAFT_RADIUS]),
            rod([shaft[1], spine], [SHAFT_RADIUS, SHAFT_RADIUS / 4]),
            rod(grip, [SHAFT_RADIUS, SHAFT_RADIUS]),
          ],
        },
      ],
    },
  ];
}

/** The middle of a blade's tip: its outline runs down one edge and up the other. */
function bladeEnd(blade: readonly Vec3[]): Vec3 {
  const [a, b] = [blade[blade.length / 2 - 1]!, blade[blade.length / 2]!];
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2, z: (a.z + b.z) / 2 };
}
