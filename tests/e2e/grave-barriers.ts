import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';

/** Serious and critical findings of axe on the page as it stands, in the light theme and in the dark, one line each. */
export async function graveBarriers(page: Page): Promise<string[]> {
  const found: string[] = [];
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    await page.waitForFunction((theme) => document.documentElement.dataset.theme === theme, colorScheme);
    const { violations } = await new AxeBuilder({ page }).analyze();
    const grave = violations.filter(({ impact }) => impact === 'serious' || impact === 'critical');
    found.push(...grave.map(({ id, nodes }) => `${colorScheme}: ${id} ${nodes[0]?.target}`));
  }
  return found;
}
