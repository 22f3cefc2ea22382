import type { Fit } from '../../../core/document/fit-schema.ts';
import { type BoatParts, boatParts, sectionLine } from '../../../core/drawing/boat-shapes.ts';
import type { Vec3 } from '../../../core/frame/vec3.ts';
import { type Line, lineThrough, type Shape } from '../../../core/graphics/shape.ts';
import type { Hull } from '../../../core/hull/hull.ts';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { breadthAtHeight, type LoftedSection, loftedSection } from '../../../core/hull/section-at.ts';
import type { Attitude } from '../../../core/hydrostatics/afloat.ts';

/** Lines of a hull as the drawing needs them, boat frame, metres. All run from aft to fore. */
export interface HullDrawing {
  readonly hull: Hull;
  /** Sheer on the port side; starboard is its mirror. */
  readonly sheer: readonly Vec3[];
  readonly keel: readonly Vec3[];
  /** Height of the sheer's highest place. */
  readonly sheerTop: number;
  /** The whole half-sections at the same places: the waterline is read from them at every move. */
  readonly sections: readonly LoftedSection[];
  /** The whole boat from above and from the side as shapes; from behind it is cut again wherever the pad goes. */
  readonly drawn: Readonly<Record<'plan' | 'profile', DrawnParts>>;
  /** A few of the hull's own sections aft of its middle: the body plan behind the pad's section. */
  readonly bodyPlan: readonly Shape[];
}

/** The parts of a boat, each as a list of its own: the pen keeps the paths of lists that it paints again. */
type DrawnParts = Readonly<Record<keyof BoatParts, readonly Shape[]>>;

/** Places along the hull where its lines are read: 10 cm apart on a four is a quarter pixel of sag at most. */
const READINGS = 97;
const AFT_SECTIONS = [0.06, 0.16, 0.28, 0.4];

/** Reads a hull's lines. Costly part; keep them while the boat is the same. */
export function hullDrawing(boat: Fit['boat']): HullDrawing {
  const hull = hullOfBoat(boat);
  const whole = { hull, board: boat.floorboard, span: [hull.aftX, hull.foreX], cutX: 0 } as const;
  const xs = stationsBetween(hull);
  const sections = xs.map((x) => loftedSection(hull, x));
  return {
    hull,
    sections,
    sheerTop: Math.max(...sections.map(({ z }) => z.at(-1)!)),
    sheer: sections.map(({ y, z }, k) => ({ x: xs[k]!, y: y.at(-1)!, z: z.at(-1)! })),
    keel: sections.map(({ z }, k) => ({ x: xs[k]!, y: 0, z: z[0]! })),
    drawn: { plan: listed(boatParts(whole, 'plan')), profile: listed(boatParts(whole, 'profile')) },
    bodyPlan: [
      {
        kind: 'line',
        of: 'hull',
        role: 'hullLine',
        weight: 'detail',
        lines: AFT_SECTIONS.map((share) => lineThrough(sectionLine(hull, hull.aftX + share * hull.length))),
      },
    ],
  };
}

/** Each part of a boat as a list. */
function listed({ hull, edge, board }: BoatParts): DrawnParts {
  return { hull: [hull], edge: [edge], board: [board] };
}

function stationsBetween({ aftX, length }: Hull): number[] {
  return Array.from({ length: READINGS }, (_, k) => aftX + (length * k) / (READINGS - 1));
}

/** Height of the water plane at a place of the boat, boat frame, metres. */
export function waterHeight({ draft, trim, heel }: Attitude, x: number, y = 0): number {
  return draft - x * Math.tan(trim) - y * Math.tan(heel);
}

/** Both sides of the waterline from above (heel left out of account), metres; empty stretches above the keel are left out. */
export function waterlines(
  { sections, keel }: HullDrawing,
  attitude: Attitude,
): readonly [port: Line, starboard: Line] {
  const port: number[] = [];
  const starboard: number[] = [];
  for (let k = 0; k < keel.length; k++) {
    const { x } = keel[k]!;
    const y = breadthAtHeight(sections[k]!, waterHeight(attitude, x));
    if (y === null) continue;
    port.push(x, y);
    starboard.push(x, -y);
  }
  return [port, starboard];
}
