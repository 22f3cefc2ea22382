import { describe, expect, it } from 'vitest';
import { fittingShapes } from '../../../core/drawing/fitting-shapes.ts';
import { pointsOf, ringsOf, roleOf, type Shape } from '../../../core/graphics/shape.ts';
import { inView, type ViewName, type ViewPoint } from '../../../core/graphics/view.ts';
import { seatParts } from '../../../core/parts/seat-parts.ts';
import { notEmpty } from '../../not-empty.ts';
import { exampleSeat } from '../example/example-fit.ts';

const board = { heightM: 0.03, widthM: 0.24, aftEndXM: -1, foreEndXM: 1, thicknessM: 0.008 };
const base = exampleSeat();
const seat = {
  ...base,
  kneePad: { ...base.kneePad, recessTurnDeg: 0 },
  rearRest: { ...base.rearRest, turnDeg: 0, strap: 'releases' as 'releases' | 'none' },
  frontFoot: { ...base.frontFoot, wedgeDeg: 10, heightM: 0, toeOutDeg: 0 },
};

function shapesOf(view: ViewName, changed: Partial<typeof seat> = {}, side: 'left' | 'right' = 'left') {
  const frame = { stationX: 0, floorZ: 0.03, side };
  const fittings = { ...seat, ...changed };
  const place = { seat: 0, frame, footLength: 0.26, board, padHolePitchM: null, restHolePitchM: null };
  const parts = seatParts(fittings, place);
  return { parts, ...fittingShapes({ seat: fittings, frame, parts }, view) };
}

const spanOf = (points: readonly ViewPoint[]) =>
  [points.map(([x]) => x), points.map(([, y]) => y)].map((all) => [Math.min(...all), Math.max(...all)]);
const drawnSpan = (shapes: readonly Shape[], of: string) =>
  spanOf(
    shapes
      .filter((s) => s.of === of && roleOf(s) !== 'strap' && roleOf(s) !== 'recess')
      .flatMap((s) => ringsOf([s]))
      .flatMap(pointsOf),
  );
const strapOf = (shapes: readonly Shape[]) =>
  shapes.filter((s) => s.kind === 'area' && s.fills[0]!.role === 'strap');

describe('fittings as the views show them', () => {
  it.each(['profile', 'section'] as const)('have the outline of their solids: %s', (view) => {
    const { parts, under, over } = shapesOf(view);
    for (const name of ['rearRest', 'frontFoot'] as const) {
      const solid = spanOf(parts[name].vertices.map((corner) => inView(view, corner)));
      const shapes = [...under, ...over].filter((s) => !strapOf([s]).length);
      for (const [k, ends] of drawnSpan(shapes, name).entries())
        for (const [j, end] of ends.entries()) expect(end, name).toBeCloseTo(solid[k]![j]!, 9);
    }
  });

  it('leave out a foot’s place too thin to be seen: 1 mm of sheet on the bare board', () => {
    const flat = { ...seat.frontFoot, wedgeDeg: 0 };
    expect(shapesOf('profile', { frontFoot: flat }).under.map(({ of }) => of)).not.toContain('frontFoot');
    expect(shapesOf('profile').under.map(({ of }) => of)).toContain('frontFoot');
  });

  it('show the recess inside the top of the pad', () => {
    const { under, parts } = shapesOf('plan');
    const recess = under.find(
      (s) => s.of === 'kneePad' && s.kind === 'area' && s.fills[0]!.role === 'recess',
    )!;
    const [xs, ys] = spanOf(ringsOf([recess]).flatMap(pointsOf));
    const [padXs, padYs] = spanOf(parts.kneePad.vertices.map((corner) => inView('plan', corner)));
    expect(xs![0]!).toBeGreaterThanOrEqual(padXs![0]! - 1e-9);
    expect(xs![1]!).toBeLessThan(padXs![1]!);
    expect(ys![0]!).toBeGreaterThan(padYs![0]!);
    expect(ys![1]!).toBeLessThan(padYs![1]!);
  });

  it('show the sole of the front foot at its length, 0.26 m · cos 10° from above, alike on both sides', () => {
    const [sole] = shapesOf('plan').under.filter((s) => s.of === 'frontFoot');
    const points = sole!.kind === 'line' ? sole!.lines.flatMap(pointsOf) : [];
    const [xs, ys] = spanOf(notEmpty(points));
    expect(xs![1]! - xs![0]!).toBeCloseTo(0.26 * Math.cos(Math.PI / 18), 3);
    const middle = inView('plan', { x: 0, y: seat.frontFoot.outM, z: 0 })[1];
    expect((ys![0]! + ys![1]!) / 2).toBeCloseTo(middle, 6);
  });

  it('draw the strap as a band 22 mm high, its middle 12 mm over the rest’s edge, painted over the foot', () => {
    for (const view of ['profile', 'section'] as const) {
      const [band] = strapOf(shapesOf(view).over);
      const [, heights] = spanOf(ringsOf([band!]).flatMap(pointsOf));
      const edge = 0.03 + seat.rearRest.heightM;
      expect(heights![0]!).toBeCloseTo(edge + 0.012 - 0.011, 9);
      expect(heights![1]!).toBeCloseTo(edge + 0.012 + 0.011, 9);
    }
    const none = { ...seat.rearRest, strap: 'none' as const };
    expect(shapesOf('plan', { rearRest: none }).over).toEqual([]);
  });

  it('are mirrored for a paddler who kneels on the other side', () => {
    const [left, right] = (['left', 'right'] as const).map((side) => shapesOf('plan', {}, side).under);
    const spans = (shapes: readonly Shape[]) => ringsOf(shapes).map((ring) => spanOf(pointsOf(ring)));
    for (const [k, [xs, ys]] of notEmpty(spans(left!)).entries()) {
      const [otherXs, otherYs] = spans(right!)[k]!;
      for (const end of [0, 1]) {
        expect(otherXs![end]!).toBeCloseTo(xs![end]!, 9);
        expect(otherYs![end]!).toBeCloseTo(-ys![1 - end]!, 9);
      }
    }
  });
});
