import type { PlacedRow, Spacing } from './flow.ts';

/** From the usual spacing to the closest: a closer one is used only where it saves a sheet. */
const SPACINGS: readonly Spacing[] = [{ gapMm: 3.5 }, { gapMm: 1 }, { gapMm: 1, keep: 2 }];

/** How many sheets rows take; one where there are none. */
export function sheetsOf(placed: readonly PlacedRow[]): number {
  return 1 + Math.max(0, ...placed.map(({ page }) => page));
}

/** Height of the rows on the last sheet, one under the other, millimetres. */
function lastSheetMm(placed: readonly PlacedRow[]): number {
  const last = sheetsOf(placed) - 1;
  return placed.filter(({ page }) => page === last).reduce((sum, { row }) => sum + row.height, 0);
}

/**
 * The rows on the fewest sheets that a spacing gives. Where the last sheet is nearly blank (rows for less than `leastMm`), the last
 * blocks move there, as few of them as fill it so far, if that adds no sheet. `blocks` is how many there are.
 */
export function fewestSheets(
  flowed: (spacing: Spacing) => PlacedRow[],
  { blocks, leastMm }: { blocks: number; leastMm: number },
): PlacedRow[] {
  const tried = SPACINGS.map(flowed);
  const fewest = Math.min(...tried.map(sheetsOf));
  const best = tried.find((placed) => sheetsOf(placed) === fewest)!;
  if (fewest === 1 || lastSheetMm(best) >= leastMm) return best;
  for (let pageBefore = blocks - 1; pageBefore > 0; pageBefore--) {
    const moved = flowed({ ...SPACINGS[0]!, pageBefore });
    if (sheetsOf(moved) === fewest && lastSheetMm(moved) >= leastMm) return moved;
  }
  return best;
}
