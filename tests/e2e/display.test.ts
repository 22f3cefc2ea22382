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

/** What the page writes besides letters and figures. */
const SYMBOLS = '→ ← ↑ ↓ ± ° ′ ″ × − ≤ ≥ ≈ · … – ‘’“” „ ✓ ½ ² ³ ⁷ ₁ ₂ ₃ μ ω ρ π θ τ Δ Σ √ ∫ ∂';

/** Families of the fonts that the browser really draws a text with. */
async function fontsOf(page: Page, text: string, weight: number): Promise<string[]> {
  await page.evaluate(
    async ([words, heavy]) => {
      document.querySelector('#symbols')?.remove();
      const line = document.createElement('p');
      line.id = 'symbols';
      line.textContent = String(words);
      line.style.fontWeight = String(heavy);
      document.body.append(line);
      await document.fonts.load(`${heavy} 16px "Ysabeau Office"`, String(words));
      await document.fonts.ready;
    },
    [text, weight] as const,
  );
  const session = await page.context().newCDPSession(page);
  await session.send('DOM.enable');
  await session.send('CSS.enable');
  const { root } = await session.send('DOM.getDocument');
  const { nodeId } = await session.send('DOM.querySelector', { nodeId: root.nodeId, selector: '#symbols' });
  const { fonts } = await session.send('CSS.getPlatformFontsForNode', { nodeId });
  await session.detach();
  return [...new Set(fonts.map(({ familyName }) => familyName))].sort();
}

/** Symbols come from the program's own font in every weight, whatever fonts the system has. */
async function expectOwnSymbols(page: Page): Promise<void> {
  for (const weight of [400, 600, 700]) {
    const families = await fontsOf(page, SYMBOLS, weight);
    expect(families.length, `weight ${weight}`).toBeGreaterThan(0);
    for (const family of families) expect(family, `weight ${weight}`).toMatch(/^Ysabeau Office/);
  }
}

const theme = (page: Page) => page.evaluate(() => document.documentElement.dataset.theme);

describe('paper and units', () => {
  it('symbols are in the program’s own font; choices stand when it starts again, on whatever port', async () => {
    const first = await startProgram({ dataDir });
    const page = await first.openBrowser({ colorScheme: 'light' });
    await expectOwnSymbols(page);
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
