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

const MINUTE_S = 60;
const HOUR_S = 3600;

/** An instant as people speak of it: "12 sec ago" or "5 min ago" within the hour, date and time after that. `now` in ms. */
export function agoText(iso: string, now: number): string {
  const seconds = Math.floor((now - Date.parse(iso)) / 1000);
  if (seconds >= HOUR_S) return instantText(iso);
  const ago = new Intl.RelativeTimeFormat(words().locale, { style: 'short' });
  return seconds < MINUTE_S
    ? ago.format(-seconds, 'second')
    : ago.format(-Math.floor(seconds / MINUTE_S), 'minute');
}

/** Today as documents write it, `YYYY-MM-DD`, in the computer's own zone. */
export function today(now = new Date()): string {
  const two = (n: number) => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
