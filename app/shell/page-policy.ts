import { randomBytes } from 'node:crypto';

/** A page as sent: its HTML with the nonce written in, and the policy that goes with it. */
export interface GuardedPage {
  readonly html: string;
  readonly policy: string;
}

/**
 * Everything is forbidden, then what the built page needs is allowed. No inline script, no `eval`, no other origin. WebAssembly
 * is for the pose model that proposes joints in a photograph and for the planner of holes; media from `blob:` for a video that a person has chosen.
 */
const ALLOWED: readonly string[] = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "img-src 'self' data: blob:",
  'media-src blob:',
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
];

/** The policy for everything that is not the page itself. */
export const FILE_POLICY = [...ALLOWED, "style-src 'self'"].join('; ');

/**
 * Guards the page's HTML. The form library puts two small style elements into the head while it runs; it takes the
 * nonce for them from the `csp-nonce` meta element, so that no other inline style is allowed in.
 */
export function guardPage(html: string): GuardedPage {
  const nonce = randomBytes(16).toString('base64url');
  return {
    html: html.replace(/<head>/i, `<head>\n    <meta name="csp-nonce" nonce="${nonce}">`),
    policy: [...ALLOWED, `style-src 'self' 'nonce-${nonce}'`].join('; '),
  };
}

/** Headers that every answer of either shell carries. */
export const GUARD_HEADERS: Readonly<Record<string, string>> = {
  'cache-control': 'no-store',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'permissions-policy': 'camera=(), microphone=(), geolocation=(), usb=(), serial=(), hid=()',
  'referrer-policy': 'no-referrer',
  'x-content-type-options': 'nosniff',
  'x-frame-options': 'DENY',
};
