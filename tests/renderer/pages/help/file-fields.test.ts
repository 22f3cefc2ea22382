import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { fitSchema } from '../../../../core/document/fit-schema.ts';
import { schemaParts } from '../../../../core/document/schema-parts.ts';
import { notEmpty } from '../../../not-empty.ts';

/** Every name of a property anywhere in a JSON schema, as zod itself writes it. */
function propertyNames(schema: unknown): Set<string> {
  const names = new Set<string>();
  const visit = (part: unknown): void => {
    if (part === null || typeof part !== 'object') return;
    const { properties } = part as { properties?: object };
    for (const name of Object.keys(properties ?? {})) names.add(name);
    for (const value of Object.values(part)) visit(value);
  };
  visit(schema);
  return names;
}

describe('the fields that Help lists', () => {
  const parts = schemaParts(fitSchema);
  const told = new Set(parts.flatMap(({ fields }) => fields.map((field) => field.split(/[: ]/)[0]!)));

  it('are those of the schema, by its JSON schema', () => {
    const known = propertyNames(z.toJSONSchema(fitSchema, { io: 'input' }));
    for (const name of notEmpty([...told])) expect([...known], name).toContain(name);
  });

  it('have all that a pad, a rest, a foot and a paddle hold', () => {
    for (const part of ['kneePad', 'rearRest', 'frontFoot', 'paddle'] as const) {
      const { shape } = fitSchema.shape.seats.element;
      const fields = parts
        .find(({ path }) => path === `seats[].${part}`)!
        .fields.map((f) => f.split(/[: ]/)[0]);
      expect(fields.sort()).toEqual([...propertyNames(z.toJSONSchema(shape[part], { io: 'input' }))].sort());
    }
  });

  it('tell fixed values and choices', () => {
    expect(parts[0]!.fields[0]).toBe('format: "kneelwright-fit/1"');
    expect(parts.find(({ path }) => path === 'boat')!.fields).toContain('boatClass (C1 | C2 | C4 | none)');
  });
});
