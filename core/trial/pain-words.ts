/** English words for what hurts, as athletes say them; whatever is built on the beginning counts too ("painful", "tingles"). */
const PAIN =
  /\b(?:pain|hurt|ache?s?\b|aching|sore|numb|tingl|asleep|pins and needles|swell|swollen|burn|cramp|stabb|sharp)/giu;

/** Words that take the one after them back: "no pain", "without any pain". */
const NONE = /\b(?:no|not|never|without|nothing|isn.t|wasn.t|didn.t|doesn.t)(?:\s+\w+)?\s*$/iu;

/**
 * Whether free text speaks of pain, numbness or the like, in English; "no pain" does not. A word too many only brings a
 * caution too many, and one that is missed still has the structured entry beside it.
 */
export function speaksOfPain(text: string): boolean {
  for (const match of text.matchAll(PAIN)) {
    if (!NONE.test(text.slice(0, match.index))) return true;
  }
  return false;
}
