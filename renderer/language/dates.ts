import { words } from './messages.ts';

/** A calendar date or an instant as the page's language writes dates; empty for none. */
export function dateText(iso: string | undefined | null): string {
  if (!iso) return '';
  const date = new Date(iso.length === 10 ? `${iso}T12:00:00` : iso);
  return date.toLocaleDateString(words().locale, { dateStyle: 'medium' });
}

/** Date and time of day. */
export function instantText(iso: string): string {
  return new Date(iso).toLocaleString(words().locale, { dateStyle: 'medium', timeStyle: 'short' });
}

/** Today as documents write it, `YYYY-MM-DD`, in the computer's own zone. */
export function today(now = new Date()): string {
  const two = (n: number) => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
