import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { notEmpty } from '../not-empty.ts';

const ROOT = join(import.meta.dirname, '../..');

/** A cast through unknown says that no type is known; only where a library's own types are wrong may one stand. */
it('one cast through unknown: a library whose types are those of a script', () => {
  const sources = globSync('{core,app,renderer}/**/*.{ts,tsx}', {
    cwd: ROOT,
    exclude: (path) => path.endsWith('dist'),
  });
  const casts = notEmpty(sources).filter((file) =>
    /\bas unknown as\b/.test(readFileSync(join(ROOT, file), 'utf8')),
  );
  expect(casts).toEqual([join('renderer', 'jobs', 'load-highs.ts')]);
});
