import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { LONG } from '../cases.ts';

/** The one rule whose answer depends on the theme. */
const CONTRAST = 'color-contrast';

/** Serious and critical findings of axe on a page as it stands, one line each; of every rule, or of one alone. */
export async function barriersOn(page: Page, rule?: string): Promise<string[]> {
  // The pages have no frames in them. Without legacy mode axe opens a second page each time, to join what frames say.
  const axe = new AxeBuilder({ page }).options({ resultTypes: ['violations'] }).setLegacyMode();
  const { violations } = await (rule ? axe.withRules(rule) : axe).analyze();
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, nodes }) =>
      nodes.map((node) => `${id}: ${node.target.join(' ')} ${node.failureSummary}`),
    );
}

/**
 * The same in both themes, the light one last. Only contrast differs between themes, so the quick run asks the dark one for
 * that alone; the long run asks for every rule.
 */
export async function barriersInBothThemes(page: Page): Promise<string[]> {
  const found: string[] = [];
  for (const colorScheme of ['dark', 'light'] as const) {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    await page.waitForFunction((theme) => document.documentElement.dataset.theme === theme, colorScheme);
    const one = colorScheme === 'dark' && !LONG ? CONTRAST : undefined;
    found.push(...(await barriersOn(page, one)).map((line) => `${colorScheme}: ${line}`));
  }
  return found;
}
