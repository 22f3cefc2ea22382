import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { notEmpty } from '../not-empty.ts';

const ROOT = join(import.meta.dirname, '../..');

const SOURCES = globSync('{core,app,renderer}/**/*.{ts,tsx}', {
  cwd: ROOT,
  exclude: (path) => path.endsWith('dist'),
});
const holding = (pattern: RegExp) =>
  notEmpty(SOURCES).filter((file) => pattern.test(readFileSync(join(ROOT, file), 'utf8')));

describe('casts', () => {
  // A cast through unknown says that no type is known; only where a library's own types are wrong may one stand.
  it('through unknown: one library whose types are those of a script', () => {
    expect(holding(/\bas unknown as\b/)).toEqual([join('renderer', 'jobs', 'load-highs.ts')]);
  });

  it('to a key of a message: where the core’s messages are said', () => {
    expect(holding(/\bas (?:readonly )?MessageKey\b/)).toEqual([join('app', 'language', 'spoken.ts')]);
  });

  it('to a quantity, or of a column that was plucked: none, their types are known', () => {
    expect(holding(/\bas (?:readonly )?QuantityId\b/)).toEqual([]);
    expect(holding(/\.(?:pluck|raw)\(\)\s*\.(?:get|all|iterate)\([^;=]*?\)\)? as /)).toEqual([]);
  });
});
