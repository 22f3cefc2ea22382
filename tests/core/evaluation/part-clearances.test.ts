import { describe, expect, it } from 'vitest';
import type { Boat } from '../../../core/document/boat-schema.ts';
import { boatSchema } from '../../../core/document/boat-schema.ts';
import type { Seat } from '../../../core/document/seat-schema.ts';
import { evaluateFit } from '../../../core/evaluation/evaluator.ts';
import { exampleFit, exampleSeat } from '../example/example-fit.ts';
import { straightEdges } from '../example/straight-edges.ts';

/** A boat of one half-section all along, 4 m, with a board 3 cm up: every distance is known by hand. */
function prismBoat(
  section: readonly (readonly [number, number])[],
  floor: Partial<Boat['floorboard']> = {},
): Boat {
  const { boat } = exampleFit();
  return boatSchema.parse({
    ...boat,
    skinM: 0.004,
    hull: {
      kind: 'offsets',
      stations: [-2, -1, 0, 1, 2].map((xM) => ({ xM, section: straightEdges(section) })),
    },
    floorboard: { heightM: 0.03, widthM: 0.2, aftEndXM: -1, foreEndXM: 1, ...floor },
    hardware: { padHolePitchM: 0.01, restHolePitchM: 0.01 },
  });
}

const BOX_28_CM = [
  [0, 0],
  [0.14, 0],
  [0.14, 0.3],
] as const;
/** Sides that rise at 45° from a flat bottom 16 cm wide. */
const FLARED = [
  [0, 0],
  [0.08, 0],
  [0.28, 0.2],
  [0.28, 0.3],
] as const;

/** A pad 16 cm wide that is not turned, its side 3 + 8 = 11 cm out. */
const straight = (outM: number): Seat => {
  const seat = exampleSeat();
  return { ...seat, kneePad: { ...seat.kneePad, outM, recessTurnDeg: 0, widthM: 0.16, heightM: 0.12 } };
};

function found(boat: Boat, seat: Seat) {
  const { quantities, findings } = evaluateFit({ ...exampleFit([seat]), boat });
  return {
    mm: (id: string) => 1000 * quantities.find((q) => q.id === id)!.value,
    severity: (id: string) => findings.find(({ quantity }) => quantity === id)!.severity,
  };
}

describe('a block in a hull', () => {
  it('is tested at its base, where the hull is narrower than at the recess’s height', () => {
    const { mm, severity } = found(prismBoat(FLARED), straight(0.06));
    // The base's side is 14 cm out and 3 cm up: 14 − 8 − 3 = 3 cm beside the slope, over √2, and the skin. The top is inside.
    expect(mm('padInsideHull')).toBeCloseTo(-30 / Math.SQRT2 - 4, 6);
    expect(mm('padBevel')).toBeCloseTo(30 / Math.SQRT2 + 4, 6);
    expect(severity('padBevel')).toBe('good');
  });

  it('that would have to be cut by more than it can spare is to be changed', () => {
    const { mm, severity } = found(prismBoat(FLARED), straight(0.1));
    expect(mm('padBevel')).toBeCloseTo(70 / Math.SQRT2 + 4, 6);
    expect(severity('padBevel')).toBe('change');
  });

  it('is not cut where it stands clear', () => {
    expect(found(prismBoat(FLARED), straight(0)).mm('padBevel')).toBe(0);
  });

  it('overhangs its board by what reaches over the edge', () => {
    const { mm, severity } = found(prismBoat(FLARED, { widthM: 0.2 }), straight(0.06));
    expect(mm('padOverhang')).toBeCloseTo(40, 6);
    expect(severity('padOverhang')).toBe('change');
    const wide = found(prismBoat(FLARED, { widthM: 0.28 }), straight(0.03));
    expect(wide.mm('padOverhang')).toBeCloseTo(-30, 6);
    expect(wide.severity('padOverhang')).toBe('good');
  });
});

describe('a fixing hole', () => {
  it('through the skin says stop', () => {
    // The bolts' heads hang 3 − 0.8 − 0.6 = 1.6 cm up; a board hung lower has them in the skin.
    const low = found(prismBoat(FLARED, { heightM: 0.015 }), straight(0.03));
    expect(low.mm('padHolesToSkin')).toBeCloseTo(15 - 8 - 6 - 4 - 3.25, 6);
    expect(low.severity('padHolesToSkin')).toBe('stop');
    const high = found(prismBoat(FLARED, { heightM: 0.06 }), straight(0.03));
    expect(high.severity('padHolesToSkin')).toBe('good');
  });
});

describe('a floorboard', () => {
  it('40 cm wide in a hull of 28 cm is told, not taken without a word', () => {
    const { mm, severity } = found(prismBoat(BOX_28_CM, { widthM: 0.4 }), straight(0.03));
    expect(mm('boardInsideHull')).toBeCloseTo(-60 - 4, 6);
    expect(severity('boardInsideHull')).toBe('change');
  });

  it('is tested over its whole length and thickness', () => {
    expect(found(prismBoat(BOX_28_CM), straight(0.03)).mm('boardInsideHull')).toBeCloseTo(18, 6);
    const tapered = prismBoat(BOX_28_CM, {
      outline: [
        { xM: -1, widthM: 0.2 },
        { xM: 1, widthM: 0.29 },
      ],
    });
    expect(found(tapered, straight(0.03)).mm('boardInsideHull')).toBeCloseTo(-5 - 4, 6);
    const thick = found(prismBoat(BOX_28_CM, { thicknessM: 0.025 }), straight(0.03));
    expect(thick.mm('boardInsideHull')).toBeCloseTo(5 - 4, 6);
  });
});
