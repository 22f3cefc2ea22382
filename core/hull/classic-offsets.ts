/** The first cell of a classic table. */
const HEAD = /^half[- ]?breadths?\s*[[(]?\s*(m|cm|mm|in|ft)\s*[\])]?$/i;

/** A number of a cell, with a decimal point or comma and either minus sign; null for a blank cell, NaN for anything else. */
function numberIn(cell: string | undefined): number | null {
  const text = (cell ?? '').trim().replace('−', '-').replace(',', '.');
  return text === '' || text === '–' || text === '-' ? null : Number(text);
}

/**
 * A classic table of offsets, stations across and waterlines down, as rows of one point each for `offsetsFromTable`. Null for any
 * other table. All in the unit that the first cell says (m, cm, mm, in, ft):
 *
 * | half-breadths [mm] | 0 | 500 | 1000 |
 * |---|---|---|---|
 * | keel | 20 | 0 | 20 |
 * | 50 | 30 | 160 | 30 |
 * | 100 | | 210 | |
 * | sheer | 60 | 230 | 60 |
 * | sheer height | 180 | 160 | 180 |
 *
 * The first row has the stations' places, `keel` and `sheer height` heights, `sheer` half-breadths, every other row a waterline's
 * height and its half-breadths. A blank cell, or a waterline that is not between keel and sheer there, is passed over. A wrong cell is copied unchanged, so that `offsetsFromTable` reports it.
 */
export function classicOffsets(rows: readonly (readonly string[])[]): string[][] | null {
  const [head, ...body] = rows.filter((row) => row.some((cell) => cell.trim() !== ''));
  const unit = head && HEAD.exec(head[0]?.trim() ?? '')?.[1]?.toLowerCase();
  if (!head || !unit) return null;
  const named = (name: string) => body.find(([first]) => first?.trim().toLowerCase() === name);
  const [keel, sheer, sheerHeight] = [named('keel'), named('sheer'), named('sheer height')];
  const waterlines = body
    .filter((row) => row !== keel && row !== sheer && row !== sheerHeight)
    .toSorted((a, b) => (numberIn(a[0]) ?? 0) - (numberIn(b[0]) ?? 0));
  const points = head.slice(1).flatMap((place, k) => {
    const at = k + 1;
    const [low, high] = [numberIn(keel?.[at]), numberIn(sheerHeight?.[at])];
    const between = waterlines.flatMap((row): string[][] => {
      const height = numberIn(row[0]);
      const isOut = height !== null && ((low !== null && height <= low) || (high !== null && height >= high));
      return isOut || numberIn(row[at]) === null ? [] : [[place, row[at]!, row[0]!]];
    });
    return [
      ...(low === null ? [] : [[place, '0', keel![at]!]]),
      ...between,
      ...(high === null || numberIn(sheer?.[at]) === null ? [] : [[place, sheer![at]!, sheerHeight![at]!]]),
    ];
  });
  return [[`station [${unit}]`, `half-breadth [${unit}]`, `height [${unit}]`], ...points];
}
