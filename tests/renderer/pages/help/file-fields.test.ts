import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import messages from '../../../../assets/messages/en/archive.json' with { type: 'json' };
import { fitSchema } from '../../../../core/document/fit-schema.ts';

/** Every name of a property anywhere in a JSON schema. */
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

const TOLD = Object.entries(messages).filter(([key]) => key.startsWith('help.files.fields.'));

describe('the fields that Help lists', () => {
  const known = propertyNames(z.toJSONSchema(fitSchema, { io: 'input' }));

  it.each(TOLD)('%s are fields of a fit’s schema', (_, text) => {
    const fields = text.match(/\b[a-z]+[A-Z]\w*/g) ?? [];
    for (const field of fields) expect([...known], field).toContain(field);
  });

  it('have all that a pad, a rest, a foot and a paddle hold', () => {
    const all = TOLD.map(([, text]) => text).join(' ');
    for (const part of ['kneePad', 'rearRest', 'frontFoot', 'paddle'] as const) {
      const { shape } = fitSchema.shape.seats.element;
      for (const name of propertyNames(z.toJSONSchema(shape[part], { io: 'input' }))) {
        expect(all, `${part}.${name}`).toContain(name);
      }
    }
  });
});
