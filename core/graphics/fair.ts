/** Value at `t` (0–1) between the second and third of four, on a fair curve through all (Catmull–Rom). */
export function catmullRom([a, b, c, d]: readonly [number, number, number, number], t: number): number {
  return b + 0.5 * t * (c - a + t * (2 * a - 5 * b + 4 * c - d + t * (3 * (b - c) + d - a)));
}

/** Rows of numbers with `between` fair ones put between each two; `closed` goes on from the last to the first. */
export function fairRows<Row extends readonly number[] = number[]>(
  rows: readonly Readonly<NoInfer<Row>>[],
  between: number,
  closed = false,
): Row[] {
  const last = rows.length - 1;
  const row = (k: number) => rows[closed ? (k + rows.length) % rows.length : Math.min(last, Math.max(0, k))]!;
  const spans = closed ? rows.length : last;
  const made: number[][] = [];
  for (let k = 0; k < spans; k++) {
    for (let j = 0; j <= between; j++) {
      const t = j / (between + 1);
      made.push(
        row(k).map((value, c) => catmullRom([row(k - 1)[c]!, value, row(k + 1)[c]!, row(k + 2)[c]!], t)),
      );
    }
  }
  // A row put between two has as many numbers as they have.
  return (closed ? made : [...made, [...rows[last]!]]) as readonly (readonly number[])[] as Row[];
}
