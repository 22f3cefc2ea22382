import { describe, expect, it } from 'vitest';
import { type Standing, USUAL_DRILLING } from '../../../core/drilling/drilling-model.ts';
import { givenUp, movedFit } from '../../../core/drilling/given-up.ts';
import { markedPlan } from '../../../core/drilling/marked-plan.ts';
import { partsOf } from '../../../core/evaluation/parts-of.ts';
import { inventedFit } from '../setout/invented-set-out.ts';

const moved = (dx: number, dy: number): Standing => ({
  dx,
  dy,
  movedMm: 1000 * Math.hypot(dx, dy),
  holes: [],
});

describe('what a paddler gives up for a shared board', () => {
  it.each(['left', 'right'] as const)('moves the part itself as the plan says, on the %s', (side) => {
    const fit = inventedFit({ side });
    const after = movedFit(fit, 0, { kneePad: moved(0.003, -0.002) });
    const [pad, rest] = [fit, after].map((each) => partsOf(each));
    expect(rest![0]!.place.x - pad![0]!.place.x).toBeCloseTo(0.003, 9);
    expect(rest![0]!.place.y - pad![0]!.place.y).toBeCloseTo(-0.002, 9);
    expect(rest![1]!.place).toEqual(pad![1]!.place);
  });

  it('is nothing where nothing moves, and trim by the bow where the knee goes forward', () => {
    const fit = inventedFit();
    expect(givenUp(fit, 0, {})).toMatchObject({ padMm: 0, restMm: 0, kneeRad: 0, kneeLoadN: 0, trimRad: 0 });
    const forward = givenUp(fit, 0, { kneePad: moved(0.01, 0), rearRest: moved(0.01, 0) });
    expect(forward.padMm).toBeCloseTo(10, 9);
    // Positive is bow up: weight forward puts the bow down.
    expect(forward.trimRad).toBeLessThan(0);
    expect(forward.kneeLoadN).not.toBe(0);
  });
});

describe('a plan as it is painted on the board', () => {
  it('numbers holes from the bow aft and from port to starboard, and letters those who stand in them', () => {
    const hole = (x: number, y: number, drilled = false) => ({ x, y, drilled });
    const holes = [hole(-0.6, 0.02), hole(-0.2, 0.05, true), hole(-0.2, -0.04), hole(-0.6, -0.06)];
    const stand = (...ids: number[]): Standing => ({ dx: 0, dy: 0, movedMm: 0, holes: ids });
    const wishes = (['kneePad', 'rearRest', 'kneePad'] as const).map((fitting, k) => ({
      fit: k === 2 ? 1 : 0,
      seat: 0,
      fitting,
      bolts: [],
      toleranceM: 0,
    }));
    const board = { heightM: 0, widthM: 0.3, aftEndXM: -1, foreEndXM: 1, thicknessM: 0.008 };
    const known = (['drilled', 'plugged', 'planned'] as const).map((state, k) => ({
      xM: -0.2,
      yM: [0.05, 0.1, 0.12][k]!,
      diameterM: 0.0065,
      state,
    }));
    const rules = { ...USUAL_DRILLING, board, known };
    const standings = [stand(1, 2), stand(0, 3), stand(2, 1)];
    const marked = markedPlan(
      { wishes, standings: [], holes, rules },
      { standings, used: holes, fresh: [], plates: 2, movedMm: 0 },
      ['Ada', 'Bea'].map((name, fit) => ({ fit, seat: 0, name })),
    );
    expect(marked.holes.map(({ y, letters }) => [y, letters.join('')])).toEqual([
      [0.05, 'AB'],
      [-0.04, 'AB'],
      [0.02, 'A'],
      [-0.06, 'A'],
    ]);
    expect(marked.paddlers.map(({ letter, holes: of }) => [letter, of.kneePad, of.rearRest])).toEqual([
      ['A', [1, 2], [3, 4]],
      ['B', [1, 2], []],
    ]);
    // The plugged one stays on the drawing; the drilled one is used, and what was planned before is planned anew.
    expect(marked.unused.map(({ state }) => state)).toEqual(['plugged']);
  });
});
