import { describe, expect, it } from 'vitest';
import { evaluateFit } from '../../../core/evaluation/evaluator.ts';
import { hullDataSpread, hullSpread } from '../../../core/evaluation/hull-spread.ts';
import { findQuantity } from '../../../core/evaluation/quantities.ts';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { usualHull } from '../../../core/hull/usual-hull.ts';
import { curvesOfForm } from '../../../core/hydrostatics/curves-of-form.ts';
import { floatAtRest } from '../../../core/hydrostatics/float-at-rest.ts';
import { formDoubt } from '../../../core/hydrostatics/form-doubt.ts';
import { immersedProperties } from '../../../core/hydrostatics/immersed-properties.ts';
import { waterDensity } from '../../../core/hydrostatics/water-density.ts';
import { exampleBoat, exampleFit } from '../example/example-fit.ts';
import { madeHull } from '../hull/made-hull.ts';

const [LENGTH, BEAM, DEPTH] = [5.2, 0.42, 0.27];
/** Height under which breadth is missing, metres: the waterline lies over it. */
const LOW = 0.1;

/** A single of elliptic sections whose breadths below `LOW` are short by a share, most half way up. */
function single(short: number) {
  const stations = Array.from({ length: 41 }, (_, i) => {
    const x = LENGTH * (i / 40 - 0.5);
    const plan = (BEAM / 2) * (1 - ((2 * x) / LENGTH) ** 2);
    const section = Array.from({ length: 61 }, (_, k): [number, number] => {
      const z = DEPTH * (k / 60) ** 2;
      const missing = z < LOW ? short * Math.sin((Math.PI * z) / LOW) : 0;
      return [plan * Math.sqrt(1 - (1 - z / DEPTH) ** 2) * (1 - missing), z];
    });
    return { x, section };
  });
  return madeHull({ name: 'single', stations });
}

function afloatIn(hull: ReturnType<typeof single>) {
  const rest = floatAtRest(hull, { masses: [{ mass: 100, x: 0, y: 0, z: 0.4 }], waterDensity: 1000 });
  if (rest.kind !== 'afloat') throw new Error(rest.kind);
  return rest;
}

describe('what a doubt of the volume comes to', () => {
  it('is what floating says of a hull that lacks that volume below its waterline: deeper, and GM the greater', () => {
    const [whole, slack] = [single(0), single(0.06)];
    const [here, there] = [afloatIn(whole), afloatIn(slack)];
    const at = { draft: here.draft, trim: 0, heel: 0 };
    const volume = 1 - immersedProperties(slack, at).volume / immersedProperties(whole, at).volume;
    const usual = usualHull({ boatClass: 'C1' });
    if (usual.hull.kind !== 'usual') throw new Error(usual.hull.kind);
    const doubt = { ...usual.hull.doubt, volume, centre: 0, heightM: 0, beam: 0 };
    const boat = { ...usual, hull: { ...usual.hull, doubt } };
    const spread = hullSpread(boat, here, whole);
    expect(spread.draft / (there.draft - here.draft)).toBeCloseTo(1, 1);
    expect(spread.transverseGm / (there.transverseGm - here.transverseGm)).toBeGreaterThan(0.9);
    expect(spread.transverseGm / (there.transverseGm - here.transverseGm)).toBeLessThan(1.2);
  });
});

describe('what a doubt of the lines comes to at the ends', () => {
  it('is sinkage, half the trim and the sheer’s own height, which are independent: squares add', () => {
    const { draft, trimRest, freeboardBow, freeboardStern } = hullSpread(exampleBoat());
    // A tape reads the sheer to 3 mm (estimate).
    expect(freeboardBow).toBeCloseTo(Math.hypot(draft, trimRest / 2, 0.003), 12);
    expect(freeboardStern).toBe(freeboardBow);
  });

  it('is a beam’s own share of what sinks it a centimetre, as in the curves of form', () => {
    const fit = exampleFit();
    const report = evaluateFit(fit);
    if (report.afloat.ready.kind !== 'afloat') throw new Error('not afloat');
    const { draft, trim, massPerCentimetre } = report.afloat.ready;
    const hull = hullOfBoat(fit.boat);
    const data = hullDataSpread(fit.boat, hull);
    const [form] = curvesOfForm(hull, [draft], { waterDensity: waterDensity(fit.water), trim });
    const doubt = formDoubt(form!, data, hull.length).massPerCentimetre;
    expect(doubt / massPerCentimetre).toBeCloseTo(data.beam, 3);
    // Body and paddle add next to nothing.
    const { sd } = findQuantity(report.quantities, 'massPerCentimetre', null)!;
    expect(sd! / doubt).toBeCloseTo(1, 1);
  });
});
