import type { SectionPoint, Station } from './hull.ts';

/** If any half-section begins beside the centreline, all get a first point on it: a flat bottom is shell. Metres. */
export function openedSections(stations: readonly Station[]): SectionPoint[][] {
  const open = stations.some(({ section }) => section[0]![0] > 0);
  return stations.map(({ section }) => (open ? [[0, section[0]![1]] as const, ...section] : [...section]));
}

/**
 * Gives every half-section the same number of points: for each section the places of its points along itself, whole
 * numbers for its own points (0 is the keel) and fractions between them. Sections with fewer points get extra ones on
 * their own edges, so that equal indices lie at about equal shares of the girth.
 */
export function commonPlaces(sections: readonly (readonly SectionPoint[])[]): number[][] {
  const points = sections.reduce((most, s) => Math.max(most, s.length), 2);
  const fullest = sections.find((s) => s.length === points) ?? sections[0]!;
  const shares = girthShares(fullest);
  return sections.map((section) =>
    section.length === points ? section.map((_, k) => k) : withExtraPlaces(section, shares),
  );
}

/** Share of the girth at each point, 0 at the keel to 1 at the sheer; even steps where there is no girth at all. */
function girthShares(section: readonly SectionPoint[]): number[] {
  const along = [0];
  for (let i = 1; i < section.length; i++) {
    const [y0, z0] = section[i - 1]!;
    const [y1, z1] = section[i]!;
    along.push(along[i - 1]! + Math.hypot(y1 - y0, z1 - z0));
  }
  const girth = along[along.length - 1]!;
  return along.map((a, i) => (girth > 0 ? a / girth : i / Math.max(1, section.length - 1)));
}

/** Places of a section with extra points spaced evenly on its edges. Each of its own points takes the index found for it. */
function withExtraPlaces(section: readonly SectionPoint[], shares: readonly number[]): number[] {
  const indices = indicesOf(section, shares);
  const out = [0];
  for (let i = 1; i < section.length; i++) {
    const steps = indices[i]! - indices[i - 1]!;
    for (let k = 1; k < steps; k++) out.push(i - 1 + k / steps);
    out.push(i);
  }
  while (out.length < shares.length) out.push(section.length - 1);
  return out;
}

/** Index that each point of a shorter section takes: nearest by share of girth, strictly rising, ends kept. */
function indicesOf(section: readonly SectionPoint[], shares: readonly number[]): number[] {
  const last = shares.length - 1;
  const indices: number[] = [];
  girthShares(section).forEach((share, i) => {
    let nearest = shares.findIndex((s) => s >= share);
    if (nearest > 0 && share - shares[nearest - 1]! < shares[nearest]! - share) nearest--;
    const least = i === 0 ? 0 : indices[i - 1]! + 1;
    const most = last - (section.length - 1 - i);
    indices.push(i === section.length - 1 && i > 0 ? last : Math.min(most, Math.max(least, nearest)));
  });
  return indices;
}
