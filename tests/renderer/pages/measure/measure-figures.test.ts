import { describe, expect, it } from 'vitest';
import { TAPE_MEASURES } from '../../../../core/document/athlete-schema.ts';
import { figureShapes } from '../../../../core/figure/figure-shapes.ts';
import { measuringFigure, POSED } from '../../../../core/figure/measuring-poses.ts';
import { isInRing, pointsOf, ringsOf } from '../../../../core/graphics/shape.ts';
import type { ViewPoint } from '../../../../core/graphics/view.ts';
import { TAPE_PICTURES } from '../../../../renderer/pages/measure/measure-figures.ts';

const ringsIn = ({ pose, view }: (typeof TAPE_PICTURES)['stature']) =>
  ringsOf(figureShapes(measuringFigure(pose), view));
const apart = ([ax, ay]: ViewPoint, [bx, by]: ViewPoint) => Math.hypot(ax - bx, ay - by);

describe('where a tape is held', () => {
  it.each([...TAPE_MEASURES, 'stature' as const])('%s ends on the body, to 2 cm', (measure) => {
    const picture = TAPE_PICTURES[measure];
    const rings = ringsIn(picture);
    const away = rings.some((ring) => isInRing(ring, picture.to))
      ? 0
      : Math.min(...rings.flatMap(pointsOf).map((at) => apart(at, picture.to)));
    expect(away).toBeLessThan(0.02);
  });

  it('tells the lengths of one and the same person', () => {
    const length = (measure: keyof typeof TAPE_PICTURES) => {
      const { from, to } = TAPE_PICTURES[measure];
      return apart(from, to);
    };
    expect(length('stature')).toBeCloseTo(POSED.stature, 2);
    expect(length('footLength')).toBeCloseTo(POSED.footLength, 2);
    // Crown over the seat, and span over stature: ANSUR II means by stature, NATICK/TR-15/007: 0.524 and 1.03.
    expect(Math.abs(length('sittingHeight') / length('stature') - 0.524)).toBeLessThan(0.02);
    expect(Math.abs(length('armSpan') / length('stature') - 1.03)).toBeLessThan(0.02);
    for (const measure of ['stature', 'sittingHeight', 'kneelingHeight'] as const) {
      const top = Math.max(
        ...ringsIn(TAPE_PICTURES[measure])
          .flatMap(pointsOf)
          .map(([, up]) => up),
      );
      expect(Math.abs(top - TAPE_PICTURES[measure].to[1])).toBeLessThan(0.02);
    }
  });
});
