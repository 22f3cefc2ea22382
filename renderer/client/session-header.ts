import { SESSION_HEADER, SESSION_KEY } from '../../app/contract/session.ts';

/** This tab's secret, as the loopback server wants to see it; empty in a tab that did not enter with a token. */
export function sessionHeader(): Record<string, string> {
  const secret = sessionStorage.getItem(SESSION_KEY);
  return secret === null ? {} : { [SESSION_HEADER]: secret };
}
