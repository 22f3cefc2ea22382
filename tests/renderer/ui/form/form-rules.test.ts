import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { type FormRules, readForm, withoutPath } from '../../../../renderer/ui/form/form-rules.ts';
import { valueRule } from '../../../../renderer/ui/form/schema-at.ts';
import { valueAt, withValueAt } from '../../../../renderer/ui/form/value-at.ts';

const schema = z.object({
  name: z.string().trim().min(1),
  lengthM: z.number().min(0.8).max(2.6),
  noteM: z.number().max(3).nullable().default(null),
  count: z.int().min(0).max(9).default(1),
  pieces: z.array(z.object({ heightM: z.number().min(0.01).max(0.4) })).optional(),
  travelM: z.tuple([z.number().min(-1), z.number().max(2)]),
});

interface Values {
  readonly name: string;
  readonly lengthM: number | null;
  readonly pieces: readonly { readonly heightM: number | null }[];
  readonly travelM: readonly [number, number];
}
const values: Values = { name: ' Reed ', lengthM: 1.6, pieces: [{ heightM: 0.1 }], travelM: [0, 1] };
const rules: FormRules<Values, z.infer<typeof schema>> = { schema };

describe('readForm', () => {
  it('gives the document as the schema reads it', () => {
    expect(readForm(rules, values)).toMatchObject({ ok: true, document: { name: 'Reed', noteM: null } });
  });

  it('names everything that is wrong by its path in the form, own checks first', () => {
    const more: typeof rules = {
      ...rules,
      check: ({ name }) => ({ name: name.trim() ? null : 'whose?', all: 'no' }),
      fieldOf: (path) => path.replace('pieces', 'blocks'),
      wordsFor: (path) => (path === 'lengthM' ? 'how long?' : null),
    };
    const blank = { ...values, name: '', lengthM: null, pieces: [{ heightM: null }] };
    expect(readForm(more, blank)).toEqual({
      ok: false,
      problems: {
        name: 'whose?',
        all: 'no',
        lengthM: 'how long?',
        'blocks.0.heightM': 'This is needed.',
      },
    });
  });

  it('refuses a document that only the form’s own check finds wrong', () => {
    expect(readForm({ ...rules, check: () => ({ all: 'no' }) }, values)).toMatchObject({ ok: false });
  });
});

describe('the problems after a change', () => {
  it('lose those of the value, of its parts, and of what it is a part of', () => {
    const problems = { name: 'a', 'pieces.0': 'b', 'pieces.0.heightM': 'c', 'pieces.10': 'd' };
    expect(withoutPath(problems, 'pieces.0.heightM')).toEqual({ name: 'a', 'pieces.10': 'd' });
    expect(withoutPath(problems, 'pieces.0')).toEqual({ name: 'a', 'pieces.10': 'd' });
    expect(withoutPath(problems, 'pieces')).toEqual({ name: 'a' });
  });
});

describe('what a schema asks of a value', () => {
  it('is its bounds, whether it is needed, whole, and may be emptied', () => {
    expect(valueRule(schema, ['lengthM'])).toEqual({
      min: 0.8,
      max: 2.6,
      required: true,
      mayBeEmpty: false,
      isWhole: false,
    });
    expect(valueRule(schema, ['name'])).toMatchObject({ required: true, mayBeEmpty: false });
    expect(valueRule(schema, ['noteM'])).toMatchObject({ max: 3, required: false, mayBeEmpty: true });
    expect(valueRule(schema, ['count'])).toMatchObject({ min: 0, max: 9, required: false, isWhole: true });
  });

  it('is found in lists, pairs and behind a transform; of an unknown path nothing is asked', () => {
    expect(valueRule(schema, ['pieces', 3, 'heightM'])).toMatchObject({
      min: 0.01,
      max: 0.4,
      required: true,
    });
    expect(
      valueRule(
        schema.transform((x) => x),
        ['travelM', 1],
      ),
    ).toMatchObject({ max: 2 });
    const open = { min: Number.NEGATIVE_INFINITY, max: Number.POSITIVE_INFINITY, required: false };
    expect(valueRule(schema, ['nowhere', 'at all'])).toMatchObject(open);
  });
});

describe('a value at a path', () => {
  it('is read, and changed without changing anything beside it', () => {
    expect(valueAt(values, ['pieces', 0, 'heightM'])).toBe(0.1);
    expect(valueAt(values, ['pieces', 7, 'heightM'])).toBeUndefined();
    const next = withValueAt(values, ['pieces', 0, 'heightM'], 0.2);
    expect(next.pieces).toEqual([{ heightM: 0.2 }]);
    expect(values.pieces).toEqual([{ heightM: 0.1 }]);
    expect(next.travelM).toBe(values.travelM);
    expect(withValueAt(values, ['travelM', 1], 2).travelM).toEqual([0, 2]);
  });
});
