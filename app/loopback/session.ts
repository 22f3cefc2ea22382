import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';

/** Who may speak to the loopback server: tabs that hold a secret which a one-time token was exchanged for. */
export interface Session {
  /** A fresh token, good for one exchange. Tokens given out before stay good until they are used. */
  newToken(): string;
  /** A new tab's secret for a good token; null for any other. The token is used up. */
  exchange(token: string): string | null;
  /** Whether a request's session header holds a secret that was given to a tab. */
  admits(header: string | string[] | undefined): boolean;
}

/** Tokens waiting to be used; more are not kept, the oldest goes. */
const MOST_TOKENS = 16;

/** Tabs that are let in at a time; the one that entered first goes. */
const MOST_TABS = 64;

/**
 * Makes a session. No cookie takes part: browsers share cookies between the ports of a host, so that another program's
 * server on this computer would be sent it.
 */
export function createSession(): Session {
  const tokens: Buffer[] = [];
  const tabs: Buffer[] = [];
  return {
    newToken() {
      const token = newSecret();
      tokens.push(digest(token));
      if (tokens.length > MOST_TOKENS) tokens.shift();
      return token;
    },
    exchange(token) {
      const wanted = digest(token);
      const at = tokens.findIndex((known) => timingSafeEqual(known, wanted));
      if (at < 0) return null;
      tokens.splice(at, 1);
      const secret = newSecret();
      tabs.push(digest(secret));
      if (tabs.length > MOST_TABS) tabs.shift();
      return secret;
    },
    admits(header) {
      if (typeof header !== 'string') return false;
      const sent = digest(header);
      return tabs.some((known) => timingSafeEqual(known, sent));
    },
  };
}

function newSecret(): string {
  return randomBytes(32).toString('base64url');
}

/** Compared by digest, so that neither length nor timing tells anything of the secret. */
function digest(text: string): Buffer {
  return createHash('sha256').update(text).digest();
}
