import { describe, expect, it } from 'vitest';
import { hullSpread } from '../../../core/evaluation/hull-spread.ts';
import { usualHull } from '../../../core/hull/usual-hull.ts';
import { floatAtRest } from '../../../core/hydrostatics/float-at-rest.ts';
import { immersedProperties } from '../../../core/hydrostatics/immersed-properties.ts';
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
