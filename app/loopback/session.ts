import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';

/** Who may speak to the loopback server: holders of the cookie that a one-time token was exchanged for. */
export interface Session {
  /** A fresh token, good for one exchange. Tokens given out before stay good until they are used. */
  newToken(): string;
  /** The `Set-Cookie` value for a good token; null for any other. The token is used up. */
  exchange(token: string): string | null;
  /** Whether a request's `Cookie` header holds a cookie of this session. */
  admits(cookieHeader: string | undefined): boolean;
}

/** Tokens waiting to be used; more are not kept, the oldest goes. */
const MOST_TOKENS = 16;

/** Makes a session. `cookieName` carries the port, since browsers share cookies between the ports of a host. */
export function createSession(cookieName: string): Session {
  const tokens: Buffer[] = [];
  const secret = newSecret();
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
      return `${cookieName}=${secret}; Path=/; HttpOnly; SameSite=Strict`;
    },
    admits(cookieHeader) {
      const prefix = `${cookieName}=`;
      const sent = (cookieHeader ?? '').split(/; */).filter((pair) => pair.startsWith(prefix));
      return sent.some((pair) => timingSafeEqual(digest(pair.slice(prefix.length)), digest(secret)));
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
