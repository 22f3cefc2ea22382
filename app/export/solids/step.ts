import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type * as Replicad from 'replicad';
import type { BlockForm, BlockHollow } from '../../../core/setout/block-forms.ts';
import { legAt } from '../../../core/setout/knee-recess.ts';
import type { MillimetrePoint } from '../../../core/setout/template-drawing.ts';

/** The solid modeller (OpenCascade in WebAssembly, under npm replicad): exact faces, where meshes have facets. */
export type SolidModeller = typeof Replicad;
type Shape = Replicad.Shape3D;
/** A solid that can be written. */
export type SolidShape = Pick<Shape, 'blobSTEP'>;

/** Cuts reach past the block by this much, millimetres. */
const PAST_MM = 5;
/** Sections along the hull's side, and points on each, that its scribed face is ruled between. */
const SECTIONS = 9;
const POINTS = 21;

/** Loads the modeller: 23 MB that only this needs, so it is loaded when a STEP file is asked for, and in a thread of its own. */
export async function loadSolidModeller(): Promise<SolidModeller> {
  const [modeller, { default: load }] = await Promise.all([
    import('replicad'),
    import('replicad-opencascadejs'),
  ]);
  const wasmBinary = readFileSync(fileURLToPath(import.meta.resolve('replicad-opencascadejs/wasm')));
  // The options are Emscripten's. What it prints is statistics.
  modeller.setOC(await load({ wasmBinary, print() {}, printErr() {} }));
  return modeller;
}

/** A block as one exact solid, millimetres, in the frame of `BlockForm`. */
export function modelled(modeller: SolidModeller, form: BlockForm): Shape {
  const { profile, half, hollow, holes, skin } = form;
  const away = [
    ...(hollow ? hollowOf(modeller, hollow) : []),
    ...holes.map(({ x, y, radius, top }) => {
      const low = Math.min(-PAST_MM, top - 1);
      return modeller.makeCylinder(radius, top - low, [x, y, low], [0, 0, 1]);
    }),
    ...(skin ? [hullOf(modeller, skin)] : []),
  ];
  return away.reduce<Shape>((left, shape) => left.cut(shape), drawnOut(modeller, profile, half));
}

function drawnOut({ draw }: SolidModeller, profile: readonly MillimetrePoint[], half: number): Shape {
  const [first, ...others] = profile;
  const pen = others.reduce((path, [x, z]) => path.lineTo([x, z]), draw([...first!]));
  // The plane looks to starboard: what is drawn out from it goes there.
  const flat = pen.close().sketchOnPlane('XZ') as Replicad.Sketch;
  return flat.extrude(2 * half).translate([0, half, 0]) as Shape;
}

/**
 * Knee and shin lowered from above. Ahead of K a quarter of an ellipsoid, which is round about the axis across; behind it the ruled
 * surface between two half ellipses; straight up over both, so that no tool cuts under.
 */
function hollowOf(modeller: SolidModeller, { recess, foam, over }: BlockHollow): Shape[] {
  const { draw } = modeller;
  const [round, broad] = [recess.kneeDepth + foam, recess.halfBreadth + foam];
  const middle = over + recess.kneeDepth;
  const top =
    over + recess.depth + PAST_MM + Math.max(0, recess.kneeDepth, recess.kneeDepth + recess.shankRise);
  const half = draw([0, -broad]).halfEllipseTo([0, broad], round, true).close();
  const quarter = (half.sketchOnPlane('XY') as Replicad.Sketch)
    .revolve([0, 1, 0], { origin: [0, 0, 0], angle: 90 })
    .translate([0, 0, middle]);
  // The knee is seldom sunk beyond its middle.
  const isDeep = recess.depth > recess.kneeDepth;
  const upright = isDeep
    ? [(half.sketchOnPlane('XY', middle) as Replicad.Sketch).extrude(top - middle) as Shape]
    : [];
  return [quarter as Shape, ...upright, ...shinOf(modeller, { recess, foam, over, top })];
}

/** The shin's hollow aft of K, in one stretch to its ankle and one beyond where the block reaches so far. */
function shinOf(
  { draw }: SolidModeller,
  { recess, foam, over, top }: BlockHollow & { top: number },
): Shape[] {
  const aft = recess.aftEnd - PAST_MM;
  const ends = aft < -recess.shankRun ? [0, -recess.shankRun, aft] : [0, aft];
  const section = (x: number) => {
    const { across, down, middle } = legAt(recess, x);
    const [half, level] = [across + foam, over + middle];
    const pen = draw([-half, top])
      .lineTo([-half, level])
      .halfEllipseTo([half, level], down + foam, true)
      .lineTo([half, top])
      .close();
    return pen.sketchOnPlane('YZ', x) as Replicad.Sketch;
  };
  return ends.slice(1).map((x, k) => section(ends[k]!).loftWith([section(x)], { ruled: true }) as Shape);
}

/** What lies under the hull's inner face, ruled between sections of it. */
function hullOf({ draw }: SolidModeller, rows: NonNullable<BlockForm['skin']>): Shape {
  const some = <T>(list: readonly T[], count: number) =>
    Array.from({ length: count }, (_, k) => list[Math.round((k * (list.length - 1)) / (count - 1))]!);
  const sections = some(rows, SECTIONS).map((row) => {
    const points = some(row, POINTS);
    const [first, last] = [points[0]!, points.at(-1)!];
    const low = -4 * PAST_MM;
    const pen = points.reduce((path, [, y, z]) => path.lineTo([y, z]), draw([first[1], low]));
    return pen.lineTo([last[1], low]).close().sketchOnPlane('YZ', first[0]) as Replicad.Sketch;
  });
  return sections[0]!.loftWith(sections.slice(1), { ruled: true }) as Shape;
}

/** A solid as the text of a STEP file (ISO 10303-21), millimetres. `name` and `when` stand in it instead of a running number and the clock's time. */
export async function stepFile(shape: SolidShape, name: string, when: Date): Promise<string> {
  const text = await shape.blobSTEP().text();
  const day = when.toISOString().slice(0, 19);
  return text
    .replace(/FILE_NAME\('[^']*','[^']*'/, () => `FILE_NAME('${part21(name)}','${day}'`)
    .replaceAll(/'Open CASCADE STEP translator[^']*'/g, () => `'${part21(name)}'`);
}

/** A text as ISO 10303-21 writes it: quotes doubled, letters beyond ASCII by their code. */
function part21(text: string): string {
  return [...text.replaceAll('\\', '\\\\').replaceAll("'", "''")]
    .map((letter) => {
      const code = letter.codePointAt(0)!;
      if (code >= 32 && code < 127) return letter;
      return code > 0xffff
        ? `\\X4\\${code.toString(16).toUpperCase().padStart(8, '0')}\\X0\\`
        : `\\X2\\${code.toString(16).toUpperCase().padStart(4, '0')}\\X0\\`;
    })
    .join('');
}
