import type { Page } from 'playwright-core';
import type { Fit } from '../../core/document/fit-schema.ts';
import { callFromPage, goTo, measure } from './screens.ts';

export const PAD_AFT = 'Knee pad: Aft of the mark';

let opened = 0;

/** Puts a new fit on the bench, in the first tab, under a name of its own; its identifier. */
export async function openOnBench(page: Page, fit: Fit): Promise<string> {
  opened += 1;
  const name = `On the bench ${opened}`;
  const { id } = await callFromPage(page, 'fits.create', { fit: { ...fit, name } });
  await goTo(page, `#/fits/${id}`);
  await page.getByRole('heading', { level: 1, name, exact: true }).waitFor();
  await measure(page, PAD_AFT).waitFor();
  return id;
}

/** What stands in the field of the pad's place, narrow spaces written plain. */
export async function padAft(page: Page): Promise<string> {
  return (await measure(page, PAD_AFT).inputValue()).replace('\u{202f}', ' ');
}
