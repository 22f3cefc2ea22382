import { say, words } from '../../language/messages.ts';

/** Longest name that a document takes. */
const LONGEST = 120;

/** A crew's names longer than this together are told by the first. */
const LONG_CREW = 44;

/** The name a fit is given: its athletes and its boat. "Ilse Ravn in Club single no. 4"; of a long crew "Ilse Ravn and 3 more in …". */
export function fitName(boat: string, athletes: readonly string[]): string {
  const [first, ...others] = athletes;
  if (first === undefined) return boat;
  const all = words().list(athletes);
  const told =
    others.length > 0 && all.length > LONG_CREW
      ? say('new-fit.and-more', { first, count: others.length })
      : all;
  return say('new-fit.name.default', { athletes: told, boat }).slice(0, LONGEST);
}

/** A fit's name moved into another boat: the new boat replaces the old one at the end of the name. */
export function nameInBoat(name: string, boats: { readonly from: string; readonly to: string }): string {
  const tail = (boat: string) => say('new-fit.name.default', { athletes: '', boat });
  const old = tail(boats.from);
  if (name.endsWith(old)) return name.slice(0, -old.length) + tail(boats.to);
  return say('transfer.name', { fit: name, boat: boats.to });
}

/** A name for a copy that is not taken yet: "Spring (2)", then "Spring (3)"; the copy of a copy gets no second number. */
export function copyName(name: string, taken: readonly string[]): string {
  const stem = name.replace(/ \(\d+\)$/, '');
  for (let number = 2; ; number++) {
    const tail = ` (${number})`;
    const candidate = stem.slice(0, LONGEST - tail.length) + tail;
    if (!taken.includes(candidate)) return candidate;
  }
}
