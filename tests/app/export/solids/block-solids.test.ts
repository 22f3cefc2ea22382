import fc from 'fast-check';
import { strFromU8, unzipSync } from 'fflate';
import { beforeAll, describe, expect, it } from 'vitest';
import {
  cutSolid,
  loadSolidGeometry,
  type SolidGeometry,
} from '../../../../app/export/solids/solid-geometry.ts';
import { stlOf } from '../../../../app/export/solids/stl.ts';
import { threeMfOf } from '../../../../app/export/solids/three-mf.ts';
import type { SolidId } from '../../../../core/setout/block-forms.ts';
import { blockSolids } from '../../../../core/setout/block-solids.ts';
import type { SolidMesh, SolidPoint } from '../../../../core/setout/mesh.ts';
import type { SeatSetOut } from '../../../../core/setout/set-out.ts';
import { cases } from '../../../cases.ts';
import { inventedSetOut, ROWS_OF_HOLES } from '../../../core/setout/invented-set-out.ts';
import { notEmpty } from '../../../not-empty.ts';
import { randomSeats, randomSetOut } from './random-seats.ts';

/**
 * Solids for machines against checks of their own: edges counted one by one, a volume summed over triangles, a ray straight down
 * through every triangle, and the depth of an ellipsoid by its equation (any textbook of analytic geometry). None of them is the
 * code that made the solid.
 */

let geometry: SolidGeometry;
beforeAll(async () => {
  geometry = await loadSolidGeometry();
});

const SEED = 20261126;
const solidOf = (out: SeatSetOut, id: SolidId): SolidMesh =>
  cutSolid(geometry, blockSolids(out).find((block) => block.id === id)!);

/** Every edge lies between just two triangles, which run along it in opposite ways. */
function isWatertight({ triangles }: SolidMesh): boolean {
  const edges = new Map<string, number>();
  for (const [a, b, c] of triangles) {
    for (const [from, to] of [
      [a, b],
      [b, c],
      [c, a],
    ] as const) {
      const key = from < to ? `${from} ${to}` : `${to} ${from}`;
      const way = from < to ? 1 : 1000;
      edges.set(key, (edges.get(key) ?? 0) + way);
    }
  }
  return [...edges.values()].every((sum) => sum === 1001);
}

/** Volume by upright prisms: each triangle's shadow times its mean height, shadows of faces that look down counted off. */
function volumeOf({ points, triangles }: SolidMesh): number {
  return triangles.reduce((sum, corners) => {
    const [a, b, c] = corners.map((k) => points[k]!) as [SolidPoint, SolidPoint, SolidPoint];
    const shadow = ((b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1])) / 2;
    return sum + (shadow * (a[2] + b[2] + c[2])) / 3;
  }, 0);
}

/** Heights at which an upright line passes a surface, lowest first. */
function crossings({ points, triangles }: SolidMesh, [x, y]: readonly [number, number]): number[] {
  const heights = triangles.flatMap((corners) => {
    const [a, b, c] = corners.map((k) => points[k]!) as [SolidPoint, SolidPoint, SolidPoint];
    const area = (b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1]);
    if (Math.abs(area) < 1e-9) return [];
    const u = ((b[0] - x) * (c[1] - y) - (c[0] - x) * (b[1] - y)) / area;
    const v = ((c[0] - x) * (a[1] - y) - (a[0] - x) * (c[1] - y)) / area;
    const w = 1 - u - v;
    return u < 0 || v < 0 || w < 0 ? [] : [u * a[2] + v * b[2] + w * c[2]];
  });
  return heights.sort((a, b) => a - b);
}

/** Depth of the wood's hollow under the block's top ahead of the knee, by the ellipsoid's own equation. */
function ellipsoidDepth(out: SeatSetOut, [x, y]: readonly [number, number]): number {
  const { kneeDepth, halfBreadth, depth } = out.fittings.pad.recess;
  const foam = 1000 * out.work.options.foamM;
  const rest = 1 - (x / (kneeDepth + foam)) ** 2 - (y / (halfBreadth + foam)) ** 2;
  if (rest <= 0) return 0;
  return Math.max(0, depth - (kneeDepth - (kneeDepth + foam) * Math.sqrt(rest)));
}

/** The faceted hollow lies within this of the true one, millimetres. */
const FACETS_MM = 0.15;

describe('a block for a machine', () => {
  it('is watertight, within its bounds, of its volume, and as deep as the formula at 20 places', () => {
    fc.assert(
      fc.property(randomSeats, (given) => {
        const out = randomSetOut(given);
        const { pad } = out.fittings;
        for (const block of notEmpty(blockSolids(out))) {
          const solid = cutSolid(geometry, block);
          expect(isWatertight(solid)).toBe(true);
          const volume = volumeOf(solid);
          const body = volumeOf(block.body);
          expect(volume).toBeGreaterThan(0);
          expect(volume).toBeLessThanOrEqual(body + 1);
          expect(Math.min(...solid.points.map(([, , z]) => z))).toBeGreaterThan(-1e-3);
        }
        const solid = solidOf(out, 'pad-block');
        const xs = solid.points.map(([x]) => x);
        const ys = solid.points.map(([, y]) => y);
        const zs = solid.points.map(([, , z]) => z);
        expect(Math.min(...xs)).toBeGreaterThan(pad.aftEnd - 1e-3);
        expect(Math.max(...xs)).toBeLessThan(pad.foreEnd + 1e-3);
        expect(Math.max(...ys.map(Math.abs))).toBeLessThan(pad.halfWidth + 1e-3);
        expect(Math.max(...zs)).toBeCloseTo(pad.topHeight - Math.min(pad.bedFore, pad.bedAft), 3);
        const top = pad.topHeight - Math.min(pad.bedFore, pad.bedAft);
        for (let k = 0; k < 20; k++) {
          const at = [0.37 + 1.7 * k, (0.31 + 0.04 * k) * (k % 2 === 0 ? 1 : -1) * 30] as const;
          if (at[0] > pad.foreEnd - 1 || Math.abs(at[1]) > pad.halfWidth - 1) continue;
          const surface = crossings(solid, at).at(-1);
          // Where the hull's side has taken the whole block there is no surface.
          if (surface === undefined) continue;
          expect(Math.abs(top - surface - ellipsoidDepth(out, at))).toBeLessThan(FACETS_MM);
        }
      }),
      { seed: SEED, numRuns: cases(3, 100) },
    );
  });

  it('has its holes in: as wide as the bolt’s hole, as deep as its schedule', () => {
    const out = inventedSetOut({ hardware: ROWS_OF_HOLES });
    const bare = blockSolids(out).find(({ id }) => id === 'rear-rest')!;
    const solid = cutSolid(geometry, bare);
    const holes = bare.away.slice(0, out.holes[1]!.bolts.length);
    for (const hole of notEmpty(holes)) {
      const x = hole.points.reduce((sum, [px]) => sum + px, 0) / hole.points.length;
      const y = hole.points.reduce((sum, [, py]) => sum + py, 0) / hole.points.length;
      const deep = Math.max(...hole.points.map(([, , z]) => z));
      // A little beside the middle: there the corners of all triangles of the round meet.
      expect(crossings(solid, [x + 0.31, y + 0.17])[0]).toBeCloseTo(deep, 2);
    }
  });

  it('has a mirror image on the other side', () => {
    const [left, right] = (['left', 'right'] as const).map((side) => inventedSetOut({ side }));
    const volumes = [left!, right!].map((out) => volumeOf(solidOf(out, 'pad-block')));
    expect(volumes[0]! / volumes[1]!).toBeCloseTo(1, 4);
  });

  it('has no undercut: an upright line leaves the wood once', () => {
    const solid = solidOf(inventedSetOut(), 'pad-block');
    for (let x = -110.13; x < 80; x += 13.7) {
      for (let y = -71.9; y < 75; y += 11.3) expect(crossings(solid, [x, y]).length).toBe(2);
    }
  });
});

describe('files of a solid', () => {
  it('STL: 50 bytes a triangle after the head, the same corners', () => {
    const solid = solidOf(inventedSetOut(), 'rear-rest');
    const view = new DataView(stlOf(solid).buffer);
    expect(view.getUint32(80, true)).toBe(solid.triangles.length);
    expect(view.byteLength).toBe(84 + 50 * solid.triangles.length);
    const first = solid.points[solid.triangles[0]![0]]!;
    for (const k of [0, 1, 2] as const) {
      expect(view.getFloat32(84 + 12 + 4 * k, true)).toBeCloseTo(first[k], 4);
    }
  });

  it('3MF: a package with one model in millimetres, every corner and triangle in it', () => {
    const solid = solidOf(inventedSetOut(), 'rear-rest');
    const files = unzipSync(threeMfOf(solid, 'Rest & more', new Date(2026, 10, 26)));
    expect(Object.keys(files).sort()).toEqual(['3D/3dmodel.model', '[Content_Types].xml', '_rels/.rels']);
    const model = strFromU8(files['3D/3dmodel.model']!);
    expect(model).toContain('unit="millimeter"');
    expect(model).toContain('Rest &amp; more');
    expect(model.match(/<vertex /g)).toHaveLength(solid.points.length);
    expect(model.match(/<triangle /g)).toHaveLength(solid.triangles.length);
  });
});
