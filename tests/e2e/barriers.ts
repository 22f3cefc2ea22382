import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { LONG } from '../cases.ts';

/** The one rule whose answer depends on the theme. */
const CONTRAST = 'color-contrast';

/** Where axe looks, and what for; everywhere and for every rule if nothing is said. */
interface Look {
  readonly rule?: string | undefined;
  /** A part of the page, by its selector. */
  readonly within?: string | undefined;
}

/** Serious and critical findings of axe on a page as it stands, one line each. */
export async function barriersOn(page: Page, { rule, within }: Look = {}): Promise<string[]> {
  // The pages have no frames in them. Without legacy mode axe opens a second page each time, to join what frames say.
  const axe = new AxeBuilder({ page }).options({ resultTypes: ['violations'] }).setLegacyMode();
  if (within) axe.include(within);
  const { violations } = await (rule ? axe.withRules(rule) : axe).analyze();
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, nodes }) =>
      nodes.map((node) => `${id}: ${node.target.join(' ')} ${node.failureSummary}`),
    );
}

/**
 * The same in both themes, the light one last. Only contrast differs between themes, so the quick run asks the dark one for
 * that alone, and looks at `within` where only that part of a page has not been looked at yet; the long run asks for every rule,
 * everywhere.
 */
export async function barriersInBothThemes(page: Page, within?: string): Promise<string[]> {
  const found: string[] = [];
  for (const colorScheme of ['dark', 'light'] as const) {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    await page.waitForFunction((theme) => document.documentElement.dataset.theme === theme, colorScheme);
    const look = LONG ? {} : { within, rule: colorScheme === 'dark' ? CONTRAST : undefined };
    found.push(...(await barriersOn(page, look)).map((line) => `${colorScheme}: ${line}`));
  }
  return found;
}
