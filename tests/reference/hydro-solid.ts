import type { Manifold, ManifoldToplevel } from 'manifold-3d';
import createModule from 'manifold-3d';
import type { BoatPoint } from '../../core/frame/vec3.ts';
import type { Hull } from '../../core/hull/hull.ts';
import { sectionAt } from '../../core/hull/section-at.ts';
import type { WaterPlane } from '../../core/hull/water-plane.ts';

/** Loads the solid-geometry library (WebAssembly) once for a file of tests. */
export async function solidGeometry(): Promise<ManifoldToplevel> {
  const module = await createModule();
  module.setup();
  return module;
}

/** A hull's lofted sections, so many for each interval between two stations, aft to fore: what its solid is drawn through. */
export function loftedSections(hull: Hull, perInterval: number): BoatPoint[][] {
  return hull.stations.flatMap(({ x }, i) => {
    const next = hull.stations[i + 1];
    if (!next) return [sectionAt(hull, x)];
    return Array.from({ length: perInterval }, (_, k) =>
      sectionAt(hull, x + ((next.x - x) * k) / perInterval),
    );
  });
}

/** A closed solid through half-sections of equal point counts, aft to fore: shell on both sides, deck, bottom and ends. */
export function solidOf({ Manifold, Mesh }: ManifoldToplevel, sections: readonly BoatPoint[][]): Manifold {
  const ring = 2 * sections[0]!.length;
  const corners = sections.flatMap((half) => [
    ...half,
    ...half.toReversed().map(({ x, y, z }) => ({ x, y: -y, z })),
  ]);
  const triangles: number[] = [];
  for (let s = 0; s + 1 < sections.length; s++) {
    for (let k = 0; k < ring; k++) {
      const [a, b] = [s * ring + k, s * ring + ((k + 1) % ring)];
      triangles.push(a, b, a + ring, b, b + ring, a + ring);
    }
  }
  const last = (sections.length - 1) * ring;
  for (let k = 0; k < ring / 2 - 1; k++) {
    const [a, b, c, d] = [k, k + 1, ring - 2 - k, ring - 1 - k];
    triangles.push(a, d, c, a, c, b, last + a, last + c, last + d, last + a, last + b, last + c);
  }
  const mesh = new Mesh({
    numProp: 3,
    vertProperties: Float32Array.from(corners.flatMap(({ x, y, z }) => [x, y, z])),
    triVerts: Uint32Array.from(triangles),
  });
  return new Manifold(mesh);
}

/** Volume and centroid of what the solid has under a plane. */
export function solidUnder(
  solid: Manifold,
  plane: WaterPlane,
): { volume: number; centroid: [number, number, number] } {
  const [k, t] = [plane.alongSlope, plane.acrossSlope];
  const length = Math.hypot(k, t, 1);
  const under = solid.trimByPlane([-k / length, -t / length, -1 / length], -plane.draft / length);
  const { vertProperties, triVerts, numProp } = under.getMesh();
  const at = (v: number) => vertProperties.subarray(v * numProp, v * numProp + 3);
  let volume = 0;
  const moment = [0, 0, 0];
  for (let i = 0; i < triVerts.length; i += 3) {
    const [a, b, c] = [at(triVerts[i]!), at(triVerts[i + 1]!), at(triVerts[i + 2]!)] as const;
    const six =
      a[0]! * (b[1]! * c[2]! - b[2]! * c[1]!) -
      a[1]! * (b[0]! * c[2]! - b[2]! * c[0]!) +
      a[2]! * (b[0]! * c[1]! - b[1]! * c[0]!);
    volume += six / 6;
    for (let d = 0; d < 3; d++) moment[d]! += (six / 24) * (a[d]! + b[d]! + c[d]!);
  }
  under.delete();
  return { volume, centroid: [moment[0]! / volume, moment[1]! / volume, moment[2]! / volume] };
}
