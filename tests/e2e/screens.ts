import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import type { CallInput, CallName, CallOutput } from '../../app/contract/contract.ts';
import type { CallResult } from '../../app/contract/result.ts';
import { SESSION_HEADER, SESSION_KEY } from '../../app/contract/session.ts';

/** Calls the program from the open page, as the page itself does. */
export async function callFromPage<N extends CallName>(
  page: Page,
  name: N,
  input: CallInput<N>,
): Promise<CallOutput<N>> {
  const result = (await page.evaluate(
    async ([called, given, header, key]) => {
      const response = await fetch('/call', {
        method: 'POST',
        headers: { 'content-type': 'application/json', [header]: sessionStorage.getItem(key) ?? '' },
        body: JSON.stringify({ name: called, input: given }),
      });
      return response.json();
    },
    [name, input, SESSION_HEADER, SESSION_KEY] as const,
  )) as CallResult<CallOutput<N>>;
  if (!result.ok)
    throw new Error(`${name}: ${result.error.message} ${JSON.stringify(result.error.problems)}`);
  return result.value;
}

/** Chooses the option of a list in which some words stand. */
export async function chooseByWords(list: Locator, words: string): Promise<void> {
  const value = await list.locator('option', { hasText: words }).first().getAttribute('value');
  await list.selectOption({ value: value! });
}

/** Goes to a page of the program by its route, without loading it anew. */
export async function goTo(page: Page, route: string): Promise<void> {
  await page.evaluate((hash) => {
    window.location.hash = hash;
  }, route);
}

/** Waits until a page shows all that it fetches: it reads the same five times in a row. */
export async function settled(page: Page): Promise<void> {
  for (let before = '', same = 0; same < 4; ) {
    const now = await textOf(page.locator('body'));
    same = now === before ? same + 1 : 0;
    before = now;
    await page.waitForTimeout(25);
  }
}

/** The entry of a measure by its name. */
export function measure(page: Page, name: string) {
  return page.getByRole('spinbutton', { name, exact: true });
}

/** Types a measure and leaves the entry. */
export async function enter(page: Page, name: string, text: string): Promise<void> {
  await measure(page, name).fill(text);
  await measure(page, name).press('Tab');
}

/** The number shown in a measure, in its shown unit. */
export async function shown(page: Page, name: string): Promise<number> {
  return numberIn(await measure(page, name).inputValue());
}

/** The text of an element, narrow spaces written plain. */
export async function textOf(element: Locator): Promise<string> {
  return ((await element.textContent()) ?? '').replaceAll(/[\u{a0}\u{202f}]/gu, ' ');
}

/** The first number in a text as the page writes numbers: true minus, point or comma. */
export function numberIn(text: string): number {
  const found = /[−-]?\d+(?:[.,]\d+)?/.exec(text);
  if (!found) throw new Error(`no number in "${text}"`);
  return Number(found[0].replace('−', '-').replace(',', '.'));
}

/** An expectation that the page meets soon, asked again until it does. */
export function soon<T>(read: () => T | Promise<T>) {
  return expect.poll(read);
}
