import type { SectionPoint, Station } from './hull.ts';

/**
 * Gives every half-section the same number of points without changing its shape: sections with fewer points get extra
 * ones on their own edges, placed so that equal indices lie at about equal shares of the girth. Every half-section
 * then starts on the centreline (a flat bottom is shell). Metres; stations must be sorted and checked.
 */
export function withCommonPoints(stations: readonly Station[]): SectionPoint[][] {
  const open = stations.some(({ section }) => section[0]![0] > 0);
  const sections = stations.map(({ section }) =>
    open ? [[0, section[0]![1]] as const, ...section] : [...section],
  );
  const points = sections.reduce((most, s) => Math.max(most, s.length), 2);
  const fullest = sections.find((s) => s.length === points) ?? sections[0]!;
  const shares = girthShares(fullest);
  return sections.map((section) => (section.length === points ? section : spread(section, shares)));
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

/** The section with extra points laid evenly on its edges, so that each of its own takes the index found for it. */
function spread(section: readonly SectionPoint[], shares: readonly number[]): SectionPoint[] {
  const places = placesOf(section, shares);
  const out: SectionPoint[] = [section[0]!];
  for (let i = 1; i < section.length; i++) {
    const [y0, z0] = section[i - 1]!;
    const [y1, z1] = section[i]!;
    const steps = places[i]! - places[i - 1]!;
    for (let k = 1; k < steps; k++) out.push([y0 + ((y1 - y0) * k) / steps, z0 + ((z1 - z0) * k) / steps]);
    out.push(section[i]!);
  }
  while (out.length < shares.length) out.push(out[out.length - 1]!);
  return out;
}

/** Index that each point of a shorter section takes: nearest by share of girth, strictly rising, ends kept. */
function placesOf(section: readonly SectionPoint[], shares: readonly number[]): number[] {
  const last = shares.length - 1;
  const places: number[] = [];
  girthShares(section).forEach((share, i) => {
    let nearest = shares.findIndex((s) => s >= share);
    if (nearest > 0 && share - shares[nearest - 1]! < shares[nearest]! - share) nearest--;
    const least = i === 0 ? 0 : places[i - 1]! + 1;
    const most = last - (section.length - 1 - i);
    places.push(i === section.length - 1 && i > 0 ? last : Math.min(most, Math.max(least, nearest)));
  });
  return places;
}
