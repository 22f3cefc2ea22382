import { z } from 'zod';

/** Why a call was refused. The sentences are in plain words: what happened, what was kept, what to do. */
const CALL_ERRORS = [
  'unknown-call',
  'bad-input',
  'not-found',
  'conflict',
  'read-only',
  'disk-full',
  'damaged',
  'newer-database',
  'too-large',
  'not-allowed',
  'cancelled',
  'internal',
] as const;

/** One problem in an input: where it is, what is wrong, what is allowed. */
const problemSchema = z.strictObject({ path: z.string(), message: z.string() });

export const callErrorSchema = z.strictObject({
  code: z.enum(CALL_ERRORS),
  message: z.string(),
  problems: z.array(problemSchema).default([]),
});

export type Problem = z.infer<typeof problemSchema>;
export type CallError = z.infer<typeof callErrorSchema>;
export type CallResult<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly error: CallError };
