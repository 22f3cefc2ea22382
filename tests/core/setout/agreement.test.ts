import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pointsOf, ringsOf } from '../../../core/graphics/shape.ts';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { topOf } from '../../../core/parts/part.ts';
import type { MarkName } from '../../../core/setout/marks.ts';
import { planView, viewStretch } from '../../../core/setout/sheet-views.ts';
import type { MillimetrePoint } from '../../../core/setout/template-drawing.ts';
import { workParts } from '../../../core/setout/work-parts.ts';
import { showPicture } from '../../../core/show/show-picture.ts';
import { showScene } from '../../../core/show/show-scene.ts';
import { cases } from '../../cases.ts';
import { notEmpty } from '../../not-empty.ts';
import { valuesOf } from '../example/values-of.ts';
import { inventedFit, inventedSetOut } from './invented-set-out.ts';
import { areaOf, boxOf, distance, linesOn } from './read-shapes.ts';

/**
 * The bench draws outlines of its own, the athlete's picture others, and the sheet a third: they are of the same wood. And
 * a builder who struck the check dimensions with two tapes would find the marks again.
 */
const SEED = 20260511;
const SIDES = ['left', 'right'] as const;

const turns = fc.record({
  recessTurnDeg: fc.double({ min: -10, max: 35, noNaN: true }),
  restTurnDeg: fc.double({ min: -10, max: 40, noNaN: true }),
  aftM: fc.double({ min: 0.05, max: 0.3, noNaN: true }),
  side: fc.constantFrom(...SIDES),
});

function wanted({
  recessTurnDeg,
  restTurnDeg,
  aftM,
  side,
}: {
  recessTurnDeg: number;
  restTurnDeg: number;
  aftM: number;
  side: 'left' | 'right';
}) {
  const { seat } = inventedSetOut().work;
  return {
    side,
    seat: {
      kneePad: { ...seat.kneePad, recessTurnDeg, aftM },
      rearRest: { ...seat.rearRest, turnDeg: restTurnDeg },
    },
  };
}

describe('the bench’s outlines and the sheet’s', () => {
  it('are the same pad: every corner of one is a mark of the other', () => {
    fc.assert(
      fc.property(turns, (given) => {
        const out = inventedSetOut(wanted(given));
        const corners = topOf(workParts(out.work).kneePad).map(({ x, y }) => [x * 1000, y * 1000] as const);
        for (const name of ['P1', 'P2', 'P3', 'P4'] as const) {
          const { forwardMm, portMm } = out.marks.find((mark) => mark.name === name)!;
          const gap = Math.min(...corners.map((corner) => distance(corner, [forwardMm, portMm])));
          // A mark is rounded by half a millimetre both ways.
          expect(gap, name).toBeLessThan(0.75);
        }
      }),
      { seed: SEED, numRuns: cases(2, 20) },
    );
  });

  it('are the same rest: its bearing edge is the edge of the bench’s outline', () => {
    fc.assert(
      fc.property(turns, (given) => {
        const out = inventedSetOut(wanted(given));
        const corners = topOf(workParts(out.work).rearRest).map(({ x, y }) => [x * 1000, y * 1000] as const);
        for (const name of ['R1', 'R2'] as const) {
          const { forwardMm, portMm } = out.marks.find((mark) => mark.name === name)!;
          expect(Math.min(...corners.map((corner) => distance(corner, [forwardMm, portMm])))).toBeLessThan(
            0.75,
          );
        }
      }),
      { seed: SEED, numRuns: cases(2, 20) },
    );
  });

  it.each(SIDES)('have the front foot at the same heel and as long, on the %s', (side) => {
    const out = inventedSetOut({ side });
    const corners = topOf(workParts(out.work).frontFoot);
    const { left, right } = boxOf(corners.map(({ x, y }): MillimetrePoint => [x * 1000, y * 1000]));
    expect(left).toBeCloseTo(out.marks.find(({ name }) => name === 'F')!.forwardMm, 0);
    expect(right).toBeCloseTo(out.marks.find(({ name }) => name === 'T')!.forwardMm, 0);
  });
});

describe('the athlete’s picture and the sheet', () => {
  it.each(SIDES)('show the same pad from above, on the %s', (side) => {
    const fit = inventedFit({ side });
    const report = valuesOf(fit);
    const hull = hullOfBoat(fit.boat);
    const out = inventedSetOut({ side });
    const { person } = showPicture(showScene(fit, report, 0)!, hull, 'above');
    const [pad] = ringsOf(person.filter(({ of }) => of === 'kneePad'));
    const { stationX } = showScene(fit, report, 0)!.frame;
    const shown = pointsOf(pad!).map(([x, y]): MillimetrePoint => [(x - stationX) * 1000, y * 1000]);
    const [drawn] = linesOn(planView(out, hull, viewStretch(out, hull)), 'fitting');
    for (const corner of drawn!.points) {
      expect(Math.min(...shown.map((point) => distance(point, corner)))).toBeLessThan(1e-6);
    }
    expect(Math.abs(areaOf(shown))).toBeCloseTo(Math.abs(areaOf(drawn!.points)), 3);
  });
});

/** Where two circles about a and b meet on the given side of a→b: how a builder strikes a point with two tapes. */
function struck(a: MillimetrePoint, ra: number, b: MillimetrePoint, rb: number): MillimetrePoint[] {
  const span = distance(a, b);
  const along = (ra ** 2 - rb ** 2 + span ** 2) / (2 * span);
  const aside = Math.sqrt(Math.max(0, ra ** 2 - along ** 2));
  const [ux, uy] = [(b[0] - a[0]) / span, (b[1] - a[1]) / span];
  return [1, -1].map((hand) => [
    a[0] + ux * along - hand * uy * aside,
    a[1] + uy * along + hand * ux * aside,
  ]);
}

describe('check dimensions struck with two tapes', () => {
  it.each(SIDES)('find the knee and both ends of the rest again, on the %s', (side) => {
    const out = inventedSetOut({ side });
    const at = (name: MarkName): MillimetrePoint => {
      const { forwardMm, portMm } = out.marks.find((mark) => mark.name === name)!;
      return [forwardMm, portMm];
    };
    const length = (a: MarkName, b: MarkName) =>
      out.checks.find(({ from, to }) => (from === a && to === b) || (from === b && to === a))!.lengthMm;
    const ties: readonly (readonly [MarkName, MarkName, MarkName])[] = [
      ['K', 'P3', 'P4'],
      ['R1', 'P3', 'P4'],
      ['R2', 'P3', 'P4'],
    ];
    for (const [name, a, b] of notEmpty(ties)) {
      const found = struck(at(a), length(a, name), at(b), length(b, name));
      const gap = Math.min(...found.map((point) => distance(point, at(name))));
      // Whole millimetres along two tapes that cross at a slant.
      expect(gap, `${name} from ${a} and ${b}`).toBeLessThan(3);
    }
  });
});
