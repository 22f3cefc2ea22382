import type { IncomingMessage } from 'node:http';

/** A request's headers that say where it comes from. */
export type RequestOrigin = Pick<IncomingMessage, 'method' | 'headers'>;

/** Whether the Host is the very address the server was started on: a name that was made to point here carries its own. */
export function namesThisServer({ headers }: RequestOrigin, origin: string): boolean {
  return `http://${headers.host}` === origin;
}

/**
 * Whether a request comes from this computer's own page: an Origin, where sent, must be the page's. Anything that
 * changes something must carry an Origin.
 */
export function comesFromOwnPage({ method, headers }: RequestOrigin, origin: string): boolean {
  if (headers.origin !== undefined && headers.origin !== origin) return false;
  if (method === 'GET') return true;
  const site = headers['sec-fetch-site'];
  return headers.origin === origin && (site === undefined || site === 'same-origin');
}
