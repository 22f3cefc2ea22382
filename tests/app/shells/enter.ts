import { SESSION_HEADER } from '../../../app/contract/session.ts';

/** Enters with a printed address, as a browser's tab does; gives the headers that the tab then sends. */
export async function enter(address: string): Promise<Record<string, string>> {
  return tabOf(await (await fetch(address)).text());
}

/** The headers of a tab that was answered with this entry page. */
export function tabOf(page: string): Record<string, string> {
  const [, secret] = /setItem\("[\w.]+", "([\w-]{43})"\)/.exec(page) ?? [];
  if (!secret) throw new Error(`not let in: ${page}`);
  return { [SESSION_HEADER]: secret };
}
