import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startProgram } from './harness.ts';
import { callFromPage, soon } from './screens.ts';

let dataDir: string;
beforeAll(() => {
  dataDir = mkdtempSync(join(tmpdir(), 'kneelwright-display-'));
});
afterAll(() => rmSync(dataDir, { recursive: true, force: true }));

const theme = (page: Page) => page.evaluate(() => document.documentElement.dataset.theme);

describe('paper and units', () => {
  it('are as they were chosen when the program starts again, on whatever port', async () => {
    const first = await startProgram({ dataDir });
    const page = await first.openBrowser({ colorScheme: 'light' });
    await page.getByRole('button', { name: 'Settings' }).click();
    await page.getByText('Dark', { exact: true }).click();
    await page.getByText('in', { exact: true }).click();
    await soon(() => theme(page)).toBe('dark');
    await soon(async () => (await callFromPage(page, 'display.read', {})).length).toBe('in');
    await page.context().close();
    await first.kill();

    const again = await startProgram({ dataDir });
    try {
      expect(again.origin).not.toBe(first.origin);
      const later = await again.openBrowser({ colorScheme: 'light' });
      await later.getByRole('button', { name: 'Settings' }).click();
      expect(await later.getByRole('radio', { name: 'in', exact: true }).isChecked()).toBe(true);
      expect(await theme(later)).toBe('dark');
    } finally {
      await again.dispose();
    }
  });
});
