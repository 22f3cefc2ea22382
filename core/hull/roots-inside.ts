/** Roots of a·u² + b·u + c strictly between 0 and 1, rising. */
export function rootsInside(a: number, b: number, c: number): number[] {
  const inside = (u: number) => u > 0 && u < 1;
  const square = b * b - 4 * a * c;
  if (square < 0) return [];
  // The root that does not cancel first, the other from the product of roots; a = 0 leaves the second alone.
  const q = -(b + (b < 0 ? -1 : 1) * Math.sqrt(square)) / 2;
  const roots = [q / a, c / q].filter(inside);
  return roots.length === 2 && roots[0]! > roots[1]! ? [roots[1]!, roots[0]!] : roots;
}
