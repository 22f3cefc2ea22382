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

  it('says millimetres', () => {
    expect(read.units).toBe('4');
    expect(read.metric).toBe('1');
  });

  it('has every line where the drawing has it', () => {
    const lines = read.entities.filter(({ type }) => type === 'LWPOLYLINE');
    for (const shape of notEmpty(allLines(drawing.shapes))) {
      const found = lines.find((entity) => {
        const points = pointsOf(entity);
        return (
          points.length === shape.points.length &&
          points.every((point, k) => distance(point, shape.points[k]!) < SCALE_TOLERANCE_MM)
        );
      });
      expect(found, `${shape.layer} from ${shape.points[0]}`).toBeDefined();
      expect(value(found!, 70) & 1).toBe(shape.closed ? 1 : 0);
    }
  });

  it('has every hole as a circle of its size', () => {
    const circles = read.entities.filter(({ type }) => type === 'CIRCLE');
    for (const shape of notEmpty(allCircles(drawing.shapes))) {
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

describe('saw and drill', () => {
  it('keep their lines on layers of their own, so that a machine can be told which to cut', () => {
    const board = templates.find(({ id }) => id === 'floorboard')!;
    const read = readDxf(templateDxf(board, inventedStamp(), english));
    const circles = read.entities.filter(({ type }) => type === 'CIRCLE');
    expect(new Set(circles.map(({ layer }) => layer))).toEqual(new Set(['DRILL', 'DRILL-NOW']));
    expect(circles.filter(({ layer }) => layer === 'DRILL-NOW').length).toBeGreaterThanOrEqual(2);
  });
});
