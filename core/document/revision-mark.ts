/** Letters and digits that are not taken for one another when they are read aloud or written by hand. */
const SIGNS = '23456789ABCDEFGHJKLMNPQRSTUVWXY';
/** Letters of a mark. */
const LENGTH = 5;
/** So many hexadecimal digits of an identifier are read: more than five signs can tell apart. */
const DIGITS = 8;

/**
 * The short name of a revision, five signs, for papers and lists. It is made of the revision's identifier (a random UUID),
 * which travels with it: the same on every computer, where numbers may differ. Two revisions of one fit have the same one
 * about once in 28 million pairs.
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
