import { say } from '../../language/messages.ts';

/** Longest name that a document takes. */
const LONGEST = 120;

/** The name a fit is given: its athletes and its boat. "Ilse Ravn in Club single no. 4". */
export function fitName(boat: string, athletes: readonly string[]): string {
  if (athletes.length === 0) return boat;
  const joined = athletes.reduce((first, second) => say('new-fit.and', { first, second }));
  return say('new-fit.name.default', { athletes: joined, boat }).slice(0, LONGEST);
}

/** A fit's name moved into another boat: the boat that the name ends with gives way, so that it grows no tail. */
export function nameInBoat(name: string, boats: { readonly from: string; readonly to: string }): string {
  const tail = (boat: string) => say('new-fit.name.default', { athletes: '', boat });
  const old = tail(boats.from);
  if (name.endsWith(old)) return name.slice(0, -old.length) + tail(boats.to);
  return say('transfer.name', { fit: name, boat: boats.to });
}

/** A name for a copy that is not taken yet: "Spring (2)", then "Spring (3)"; the copy of a copy gets no second tail. */
export function copyName(name: string, taken: readonly string[]): string {
  const stem = name.replace(/ \(\d+\)$/, '');
  for (let number = 2; ; number++) {
    const tail = ` (${number})`;
    const candidate = stem.slice(0, LONGEST - tail.length) + tail;
    if (!taken.includes(candidate)) return candidate;
  }
}
