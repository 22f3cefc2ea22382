import fc from 'fast-check';
import { strFromU8, unzipSync } from 'fflate';
import { beforeAll, describe, expect, it } from 'vitest';
import { loadSolidGeometry, type SolidGeometry } from '../../../../app/export/solids/solid-geometry.ts';
import {
  loadSolidModeller,
  modelled,
  type SolidModeller,
  stepFile,
} from '../../../../app/export/solids/step.ts';
import { blockForms } from '../../../../core/setout/block-forms.ts';
import { blockSolids } from '../../../../core/setout/block-solids.ts';
import type { SolidMesh } from '../../../../core/setout/mesh.ts';
import { inventedSetOut, ON_A_WEDGE, ROWS_OF_HOLES } from '../../../core/setout/invented-set-out.ts';
import { notEmpty } from '../../../not-empty.ts';
import { exportedSolids } from './exported-solids.ts';
import { randomSeats, randomSetOut } from './random-seats.ts';

/** Exact solids by OpenCascade against the same blocks as meshes cut by manifold-3d: two libraries that share no code. */
let modeller: SolidModeller;
let geometry: SolidGeometry;
beforeAll(async () => {
  [modeller, geometry] = await Promise.all([loadSolidModeller(), loadSolidGeometry()]);
});

/** Volume of the mesh with everything taken away from it, by manifold's own reckoning. */
function cutVolume(body: SolidMesh, away: readonly SolidMesh[]): number {
  const { Manifold, Mesh } = geometry;
  const solidOf = ({ points, triangles }: SolidMesh) =>
    new Manifold(
      new Mesh({
        numProp: 3,
        vertProperties: Float32Array.from(points.flat()),
        triVerts: Uint32Array.from(triangles.flat()),
      }),
    );
  return away.reduce((left, mesh) => left.subtract(solidOf(mesh)), solidOf(body)).volume();
}

/** Facets and the coarser reading of the hull's side: less than this of a block's volume. */
const SHARE = 0.002;

describe('a block as an exact solid', () => {
  it.each([
    ['plain', {}],
    [
      'on the right, in rows of holes, on a wedge',
      {
        side: 'right',
        hardware: ROWS_OF_HOLES,
        seat: { frontFoot: ON_A_WEDGE },
      },
    ],
    ['without foam', { options: { foamM: 0 } }],
    ['cut to the hull', { seat: { kneePad: { ...inventedSetOut().work.seat.kneePad, outM: 0.11 } } }],
  ] as const)(
    'has the volume of its mesh, and is one solid in its file that reads back (%s)',
    async (_, wanted) => {
      const out = inventedSetOut(wanted);
      const meshes = blockSolids(out);
      for (const [k, form] of notEmpty(blockForms(out)).entries()) {
        const shape = modelled(modeller, form);
        const { body, away } = meshes[k]!;
        const expected = cutVolume(body, away);
        expect(Math.abs(modeller.measureVolume(shape) / expected - 1), form.id).toBeLessThan(SHARE);
        const text = await stepFile(shape, form.id, new Date('2026-05-04T12:00:00Z'));
        expect(text.match(/MANIFOLD_SOLID_BREP\(/g)).toHaveLength(1);
        expect(text).toMatch(/SI_UNIT\(\.MILLI\.,\.METRE\.\)/);
        // Equal input makes equal bytes.
        expect(await stepFile(shape, form.id, new Date('2026-05-04T12:00:00Z'))).toBe(text);
        const back = (await modeller.importSTEP(new Blob([text]))) as Parameters<
          SolidModeller['measureVolume']
        >[0];
        expect(modeller.measureVolume(back) / modeller.measureVolume(shape)).toBeCloseTo(1, 6);
        const [low, high] = back.boundingBox.bounds;
        expect(low[2]).toBeGreaterThan(-1e-3);
        expect(high[0] - low[0]).toBeLessThanOrEqual(
          Math.max(...form.profile.map(([x]) => x)) - Math.min(...form.profile.map(([x]) => x)) + 1e-3,
        );
        expect(high[1] - low[1]).toBeLessThanOrEqual(2 * form.half + 1e-3);
      }
    },
  );
});

describe('blocks of random seats', () => {
  it('have the same volume and bounds as exact solids and as meshes', () => {
    fc.assert(
      fc.property(randomSeats, (given) => {
        const out = randomSetOut(given);
        const meshes = blockSolids(out);
        for (const [k, form] of notEmpty(blockForms(out)).entries()) {
          const shape = modelled(modeller, form);
          const { body, away } = meshes[k]!;
          const share = Math.abs(modeller.measureVolume(shape) / cutVolume(body, away) - 1);
          expect(share, form.id).toBeLessThan(SHARE);
          const [low, high] = shape.boundingBox.bounds;
          const tall = Math.max(...form.profile.map(([, z]) => z));
          expect(low[2]).toBeGreaterThan(-1e-3);
          expect(high[2]).toBeLessThan(tall + 1e-3);
          expect(high[1] - low[1]).toBeLessThan(2 * form.half + 1e-3);
        }
      }),
      // OpenCascade takes seconds a block; the meshes alone are checked for 100 seats in block-solids.test.ts.
      { seed: 20261126, numRuns: 30 },
    );
  });
});

describe('an export of STEP files', () => {
  it('is modelled in a thread of its own and handed over as one archive', async () => {
    const { path, bytes } = await exportedSolids('step');
    expect(path).toMatch(/Solids, .*\.zip$/);
    const files = unzipSync(new Uint8Array(bytes));
    expect(Object.keys(files).length).toBe(2);
    for (const [name, content] of Object.entries(files)) {
      expect(name).toMatch(/(Pad block|Rear rest), (left|right) knee.*\.step$/);
      expect(strFromU8(content)).toMatch(/^ISO-10303-21;/);
    }
  });
});
