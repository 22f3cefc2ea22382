import { JOINTS, type Limb, type Solid } from '../../../core/figure/figure-solids.ts';
import { paddleShape } from '../../../core/figure/paddle-shape.ts';
import type { Vec3 } from '../../../core/frame/vec3.ts';
import { fairRing } from '../view/fair-ring.ts';
import { fewerHulls } from '../view/fewer-hulls.ts';
import type { ColourName } from '../view/palette.ts';
import type { Pen } from '../view/pen.ts';
import { type Disc, rimmedHull, roundHull } from '../view/round-hull.ts';
import { isOverview, isSeatInSight, onto, type Part, type Picture, type Scene } from '../view/scene.ts';
import type { ScreenPoint } from '../view/screen-point.ts';
import { isShown } from '../view/sheet-layout.ts';
import { nearness, type ViewName } from '../view/view-geometry.ts';
import { fittingsFromAbove } from './fittings.ts';

/** Shaft of a paddle, metres across (drawing only; usual tube of 28–30 mm). */
const SHAFT = 0.029;
/** Levels of a limb that move its outline by less than this are left out, pixels. */
const UNSEEN_PX = 0.4;
const SHAFT_LINE_PX = 1;
/** Seen from above the figure is thinner than from the sides, and the fittings are laid over it once more, faintly. */
const FROM_ABOVE = 0.72;
const FITTINGS_OVER = 0.42;
/** The others in the boat: beside the seat worked on, and where the whole boat is shown. */
const NEIGHBOUR = { close: 0.4, overview: 0.75 };

/** The kneeling paddler from all three sides, with the paddle in the hands; from above, the fittings show through. */
export const figures: Part = {
  layer: 'boat',
  paint(pen, scene) {
    const { windows } = scene.layout;
    const whole = isOverview(scene) || !isShown(scene.layout, 'section');
    const neighbour = whole ? NEIGHBOUR.overview : NEIGHBOUR.close;
    scene.picture.figures.forEach((solids, index) => {
      const mine = index === scene.seat;
      if (!solids || (!mine && !isSeatInSight(scene, index))) return;
      const draw = (on: Pen, view: ViewName) =>
        on.within(windows[view], () => figure(on, scene, { view, index }));
      const share = mine || scene.alike ? 1 : neighbour;
      draw(pen.washed(FROM_ABOVE * share, 'hull'), 'plan');
      draw(share === 1 ? pen : pen.washed(share, 'paper'), 'profile');
      if (mine && isShown(scene.layout, 'section')) draw(pen, 'section');
    });
    pen.within(windows.plan, () => pen.faint(FITTINGS_OVER, () => fittingsFromAbove(pen, scene)));
  },
};

type Tone = Extract<ColourName, 'limb-near' | 'limb-far' | 'limb-mid'>;

/** Which limb a limb is compared with when asking which of the two is nearer the eye. */
const PAIRS: Partial<Readonly<Record<Limb, Limb>>> = {
  kneelingLeg: 'frontLeg',
  frontLeg: 'kneelingLeg',
  lowerArm: 'topArm',
  topArm: 'lowerArm',
};

function toneOf(limb: Limb, view: ViewName, near: ReadonlyMap<Limb, number>): Tone {
  if (view === 'plan') return limb.endsWith('Leg') ? 'limb-far' : limb === 'trunk' ? 'limb-mid' : 'limb-near';
  const other = PAIRS[limb];
  if (!other) return 'limb-mid';
  return near.get(limb)! >= near.get(other)! ? 'limb-near' : 'limb-far';
}

/** How near each limb is on the whole: the mean of its solids. */
function nearnessOfLimbs(solids: readonly Solid[], view: ViewName): Map<Limb, number> {
  const sums = new Map<Limb, { sum: number; count: number }>();
  for (const { limb, middle } of solids) {
    const { sum, count } = sums.get(limb) ?? { sum: 0, count: 0 };
    sums.set(limb, { sum: sum + nearness(view, middle), count: count + 1 });
  }
  return new Map([...sums].map(([limb, { sum, count }]) => [limb, sum / count]));
}

/** Draws from the farthest piece to the nearest; the paddle goes in where the hands are, the hands right after it. */
function figure(pen: Pen, scene: Scene, { view, index }: { view: ViewName; index: number }): void {
  const solids = scene.picture.figures[index]!;
  const to = onto(scene, view);
  const scale = scene.geometry.camera.pixelsPerMetre;
  const near = nearnessOfLimbs(solids, view);
  const overview = isOverview(scene);
  const width = overview ? 0.8 : 1.1;
  const draw = (solid: Solid) =>
    pen.union(
      discsOf(solid, to, scale).map((discs) => rimmedHull(discs, width)),
      { fill: toneOf(solid.limb, view, near), stroke: 'limb-line' },
    );
  const hands = solids.filter(({ grips }) => grips);
  const handsAt =
    hands.reduce((sum, { middle }) => sum + nearness(view, middle), 0) / Math.max(1, hands.length);
  const limbs = solids
    .filter(({ grips }) => !grips)
    .sort((a, b) => nearness(view, a.middle) - nearness(view, b.middle));
  const beyond = limbs.filter(({ middle }) => nearness(view, middle) <= handsAt);
  beyond.forEach(draw);
  paddle(pen, scene.picture, { index, to, scale });
  hands.forEach(draw);
  limbs.slice(beyond.length).forEach(draw);
  if (index === scene.seat && !overview && !scene.alike) joints(pen, scene, { view, near });
}

/** Outlines of a solid in a view. */
export function ringsOf(solid: Solid, to: (p: Vec3) => ScreenPoint, pixelsPerMetre: number): ScreenPoint[][] {
  return discsOf(solid, to, pixelsPerMetre).map(roundHull);
}

function discsOf(solid: Solid, to: (p: Vec3) => ScreenPoint, pixelsPerMetre: number): Disc[][] {
  return fewerHulls(solid.hulls, UNSEEN_PX / pixelsPerMetre).map((balls) =>
    balls.map(({ at, radius }) => ({ ...to(at), radius: radius * pixelsPerMetre })),
  );
}

/** Joints lit by the part that a finding speaks of. */
const LIT_JOINTS: Readonly<Record<string, string>> = {
  frontKnee: 'frontKnee',
  kneelingKnee: 'kneelingKnee',
  kneelingHip: 'hip',
  frontHip: 'hip',
};

function joints(
  pen: Pen,
  scene: Scene,
  { view, near }: { view: ViewName; near: ReadonlyMap<Limb, number> },
): void {
  const points = scene.picture.report.seats[scene.seat]?.stances.ready.points;
  if (!points) return;
  const to = onto(scene, view);
  for (const [name, limb] of JOINTS) {
    const close = toneOf(limb, view, near) !== 'limb-far';
    const lit = scene.lit !== null && LIT_JOINTS[name] === scene.lit;
    pen.disc(to(points[name]), lit ? 5 : close ? 3.4 : 2.8, {
      fill: 'paper',
      stroke: lit ? 'accent' : close ? 'ink' : 'limb-line',
      width: lit ? 2.4 : close ? 1.2 : 1,
    });
  }
}

function paddle(
  pen: Pen,
  picture: Picture,
  { index, to, scale }: { index: number; to: (p: Vec3) => ScreenPoint; scale: number },
): void {
  const points = picture.report.seats[index]?.stances.ready.points;
  if (!points) return;
  const shape = paddleShape(picture.fit.seats[index]!.paddle, {
    top: points.topHand,
    lower: points.lowerHand,
  });
  if (!shape) return;
  const blade = fairRing(shape.blade.map(to));
  const edge = Math.max(1.2, 0.012 * scale);
  pen.ring(blade, { fill: 'wood', stroke: 'wood-line', width: edge });
  pen.ring(blade, { fill: 'wood', stroke: 'wood', width: Math.max(0.4, edge - 1.6) });
  const radius = Math.max(0.9, (SHAFT / 2) * scale);
  const [top, throat] = shape.shaft.map(to) as [ScreenPoint, ScreenPoint];
  const tapered = [
    { ...throat, radius },
    { ...to(shape.spine), radius: Math.max(0.4, radius * 0.25) },
  ];
  const tube = [top, throat].map((at) => ({ ...at, radius }));
  const grip = shape.grip.map((at) => ({ ...to(at), radius: radius * 1.1 }));
  const rounds = [tapered, tube, grip].map((discs) => rimmedHull(discs, SHAFT_LINE_PX));
  pen.union(rounds, { fill: 'wood', stroke: 'wood-line' });
}
