/** The page's live region: what is put here is spoken by a screen reader when it has a moment. */
export const LIVE_REGION_ID = 'spoken';

let turn = 0;

/** Has a sentence spoken. Said twice in a row it is spoken twice: an invisible mark makes the texts differ. */
export function announce(sentence: string): void {
  const region = document.getElementById(LIVE_REGION_ID);
  if (!region) return;
  turn = 1 - turn;
  region.textContent = turn ? sentence : `${sentence}\u{200b}`;
}
