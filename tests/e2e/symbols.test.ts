import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type RunningProgram, startProgram } from './harness.ts';

/** What the page writes besides letters and figures. */
const SYMBOLS = '→ ← ↑ ↓ ± ° ′ ″ × − ≤ ≥ ≈ · … – ‘’“” „ ✓ ½ ² ³ μ ω';

let program: RunningProgram;
let page: Page;

beforeAll(async () => {
  program = await startProgram();
  page = await program.openBrowser();
});
afterAll(() => program?.dispose());

/** Families of the fonts that the browser really draws a text with. */
async function fontsOf(text: string, weight: number): Promise<string[]> {
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

describe('symbols on screen', () => {
  it.each([400, 600, 700])(
    'come from the program’s own font in weight %i, whatever the system has',
    async (weight) => {
      const families = await fontsOf(SYMBOLS, weight);
      expect(families.length).toBeGreaterThan(0);
      for (const family of families) expect(family).toMatch(/^Ysabeau Office/);
    },
  );
});
