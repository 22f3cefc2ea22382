import type { SolidMesh, SolidPoint } from '../../../core/setout/mesh.ts';

const HEAD = 80;
const FACET = 50;

/** A solid as binary STL, millimetres: a head of 80 bytes, the count, 50 bytes a triangle, little-endian (3D Systems, 1989). */
export function stlOf({ points, triangles }: SolidMesh): Uint8Array {
  const view = new DataView(new ArrayBuffer(HEAD + 4 + FACET * triangles.length));
  const head = new TextEncoder().encode('Kneelwright, millimetres, binary STL');
  for (const [k, byte] of head.entries()) view.setUint8(k, byte);
  view.setUint32(HEAD, triangles.length, true);
  triangles.forEach((corners, k) => {
    const [a, b, c] = corners.map((corner) => points[corner]!) as [SolidPoint, SolidPoint, SolidPoint];
    const numbers = [...normalOf(a, b, c), ...a, ...b, ...c];
    const at = HEAD + 4 + FACET * k;
    for (const [i, value] of numbers.entries()) view.setFloat32(at + 4 * i, value, true);
  });
  return new Uint8Array(view.buffer);
}

function normalOf(a: SolidPoint, b: SolidPoint, c: SolidPoint): SolidPoint {
  const u = [b[0] - a[0], b[1] - a[1], b[2] - a[2]] as const;
  const v = [c[0] - a[0], c[1] - a[1], c[2] - a[2]] as const;
  const n = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]] as const;
  const length = Math.hypot(...n) || 1;
  return [n[0] / length, n[1] / length, n[2] / length];
}
