import { onOneLine } from '../shell/plain-text.ts';

/** A text as XML holds it, on one line. */
export function xmlText(text: string): string {
  return onOneLine(text)
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}
