import { describe, expect, it } from 'vitest';
import type { Standing } from '../../../core/drilling/drilling-model.ts';
import { givenUp, movedFit } from '../../../core/drilling/given-up.ts';
import { letteredHoles } from '../../../core/drilling/hole-letters.ts';
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

describe('letters of holes', () => {
  it('run from the bow aft and from port to starboard, past Z to AA', () => {
    const used = Array.from({ length: 28 }, (_, k) => ({ x: k % 2, y: k / 100, drilled: false }));
    const lettered = letteredHoles({ used });
    expect(lettered[0]).toMatchObject({ letter: 'A', x: 1, y: 0.27 });
    expect(lettered.map(({ letter }) => letter).slice(24)).toEqual(['Y', 'Z', 'AA', 'AB']);
  });
});
