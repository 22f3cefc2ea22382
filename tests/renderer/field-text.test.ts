import { beforeAll, describe, expect, it } from 'vitest';
import type { z } from 'zod';
import { RECORD_SHAPES, type RecordKind } from '../../app/changes/record-shapes.ts';
import { RECORD_SCHEMAS } from '../../app/store/record-rows.ts';
import { LIMITED_JOINTS, TAPE_MEASURES } from '../../core/document/athlete-schema.ts';
import { speak } from '../../renderer/language/messages.ts';
import { fieldName } from '../../renderer/pages/archive/field-text.ts';

beforeAll(() => speak('en'));

/** Marks a name that stands for code: two words run together, or a unit at its end. */
const CODE_NAME = /[a-z][A-Z]/;

/** The object behind optional, default and list. */
function objectOf(schema: z.ZodType): Record<string, z.ZodType> | null {
  const def = schema.def as { type: string; innerType?: z.ZodType; element?: z.ZodType; in?: z.ZodType };
  if (def.type === 'object') return (schema as z.ZodObject).shape as Record<string, z.ZodType>;
  const inner = def.innerType ?? def.element ?? def.in;
  return inner ? objectOf(inner) : null;
}

/** Every field of a kind that may differ on two computers. */
function paths(kind: RecordKind): string[] {
  const walk = (schema: z.ZodType, path: string, shape: string): string[] =>
    Object.entries(objectOf(schema) ?? {}).flatMap(([name, field]) => {
      const [at, pattern] = [path + name, shape + name];
      const own = RECORD_SHAPES[kind].within?.includes(pattern) ? walk(field, `${at}/`, `${pattern}/`) : [];
      const seats = name === 'seats' && kind === 'fit' ? walk(field, `${at}/0/`, `${pattern}/*/`) : [];
      return [at, ...own, ...seats];
    });
  return walk(RECORD_SCHEMAS[kind], '', '');
}

describe('the name of a field in the list of what is to be decided', () => {
  it.each(Object.keys(RECORD_SHAPES) as RecordKind[])('is in words, for every field of a %s', (kind) => {
    const all = paths(kind);
    expect(all.length).toBeGreaterThan(0);
    for (const path of all) {
      // The page drops the list of seats itself: a seat is named by its number.
      if (path === 'seats') continue;
      const name = fieldName(path);
      expect(name, path).not.toMatch(CODE_NAME);
      const last = path.split('/').at(-1)!;
      if (/(M|Kg|Deg|C|N)$/.test(last)) expect(name, path).not.toContain(last);
    }
  });

  it('is in words for tape measures and limits of joints', () => {
    for (const measure of TAPE_MEASURES) expect(fieldName(`tape/${measure}`)).not.toMatch(CODE_NAME);
    for (const joint of LIMITED_JOINTS) expect(fieldName(`limits/${joint}`)).not.toMatch(CODE_NAME);
  });

  it('names seat, part and place, and leaves what a person named as it stands', () => {
    expect(fieldName('seats/0/kneePad/aftM')).toBe('Seat 1 › Knee pad › Aft of the mark');
    expect(fieldName('stock/pads/MyOwnPad')).toBe('This boat’s pads, rests › Knee pads › MyOwnPad');
  });
});
