/** Roots of a·u² + b·u + c strictly between 0 and 1, rising. */
export function rootsInside(a: number, b: number, c: number): number[] {
  const square = b * b - 4 * a * c;
  if (square < 0) return [];
  // The root that does not cancel first, the other from the product of roots; a = 0 leaves the second alone.
  const q = -(b + (b < 0 ? -1 : 1) * Math.sqrt(square)) / 2;
  const first = q / a;
  const second = c / q;
  const roots: number[] = [];
  if (first > 0 && first < 1) roots.push(first);
  if (second > 0 && second < 1) {
    if (second < first) roots.unshift(second);
    else roots.push(second);
  }
  return roots;
}
