import { describe, expect, it } from 'vitest';
import { hullDataSpread } from '../../../core/evaluation/hull-spread.ts';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { usualHull } from '../../../core/hull/usual-hull.ts';
import { curvesOfForm } from '../../../core/hydrostatics/curves-of-form.ts';
import { formDoubt } from '../../../core/hydrostatics/form-doubt.ts';
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
