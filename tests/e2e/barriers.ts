import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';

/** Serious and critical findings of axe on a page as it stands, one line each. */
export async function barriersOn(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, nodes }) =>
      nodes.map((node) => `${id}: ${node.target.join(' ')} ${node.failureSummary}`),
    );
}

/** The same in both themes, the light one last. */
export async function barriersInBothThemes(page: Page): Promise<string[]> {
  const found: string[] = [];
  for (const colorScheme of ['dark', 'light'] as const) {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    await page.waitForFunction((theme) => document.documentElement.dataset.theme === theme, colorScheme);
    found.push(...(await barriersOn(page)));
  }
  return found;
}
