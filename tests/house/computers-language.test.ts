import { execFileSync } from 'node:child_process';
import { expect, it } from 'vitest';

const LOCALE = 'Intl.DateTimeFormat().resolvedOptions().locale';

it('tests, and programs that they start, speak English whatever the computer’s language', () => {
  const started = execFileSync(process.execPath, ['-p', LOCALE], { encoding: 'utf8' }).trim();
  expect([Intl.DateTimeFormat().resolvedOptions().locale, started]).toEqual(['en-US', 'en-US']);
});
