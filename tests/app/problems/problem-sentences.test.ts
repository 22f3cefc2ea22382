import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { problemLine, problemsOf } from '../../../app/problems/problem-sentences.ts';
import { fitSchema } from '../../../core/document/fit-schema.ts';
import { inventedFit } from '../invented.ts';

/** The lines said about one input under one schema. */
function lines(schema: z.ZodType, input: unknown): string[] {
  const read = schema.safeParse(input);
  if (read.success) throw new Error('the input was accepted');
  return problemsOf(read.error, schema, input).map(problemLine);
}

const length = z.number().min(0.5).max(2).meta({ unit: 'm' });

describe('a problem in an input', () => {
  it.each([
    ['a number too large', length, 3, '3 is too large; at most 2 m'],
    ['a number too small', length, -1, '-1 is too small; at least 0.5 m'],
    ['a number open above', z.number().min(1), 0, '0 is too small; at least 1'],
    ['a text for a number', length, '1,5', '“1,5” is not a number from 0.5 to 2 m'],
    ['nothing for a number', length, undefined, 'missing; needed: a number from 0.5 to 2 m'],
    ['an infinity', length, Number.POSITIVE_INFINITY, '“Infinity” is not a number from 0.5 to 2 m'],
    ['an angle', z.number().max(90).meta({ unit: 'deg' }), 91, '91 is too large; at most 90°'],
    ['a part of a whole', z.int(), 1.5, '“1.5” is not a whole number'],
    [
      'a word that is not on the list',
      z.enum(['left', 'right']),
      'up',
      '"up" is not known here; allowed: left, right',
    ],
    ['a missing word', z.enum(['left', 'right']), undefined, 'missing; needed: one of left, right'],
    ['a wrong heading', z.literal('fit/1'), 'fit/9', '"fit/9" is not known here; allowed: fit/1'],
    ['an empty text', z.string().min(1), '', 'empty'],
    ['a short text', z.string().min(3), 'ab', '2 characters; at least 3'],
    ['a long text', z.string().max(3), 'abcd', '4 characters; at most 3'],
    ['too many entries', z.array(z.number()).max(1), [1, 2], '2 entries; at most 1'],
    ['too few entries', z.array(z.number()).min(2), [1], '1 entry; at least 2'],
    ['a text for a list', z.array(z.number()), 'x', '“x” is not a list'],
    ['a list for an object', z.strictObject({}), [1], '“[…]” is not an object with named values'],
    ['an object for a text', z.string(), { a: 1 }, '“{…}” is not text'],
    ['a number for yes or no', z.boolean(), 1, '“1” is not true or false'],
    ['a wrong date', z.iso.date(), '2026-02-30', '“2026-02-30” is not a date (YYYY-MM-DD)'],
    ['a wrong identifier', z.uuid(), 'me', '“me” is not an identifier (UUID)'],
    ['a missing date', z.iso.date(), undefined, 'missing; needed: a date (YYYY-MM-DD)'],
  ])('of %s', (_what, schema, input, sentence) => {
    expect(lines(schema, input)).toEqual([sentence]);
  });

  it('names the place, in lists by number, through unions and defaults', () => {
    const fit = JSON.parse(JSON.stringify(inventedFit()));
    fit.seats[0].kneePad.aftM = 99;
    fit.boat.hull.stations[2].beams[0].beamM = -1;
    expect(lines(fitSchema, fit)).toEqual([
      'boat.hull.stations[2].beams[0].beamM: -1 is too small; at least 0 m',
      'seats[0].kneePad.aftM: 99 is too large; at most 3 m',
    ]);
  });

  it('lists the names that are allowed, where one is not known', () => {
    expect(
      lines(z.strictObject({ a: z.number().optional(), b: z.number().optional() }), { c: 1, d: 2 }),
    ).toEqual(['"c", "d" are not known here; allowed: a, b']);
    const tape = z.partialRecord(z.enum(['knee', 'foot']), z.number());
    expect(lines(z.strictObject({ tape }), { tape: { nose: 1 } })).toEqual([
      'tape: "nose" is not known here; allowed: knee, foot',
    ]);
  });

  it('quotes nothing that could hide or break a line, and nothing long', () => {
    const [line] = lines(z.enum(['a']), `\u001b[2J\u202E\n${'x'.repeat(500)}`);
    expect(line!.length).toBeLessThan(120);
    expect(line).not.toMatch(/\p{C}/u);
    const [name] = lines(z.strictObject({}), { ['n'.repeat(500)]: 1 });
    expect(name!.length).toBeLessThan(120);
  });

  it('is told at most fifty times over, and then counted', () => {
    const said = lines(z.array(z.number()), Array(80).fill('x'));
    expect(said).toHaveLength(51);
    expect(said.at(-1)).toBe('and 30 more of the same kinds');
  });
});
