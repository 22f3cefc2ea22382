import { describe, expect, it } from 'vitest';
import { templateDxf } from '../../../app/export/template-dxf.ts';
import type { MillimetrePoint } from '../../../core/setout/template-drawing.ts';
import { templatesOf } from '../../../core/setout/templates.ts';
import { inventedSetOut, ON_A_WEDGE, ROWS_OF_HOLES } from '../../core/setout/invented-set-out.ts';
import { allCircles, allLines } from '../../core/setout/read-shapes.ts';
import { english } from '../../english.ts';
import { notEmpty } from '../../not-empty.ts';
import { inventedStamp } from './invented-stamp.ts';

const SCALE_TOLERANCE_MM = 0.05;
const templates = templatesOf(inventedSetOut({ hardware: ROWS_OF_HOLES, seat: { frontFoot: ON_A_WEDGE } }));

interface Entity {
  readonly type: string;
  readonly layer: string;
  readonly codes: readonly (readonly [number, string])[];
}

/** A DXF read back by its pairs of group code and value (DXF reference, "Group codes in numerical order"). */
function readDxf(text: string) {
  const lines = text.split(/\r?\n/);
  const pairs: [number, string][] = [];
  for (let k = 0; k + 1 < lines.length; k += 2) pairs.push([Number(lines[k]), lines[k + 1]!]);
  const header = (name: string) => {
    const at = pairs.findIndex(([code, value]) => code === 9 && value === name);
    return pairs[at + 1]?.[1];
  };
  const from = pairs.findIndex(([code, value]) => code === 2 && value === 'ENTITIES');
  const entities: Entity[] = [];
  for (let k = from + 1; k < pairs.length && pairs[k]![1] !== 'ENDSEC'; ) {
    const type = pairs[k]![1];
    const codes: [number, string][] = [];
    for (k++; k < pairs.length && pairs[k]![0] !== 0; k++) codes.push(pairs[k]!);
    entities.push({ type, layer: codes.find(([code]) => code === 8)![1], codes });
  }
  const tables = pairs.slice(0, from);
  const layers = tables.flatMap(([code, value], k) =>
    code === 100 && value === 'AcDbLayerTableRecord' ? [tables[k + 1]![1]] : [],
  );
  return { units: header('$INSUNITS'), metric: header('$MEASUREMENT'), entities, layers };
}

function pointsOf({ codes }: Entity): MillimetrePoint[] {
  const xs = codes.filter(([code]) => code === 10).map(([, value]) => Number(value));
  const ys = codes.filter(([code]) => code === 20).map(([, value]) => Number(value));
  return xs.map((x, k) => [x, ys[k]!]);
}

const hasArcs = ({ codes }: Entity) => codes.some(([code]) => code === 42);

/** Corners of a line with their bulges (group 42: the tangent of a quarter of the arc's angle). */
function cornersOf({ codes }: Entity): { at: MillimetrePoint; bulge: number }[] {
  const corners: { at: MillimetrePoint; bulge: number }[] = [];
  for (const [code, text] of codes) {
    if (code === 10) corners.push({ at: [Number(text), 0], bulge: 0 });
    const last = corners.at(-1);
    if (last && code === 20) corners[corners.length - 1] = { ...last, at: [last.at[0], Number(text)] };
    if (last && code === 42) corners[corners.length - 1] = { ...last, bulge: Number(text) };
  }
  return corners;
}

/** How far a point lies off a line of straights and arcs, millimetres. */
function offLine(point: readonly number[], entity: Entity): number {
  const corners = cornersOf(entity);
  const ends = value(entity, 70) & 1 ? [...corners.slice(1), corners[0]!] : corners.slice(1);
  return Math.min(...ends.map((to, k) => offStretch(point, corners[k]!, to.at)));
}

function offStretch(
  point: readonly number[],
  { at: from, bulge }: { at: MillimetrePoint; bulge: number },
  to: MillimetrePoint,
): number {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  if (bulge === 0) {
    const along = ((point[0]! - from[0]) * dx + (point[1]! - from[1]) * dy) / (dx * dx + dy * dy || 1);
    const t = Math.min(1, Math.max(0, along));
    return distance(point, [from[0] + t * dx, from[1] + t * dy]);
  }
  // The middle lies square to the chord's middle, (1 − b²) / 4b chords to its left (DXF reference, LWPOLYLINE).
  const out = (1 - bulge * bulge) / (4 * bulge);
  const middle = [(from[0] + to[0]) / 2 - out * dy, (from[1] + to[1]) / 2 + out * dx];
  const radius = distance(from, middle);
  const [start, sweep] = [Math.atan2(from[1] - middle[1]!, from[0] - middle[0]!), 4 * Math.atan(bulge)];
  const turn = Math.atan2(point[1]! - middle[1]!, point[0]! - middle[0]!) - start;
  const within = (((turn * Math.sign(sweep)) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
  const ends = Math.min(distance(point, from), distance(point, to));
  return within <= Math.abs(sweep) ? Math.min(ends, Math.abs(distance(point, middle) - radius)) : ends;
}

const value = ({ codes }: Entity, code: number) => Number(codes.find(([c]) => c === code)?.[1]);
const distance = (a: readonly number[], b: readonly number[]) => Math.hypot(a[0]! - b[0]!, a[1]! - b[1]!);

describe.each(templates)('$id as DXF', (drawing) => {
  const text = templateDxf(drawing, inventedStamp(), english);
  const read = readDxf(text);

  it('names this program, and takes no new entry from a name with line breaks', () => {
    const plain = templateDxf(drawing, inventedStamp(), english);
    expect(plain).toMatch(/\$LASTSAVEDBY\r?\n1\r?\nKneelwright\r?\n/);
    const trap = 'Anna\n0\nCIRCLE\n8\n0\n10\n0\n20\n0\n40\n9';
    const broken = readDxf(templateDxf(drawing, { ...inventedStamp(), athleteName: trap }, english));
    expect(broken.entities.map(({ type }) => type)).toEqual(readDxf(plain).entities.map(({ type }) => type));
  });

  it('has plain spaces: lettering of CAD programs may lack others', () => {
    expect(text).not.toMatch(/[\u{a0}\u{202f}]/u);
  });

  it('says millimetres', () => {
    expect(read.units).toBe('4');
    expect(read.metric).toBe('1');
  });

  it('has every line where the drawing has it', () => {
    const lines = read.entities.filter(({ type }) => type === 'LWPOLYLINE');
    for (const shape of notEmpty(allLines(drawing.shapes))) {
      const found = lines.find((entity) => {
        const points = pointsOf(entity);
        // A line with arcs has fewer points: all of the drawing's lie on it.
        return hasArcs(entity)
          ? distance(points[0]!, shape.points[0]!) < SCALE_TOLERANCE_MM &&
              shape.points.every((point) => offLine(point, entity) < SCALE_TOLERANCE_MM)
          : points.length === shape.points.length &&
              points.every((point, k) => distance(point, shape.points[k]!) < SCALE_TOLERANCE_MM);
      });
      expect(found, `${shape.layer} from ${shape.points[0]}`).toBeDefined();
      expect(value(found!, 70) & 1).toBe(shape.closed ? 1 : 0);
    }
  });

  it('has every dimension at full size: its line, its arrowheads of 2.5 mm (ISO 129-1) and its figure', () => {
    const dimensions = drawing.shapes.filter((shape) => shape.kind === 'dimension');
    const lines = read.entities.filter(({ type }) => type === 'LWPOLYLINE').map(pointsOf);
    for (const { from, to } of dimensions) {
      const long = distance(from, to);
      if (long < 10) continue;
      const ends = lines.filter(
        (points) => points.length === 2 && Math.abs(distance(points[0]!, points[1]!) - long) < 1e-3,
      );
      const arrows = ends.flatMap((line) =>
        lines.filter((points) => points.length === 3 && line.some((end) => distance(points[1]!, end) < 1e-3)),
      );
      expect(arrows.length).toBeGreaterThanOrEqual(2);
      for (const [wing, tip] of arrows) expect(distance(wing!, tip!)).toBeCloseTo(Math.hypot(2.5, 0.45), 3);
    }
  });

  it('has every hole as a circle of its size', () => {
    const circles = read.entities.filter(({ type }) => type === 'CIRCLE');
    // Some templates have none: then there is none in the file either.
    expect(circles).toHaveLength(allCircles(drawing.shapes).length);
    for (const shape of allCircles(drawing.shapes)) {
      const found = circles.some(
        (entity) =>
          distance(pointsOf(entity)[0]!, shape.centre) < SCALE_TOLERANCE_MM &&
          Math.abs(value(entity, 40) - shape.radius) < SCALE_TOLERANCE_MM,
      );
      expect(found, `a hole at ${shape.centre}`).toBe(true);
    }
  });

  it('puts every entity on a layer that exists, named in words of the trade', () => {
    const used = new Set(read.entities.map(({ layer }) => layer));
    for (const layer of used) expect(read.layers).toContain(layer);
    for (const layer of used) expect(layer).toMatch(/^[A-Z]+(-[A-Z]+)*$/);
    expect(used).toContain('CHECK-BAR');
  });

  it('has check bars of 100 mm both ways', () => {
    const bars = read.entities
      .filter(({ layer }) => layer === 'CHECK-BAR')
      .map(pointsOf)
      .filter((points) => points.length === 2 && Math.abs(distance(points[0]!, points[1]!) - 100) < 1e-6);
    expect(bars.some(([a, b]) => a![1] === b![1])).toBe(true);
    expect(bars.some(([a, b]) => a![0] === b![0])).toBe(true);
  });

  it('keeps names with their accents, and is the same for equal input', () => {
    expect(text).toContain('Žofie Łuczak');
    expect(templateDxf(drawing, inventedStamp(), english)).toBe(text);
  });
});

describe('an arc', () => {
  it('is one: the front of the knee in the profile on the axis is round with the knee’s own depth', () => {
    const { recess } = inventedSetOut({ hardware: ROWS_OF_HOLES }).fittings.pad;
    const block = templates.find(({ id }) => id === 'pad-block')!;
    const { entities } = readDxf(templateDxf(block, inventedStamp(), english));
    const radii = entities
      .filter(({ layer, type }) => layer === 'RECESS' && type === 'LWPOLYLINE')
      .flatMap((entity) => {
        const corners = cornersOf(entity);
        return corners.flatMap(({ at, bulge }, k) => {
          const chord = distance(at, corners[k + 1]?.at ?? at);
          return bulge === 0 ? [] : [(chord * (1 + bulge * bulge)) / (4 * Math.abs(bulge))];
        });
      });
    expect(radii.some((radius) => Math.abs(radius - recess.kneeDepth) < 1e-2)).toBe(true);
  });
});

describe('saw and drill', () => {
  it('keep their lines on layers of their own, so that a machine can be told which to cut', () => {
    const board = templates.find(({ id }) => id === 'floorboard')!;
    const read = readDxf(templateDxf(board, inventedStamp(), english));
    const circles = read.entities.filter(({ type }) => type === 'CIRCLE');
    expect(new Set(circles.map(({ layer }) => layer))).toEqual(new Set(['DRILL', 'DRILL-NOW']));
    expect(circles.filter(({ layer }) => layer === 'DRILL-NOW').length).toBeGreaterThanOrEqual(2);
  });
});
