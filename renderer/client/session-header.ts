import { SESSION_HEADER, SESSION_KEY } from '../../app/contract/session.ts';

/** The header with this tab's secret for the loopback server; empty in a tab that was opened without a token. */
export function sessionHeader(): Record<string, string> {
  const secret = sessionStorage.getItem(SESSION_KEY);
  return secret === null ? {} : { [SESSION_HEADER]: secret };
}
