/** Letters and digits that are hard to confuse when read aloud or written by hand. */
const SIGNS = '23456789ABCDEFGHJKLMNPQRSTUVWXY';
/** Letters of a mark. */
const LENGTH = 5;
/** Hexadecimal digits of the identifier that are used: more than five signs can distinguish. */
const DIGITS = 8;

/**
 * The short name of a revision, five signs, for papers and lists. It is computed from the revision's identifier (a random
 * UUID), so it is the same on every computer, where numbers may differ. Two revisions have the same mark about once in 28
 * million pairs.
 */
export function revisionMark(id: string): string {
  let rest = Number.parseInt(id.replaceAll('-', '').slice(0, DIGITS), 16) || 0;
  let mark = '';
  for (let i = 0; i < LENGTH; i++) {
    mark = SIGNS[rest % SIGNS.length] + mark;
    rest = Math.floor(rest / SIGNS.length);
  }
  return mark;
}
