/** The page's live region: a screen reader speaks its text as soon as it is idle. */
export const LIVE_REGION_ID = 'spoken';

let turn = 0;

/** Speaks a sentence. The same sentence twice in a row is spoken twice: an invisible mark makes the texts differ. */
export function announce(sentence: string): void {
  const region = document.getElementById(LIVE_REGION_ID);
  if (!region) return;
  turn = 1 - turn;
  region.textContent = turn ? sentence : `${sentence}\u{200b}`;
}
