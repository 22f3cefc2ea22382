import type { Manifold, ManifoldToplevel } from 'manifold-3d';
import type { BlockSolid } from '../../../core/setout/block-solids.ts';
import type { SolidMesh, SolidPoint } from '../../../core/setout/mesh.ts';

/** The solid-geometry library (WebAssembly), loaded only when a solid is asked for. */
export type SolidGeometry = ManifoldToplevel;

/** Loads the library. */
export async function loadSolidGeometry(): Promise<SolidGeometry> {
  const { default: createModule } = await import('manifold-3d');
  const geometry = await createModule();
  geometry.setup();
  return geometry;
}

/**
 * A block cut out of its body: one closed surface, millimetres.
 * @throws Error when the library finds a body that is not closed, or nothing is left of the block.
 */
export function cutSolid(geometry: SolidGeometry, { id, body, away }: BlockSolid): SolidMesh {
  const solids: Manifold[] = [];
  const made = (mesh: SolidMesh) => {
    const solid = manifoldOf(geometry, mesh);
    solids.push(solid);
    return solid;
  };
  try {
    let left = made(body);
    for (const mesh of away) {
      left = left.subtract(made(mesh));
      solids.push(left);
    }
    if (left.status() !== 'NoError' || left.isEmpty()) throw new Error(`${id}: ${left.status()}`);
    return meshOf(left);
  } finally {
    for (const solid of solids) solid.delete();
  }
}

/** A closed surface as the library's solid. */
function manifoldOf({ Manifold, Mesh }: SolidGeometry, { points, triangles }: SolidMesh): Manifold {
  const mesh = new Mesh({
    numProp: 3,
    vertProperties: Float32Array.from(points.flat()),
    triVerts: Uint32Array.from(triangles.flat()),
  });
  return new Manifold(mesh);
}

function meshOf(solid: Manifold): SolidMesh {
  const { vertProperties, triVerts, numProp } = solid.getMesh();
  const points = Array.from({ length: vertProperties.length / numProp }, (_, k): SolidPoint => {
    const at = k * numProp;
    return [vertProperties[at]!, vertProperties[at + 1]!, vertProperties[at + 2]!];
  });
  const triangles = Array.from({ length: triVerts.length / 3 }, (_, k): [number, number, number] => [
    triVerts[3 * k]!,
    triVerts[3 * k + 1]!,
    triVerts[3 * k + 2]!,
  ]);
  return { points, triangles };
}
