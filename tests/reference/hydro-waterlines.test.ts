import { describe, expect, it } from 'vitest';
import { boatSchema } from '../../core/document/boat-schema.ts';
import { hullSpread } from '../../core/evaluation/hull-spread.ts';
import type { Hull, SectionPoint } from '../../core/hull/hull.ts';
import { hullOfBoat } from '../../core/hull/hull-of-boat.ts';
import type { Afloat } from '../../core/hydrostatics/afloat.ts';
import { floatAtRest } from '../../core/hydrostatics/float-at-rest.ts';
import { immersedProperties } from '../../core/hydrostatics/immersed-properties.ts';
import { madeHull } from '../core/hull/made-hull.ts';

/**
 * Offsets as they are ordinarily given: half-breadths at waterlines 5 cm apart, up to the sheer. The hulls are analytic,
 * so that their true draft is known: Wigley's parabolas have closed forms (see `hydro-wigley.test.ts`), an elliptic
 * section holds π/4 of its box, and the fuller one is drawn with 401 points a section.
 */
const GAP = 0.05;

const FORMS: Readonly<Record<string, (height: number) => number>> = {
  'elliptic sections': (h) => Math.sqrt(Math.max(0, 2 * h - h * h)),
  'Wigley’s parabolas': (h) => 2 * h - h * h,
  'full sections with flare': (h) => 0.9 * (1 - (1 - h) ** 2.3) ** (1 / 3.2) + 0.1 * h,
};

const SIZES = [
  { name: 'single', L: 5.2, B: 0.42, D: 0.27, mass: 100 },
  { name: 'shallow single', L: 5.2, B: 0.42, D: 0.16, mass: 85 },
  { name: 'pair', L: 6.5, B: 0.45, D: 0.3, mass: 190 },
  { name: 'four', L: 9, B: 0.5, D: 0.35, mass: 370 },
  { name: 'training single', L: 4.9, B: 0.82, D: 0.29, mass: 90 },
];

const cases = Object.entries(FORMS).flatMap(([form, breadth]) =>
  SIZES.map((size) => ({ form, breadth, ...size })),
);
type Case = (typeof cases)[number];

/** Heights of a table: every 5 cm, and the sheer. */
const waterlines = (D: number) => [
  ...Array.from({ length: Math.ceil(D / GAP - 1e-9) }, (_, k) => k * GAP),
  D,
];
const dense = (D: number) => Array.from({ length: 401 }, (_, k) => D * (k / 400) ** 3);

const stationsOf = ({ L, B, D, breadth }: Case, heights: (D: number) => number[]) =>
  Array.from({ length: 41 }, (_, i) => {
    const xM = -L / 2 + (L * i) / 40;
    const plan = (B / 2) * (1 - ((2 * xM) / L) ** 2);
    return { xM, section: heights(D).map((z): [number, number] => [Math.max(0, plan * breadth(z / D)), z]) };
  });

const boatOf = (given: Case) =>
  boatSchema.parse({
    name: given.name,
    massKg: 14,
    hull: { kind: 'offsets', stations: stationsOf(given, waterlines) },
    floorboard: { heightM: 0.03, widthM: 0.2, aftEndXM: -1, foreEndXM: 1 },
    seats: [{ stationM: 0 }],
  });

function afloatOf(hull: Hull, { mass }: Case): Afloat {
  const rest = floatAtRest(hull, { masses: [{ mass, x: 0.1, y: 0, z: 0.4 }], waterDensity: 1000 });
  if (rest.kind !== 'afloat') throw new Error(rest.kind);
  return rest;
}

const asHull = (given: Case, heights: (D: number) => number[], between: 'curves' | 'chords') =>
  madeHull({
    name: given.name,
    stations: stationsOf(given, heights).map(({ xM, section }) => ({ x: xM, section })),
    between,
  });

describe.each(cases)('waterlines 5 cm apart, $form, $name', (given) => {
  const boat = boatOf(given);
  const hull = hullOfBoat(boat);
  const truth = afloatOf(asHull(given, dense, 'chords'), given);
  const ours = afloatOf(hull, given);
  const spread = hullSpread(boat, ours, hull);

  it('draft, trim and GM miss the true ones by no more than one stated standard deviation', () => {
    expect(Math.abs(ours.draft - truth.draft)).toBeLessThan(spread.draft);
    expect(Math.abs(ours.bowOverStern - truth.bowOverStern)).toBeLessThan(spread.trimRest);
    expect(Math.abs(ours.transverseGm - truth.transverseGm)).toBeLessThan(spread.transverseGm);
  });

  it('and the draft by under half of what straight lines between the points would miss it', () => {
    const straight = afloatOf(asHull(given, waterlines, 'chords'), given);
    const miss = Math.abs(straight.draft - truth.draft);
    expect(Math.abs(ours.draft - truth.draft)).toBeLessThan(Math.max(0.5 * miss, 0.0005));
  });
});

describe('what must not be rounded', () => {
  const prism = (section: SectionPoint[]) =>
    madeHull({ name: 'prism', stations: [-1, 0, 1].map((x) => ({ x, section })) });
  const area = (section: SectionPoint[], draft: number) =>
    immersedProperties(prism(section), { draft, trim: 0, heel: 0 }).volume / 2;

  it('a hard chine: V bottom of 15°, sides flared by 10°, at waterlines 5 cm apart', () => {
    // y = z/tan 15° to the chine at z .05, then y = y₁ + (z − .05)·tan 10°; area by trapezia.
    const chine = 0.05 / Math.tan(Math.PI / 12);
    const side = (z: number) => chine + (z - 0.05) * Math.tan(Math.PI / 18);
    const section: SectionPoint[] = [
      [0, 0],
      [chine, 0.05],
      [side(0.1), 0.1],
      [side(0.15), 0.15],
      [side(0.2), 0.2],
    ];
    expect(area(section, 0.12)).toBeCloseTo(0.05 * chine + 0.07 * (chine + side(0.12)), 14);
    expect(
      area(
        section.filter((_, k) => k < 2 || k === 4),
        0.12,
      ),
    ).toBeCloseTo(area(section, 0.12), 14);
  });

  it('a soft knuckle between two panels, when the panels have points of their own', () => {
    const section: SectionPoint[] = [
      [0, 0],
      [0.1, 0.05],
      [0.2, 0.1],
      [0.25, 0.15],
      [0.3, 0.2],
    ];
    expect(area(section, 0.2)).toBeCloseTo(0.02 + 0.05, 14);
  });

  it('a knuckle that is given twice; given once, it is taken for a round bilge', () => {
    const knuckle: SectionPoint = [0.2, 0.1];
    const [keel, sheer]: SectionPoint[] = [
      [0, 0],
      [0.25, 0.25],
    ];
    const polygon = 0.02 + 0.15 * 0.45;
    expect(area([keel!, knuckle, knuckle, sheer!], 0.25)).toBeCloseTo(polygon, 14);
    expect(area([keel!, knuckle, sheer!], 0.25)).toBeGreaterThan(polygon * 1.02);
  });

  it('a flat bottom, a wall side and the V of a wedge', () => {
    expect(
      area(
        [
          [0.25, 0],
          [0.25, 0.05],
          [0.25, 0.1],
          [0.25, 0.4],
        ],
        0.15,
      ),
    ).toBeCloseTo(0.075, 14);
    expect(
      area(
        [
          [0, 0],
          [0.1, 0.05],
          [0.2, 0.1],
          [0.8, 0.4],
        ],
        0.2,
      ),
    ).toBeCloseTo(0.08, 14);
    // A bilge of radius .1 between a flat bottom and a wall side: it never dips below the one nor swells past the other.
    const bilge = prism([
      [0.2, 0],
      [0.25, 0.0134],
      [0.2866, 0.05],
      [0.3, 0.1],
      [0.3, 0.2],
      [0.3, 0.3],
    ]);
    expect(bilge.lowestZ).toBe(0);
    expect(Math.max(...bilge.rows.y)).toBeLessThan(0.3 + 1e-12);
    expect(immersedProperties(bilge, { draft: 0.1, trim: 0, heel: 0 }).volume / 2).toBeCloseTo(
      0.04 + (Math.PI / 2) * 0.01,
      4,
    );
  });
});
