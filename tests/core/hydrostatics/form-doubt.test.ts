import { describe, expect, it } from 'vitest';
import { hullDataSpread } from '../../../core/evaluation/hull-spread.ts';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { usualHull } from '../../../core/hull/usual-hull.ts';
import { curvesOfForm } from '../../../core/hydrostatics/curves-of-form.ts';
import { formDoubt } from '../../../core/hydrostatics/form-doubt.ts';
import { box } from '../../reference/hydro-shapes.ts';
import { exampleBoat } from '../example/example-fit.ts';

const boat = usualHull({ boatClass: 'C1' });
const at = (hull: ReturnType<typeof hullOfBoat>) => curvesOfForm(hull, [0.11], { waterDensity: 999 })[0]!;

describe('doubt on the curves of form', () => {
  it('is what another hull of the doubt’s own size would read', () => {
    const beam = 0.02;
    const [one, other] = [boat, { ...boat, hull: { ...boat.hull, beamM: 0.42 * (1 + beam) } }].map((each) =>
      at(hullOfBoat(each as typeof boat)),
    );
    const doubt = formDoubt(one!, { beam, volume: beam, centre: 0, height: 0 }, 5.2);
    // A hull that is broader all over by 2 % holds 2 % more, to the centimetre and in all.
    expect(doubt.massPerCentimetre / (other!.massPerCentimetre - one!.massPerCentimetre)).toBeCloseTo(1, 2);
    expect(doubt.displacementKg / (other!.displacementKg - one!.displacementKg)).toBeCloseTo(1, 2);
    expect(doubt.momentPerCentimetreTrim).toBeCloseTo(
      other!.momentPerCentimetreTrim - one!.momentPerCentimetreTrim,
      0,
    );
    // Girth grows by less than the beam.
    const girth = (other!.wettedSurface - one!.wettedSurface) / doubt.wettedSurface;
    expect(girth).toBeGreaterThan(0.8);
    expect(girth).toBeLessThan(1.3);
  });

  it('of the metacentre goes with the beam cubed over the volume, BM = I ÷ V (any textbook; I of a box L·B³/12)', () => {
    const [one, broader] = [0.5, 0.5 * 1.001].map((B) => at(box(5, B, 0.4)));
    const doubtOf = (spread: { beam: number; volume: number }) =>
      formDoubt(one!, { ...spread, centre: 0, height: 0 }, 5).transverseKm;
    const bm = one!.waterplane.transverseBm;
    // A box that is broader by a share at the same draft has as much more volume: what is left of the cube is a square.
    const grown = broader!.waterplane.transverseBm - bm;
    expect((doubtOf({ beam: 0.001, volume: 0 }) - doubtOf({ beam: 0, volume: 0.001 })) / grown).toBeCloseTo(
      1,
      2,
    );
    expect(doubtOf({ beam: 0.001, volume: 0 })).toBeCloseTo((1.001 ** 3 - 1) * bm, 5);
  });

  it('is less for a measured hull than for a usual one, and less again after a float check', () => {
    const tape = exampleBoat();
    const checked = { ...tape, correction: { fullness: 0, foreAftFullness: 0, residualM: 0.0005 } };
    const [usual, measured, afloat] = [boat, tape, checked].map(
      (each) => hullDataSpread(each, hullOfBoat(each)).volume,
    );
    expect(measured).toBeLessThan(usual!);
    expect(afloat).toBeLessThan(measured!);
  });
});
