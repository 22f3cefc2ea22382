import { describe, expect, it } from 'vitest';
import { floatAtRest } from '../../core/hydrostatics/float-at-rest.ts';
import { immersedProperties } from '../../core/hydrostatics/immersed-properties.ts';
import { rightingArm } from '../../core/hydrostatics/righting-arm.ts';
import { toRadians } from '../../core/units/angle.ts';
import {
  attitudeOfPlane,
  box,
  cosinePlaces,
  cylinder,
  ellipsoid,
  evenPlaces,
  wedge,
} from './hydro-shapes.ts';

/** Closed forms integrate polynomials that the rule integrates exactly: only rounding is left. */
const EXACT = 1e-12;

function afloat(result: ReturnType<typeof floatAtRest>) {
  if (result.kind !== 'afloat') throw new Error(`not afloat: ${JSON.stringify(result)}`);
  return result;
}

describe('ellipsoid, closed form for any plane: V = πabc(1+t)²(2−t)/3, centroid −s·M²n/q', () => {
  // a 2.5, b .25, c .15; port-down heel °, bow-down trim °, plane distance d; values from the closed form.
  const table = [
    { heel: 20, trim: 0, d: 0, V: 0.196349541, B: [0, 0.0486234, -0.04809301] },
    { heel: 0, trim: 2, d: 0, V: 0.196349541, B: [0.47158055, 0, -0.04861548] },
    { heel: 15, trim: 1.5, d: 0.02, V: 0.230687265, B: [0.28734493, 0.02940276, -0.03950374] },
    { heel: 10, trim: -1, d: -0.03, V: 0.141716497, B: [-0.32502692, 0.03283346, -0.06703481] },
  ] as const;
  const fine = ellipsoid(cosinePlaces(2.5, 81), 301);
  const coarse = ellipsoid(evenPlaces(2.5, 41), 101);

  it.each(table)('heel $heel°, trim $trim°, d $d', ({ heel, trim, d, V, B }) => {
    const p = immersedProperties(fine, attitudeOfPlane(heel, trim, d));
    // 301 points hold 1 − (π/300)²/6 = 1 − 1.8e-5 of each ellipse; along x the error is smaller.
    expect(Math.abs(p.volume / V - 1)).toBeLessThan(4e-5);
    expect(Math.abs(p.centroid.x - B[0])).toBeLessThan(5e-5);
    expect(Math.abs(p.centroid.y - B[1])).toBeLessThan(5e-6);
    expect(Math.abs(p.centroid.z - B[2])).toBeLessThan(5e-6);
  });

  it.each(table)('the same from 41 even stations of 101 points', ({ heel, trim, d, V, B }) => {
    const p = immersedProperties(coarse, attitudeOfPlane(heel, trim, d));
    expect(Math.abs(p.volume / V - 1)).toBeLessThan(3e-4);
    expect(Math.hypot(p.centroid.x - B[0], p.centroid.y - B[1], p.centroid.z - B[2])).toBeLessThan(1.5e-4);
  });

  it.each(table)('comes to rest at heel $heel°, trim $trim° under a weight on the normal', (row) => {
    const at = attitudeOfPlane(row.heel, row.trim, row.d);
    const [x, y, z] = row.B;
    const below = 0.05;
    const weight = {
      mass: row.V * 1000,
      x: x - below * at.normal.x,
      y: y - below * at.normal.y,
      z: z - below * at.normal.z,
    };
    const rest = afloat(floatAtRest(fine, { masses: [weight], waterDensity: 1000, heel: at.heel }));
    expect(Math.abs(rest.draft - at.draft)).toBeLessThan(1e-5);
    expect(Math.abs(rest.trim - at.trim)).toBeLessThan(5e-6);
    expect(Math.abs(rightingArm(rest))).toBeLessThan(1e-5);
    expect(rest.iterations).toBeLessThanOrEqual(8);
  });

  it('its waterplane is the ellipse in which the plane cuts it', () => {
    // A plane through the centre, heeled only: half-axes a and bc/√(c²cos²φ + b²sin²φ).
    const phi = toRadians(20);
    const across = (0.25 * 0.15) / Math.hypot(0.15 * Math.cos(phi), 0.25 * Math.sin(phi));
    const { waterplane, volume } = immersedProperties(fine, { draft: 0, trim: 0, heel: phi });
    expect(waterplane.area / (Math.PI * 2.5 * across)).toBeCloseTo(1, 4);
    expect((waterplane.transverseBm * volume) / ((Math.PI / 4) * 2.5 * across ** 3)).toBeCloseTo(1, 3);
    expect((waterplane.longitudinalBm * volume) / ((Math.PI / 4) * 2.5 ** 3 * across)).toBeCloseTo(1, 3);
    expect(waterplane.length).toBeCloseTo(5, 9);
  });
});

describe('box L 5, B .5, D .4: V = LBT, KB = T/2, BM_T = B²/12T, BM_L = L²/12T, S = LB + 2T(L+B)', () => {
  const [L, B, T] = [5, 0.5, 0.15];
  const hull = box();

  it('upright', () => {
    const p = immersedProperties(hull, { draft: T, trim: 0, heel: 0 });
    expect(p.volume).toBeCloseTo(L * B * T, 12);
    expect(p.centroid.z).toBeCloseTo(T / 2, 12);
    expect(p.waterplane.transverseBm).toBeCloseTo(B ** 2 / (12 * T), 12);
    expect(p.waterplane.longitudinalBm).toBeCloseTo(L ** 2 / (12 * T), 11);
    expect(p.wettedSurface).toBeCloseTo(L * B + 2 * T * (L + B), 12);
    expect([p.blockCoefficient, p.prismaticCoefficient, p.waterplaneCoefficient]).toEqual([
      expect.closeTo(1, 12),
      expect.closeTo(1, 12),
      expect.closeTo(1, 12),
    ]);
    expect(p.leastFreeboard.value).toBeCloseTo(0.25, 12);
  });

  it.each([
    [0.014, 0.1],
    [-0.03, 0.25],
    [0.02, -0.3],
  ])('inclined, a %f and b %f: x_B = aL²/12T, y_B = bB²/12T, z_B = T/2 + (a²L² + b²B²)/24T', (a, b) => {
    const p = immersedProperties(hull, { draft: T, trim: Math.atan(-a), heel: Math.atan(-b) });
    expect(p.volume).toBeCloseTo(L * B * T, 12);
    expect(p.centroid.x).toBeCloseTo((a * L ** 2) / (12 * T), 11);
    expect(p.centroid.y).toBeCloseTo((b * B ** 2) / (12 * T), 12);
    expect(p.centroid.z).toBeCloseTo(T / 2 + (a ** 2 * L ** 2 + b ** 2 * B ** 2) / (24 * T), 12);
  });

  it('375 kg, 20 kg of it moved 1 m forward, KG .12: trim .22073°, 19.2623 mm, T_F .159631, T_A .140369', () => {
    const masses = [
      { mass: 355, x: 0, y: 0, z: 0.12 },
      { mass: 20, x: 1, y: 0, z: 0.12 },
    ];
    const rest = afloat(floatAtRest(hull, { masses, waterDensity: 1000 }));
    expect(Math.tan(-rest.trim)).toBeCloseTo(0.00385245, 7);
    expect((-rest.trim * 180) / Math.PI).toBeCloseTo(0.22073, 5);
    expect(rest.bowOverStern * 1000).toBeCloseTo(-19.2623, 3);
    expect(rest.draft + 2.5 * Math.tan(-rest.trim)).toBeCloseTo(0.159631, 6);
    expect(rest.draft - 2.5 * Math.tan(-rest.trim)).toBeCloseTo(0.140369, 6);
    expect(rest.draft).toBeCloseTo(0.15, 9);
    // x_G = a·(GM_L + ½·BM_L·a²), exact for trim alone.
    const a = Math.tan(-rest.trim);
    const bml = L ** 2 / (12 * T);
    expect(a * (bml + T / 2 - 0.12 + 0.5 * bml * a * a)).toBeCloseTo(20 / 375, 10);
  });

  it('x_G .20 and y_G .01: a .014444511, b .104069193 leave both moments at nothing', () => {
    const masses = [{ mass: 375, x: 0.2, y: 0.01, z: 0.12 }];
    const heel = Math.atan(-0.104069193);
    const rest = afloat(floatAtRest(hull, { masses, waterDensity: 1000, heel }));
    expect(Math.tan(-rest.trim)).toBeCloseTo(0.014444511, 9);
    expect(Math.abs(rightingArm(rest))).toBeLessThan(1e-9);
  });

  it.each([5, 10, 20, 30])('heel %d°: GZ = sin φ (GM + ½ BM tan²φ), both ways', (degrees) => {
    const bm = B ** 2 / (12 * T);
    const phi = toRadians(degrees);
    const expected = Math.sin(phi) * (T / 2 + bm - 0.12 + 0.5 * bm * Math.tan(phi) ** 2);
    const masses = [{ mass: 375, x: 0, y: 0, z: 0.12 }];
    for (const side of [1, -1]) {
      const rest = afloat(floatAtRest(hull, { masses, waterDensity: 1000, heel: side * phi }));
      expect(rightingArm(rest)).toBeCloseTo(side * expected, 12);
    }
  });

  it('leaves the water with its flat bottom: the exact prism, and its exact waterplane', () => {
    // Bow up until the bottom comes out at x = 1: depth there 0, at the stern .35 · tan.
    const slope = 0.08;
    const p = immersedProperties(hull, { draft: slope * 1, trim: Math.atan(slope), heel: 0 });
    const wet = 3.5;
    expect(p.volume).toBeCloseTo((B * slope * wet ** 2) / 2, 12);
    expect(p.centroid.x).toBeCloseTo(-2.5 + wet / 3, 12);
    expect(p.waterplane.length).toBeCloseTo(wet, 12);
    expect(p.waterplane.area).toBeCloseTo(B * wet * Math.hypot(1, slope), 10);
    expect(p.waterplane.lcf).toBeCloseTo(-2.5 + wet / 2, 10);
  });
});

describe('V wedge, α 40°, L 5: KB = 2T/3, KM_T = ⅔T sec²α, BM_L = L²/6T', () => {
  const [L, T, alpha] = [5, 0.15, toRadians(40)];
  const hull = wedge(L, alpha, 0.6);
  const volume = L * T ** 2 * Math.tan(alpha);

  it('upright', () => {
    const p = immersedProperties(hull, { draft: T, trim: 0, heel: 0 });
    expect(p.volume).toBeCloseTo(volume, 12);
    expect(p.centroid.z).toBeCloseTo((2 * T) / 3, 12);
    expect(p.centroid.z + p.waterplane.transverseBm).toBeCloseTo((2 / 3) * T * Math.cos(alpha) ** -2, 12);
    expect(p.waterplane.longitudinalBm).toBeCloseTo(L ** 2 / (6 * T), 10);
  });

  it('trimmed by a .03 it is not wall-sided: T₀ = √(T² − a²L²/12) = .14361407', () => {
    const a = 0.03;
    const draft = Math.sqrt(T ** 2 - (a ** 2 * L ** 2) / 12);
    expect(draft).toBeCloseTo(0.14361407, 8);
    const p = immersedProperties(hull, { draft, trim: Math.atan(-a), heel: 0 });
    expect(Math.abs(p.volume - volume)).toBeLessThan(EXACT);
    const weight = {
      mass: p.volume * 1000,
      x: p.centroid.x - 0.05 * -a,
      y: 0,
      z: p.centroid.z - 0.05,
    };
    const rest = afloat(floatAtRest(hull, { masses: [weight], waterDensity: 1000 }));
    expect(rest.draft).toBeCloseTo(0.14361407, 8);
    expect(Math.tan(rest.trim)).toBeCloseTo(-a, 9);
  });

  it.each([5, 15, 25])('heel %d°: GZ = sin φ (⅔T sec²α·q − KG), q = (1 − tan²α tan²φ)^−½', (degrees) => {
    const phi = toRadians(degrees);
    const q = 1 / Math.sqrt(1 - (Math.tan(alpha) * Math.tan(phi)) ** 2);
    const kg = 0.12;
    const masses = [{ mass: volume * 1000, x: 0, y: 0, z: kg }];
    const rest = afloat(floatAtRest(hull, { masses, waterDensity: 1000, heel: phi }));
    expect(rightingArm(rest)).toBeCloseTo(Math.sin(phi) * ((2 / 3) * T * Math.cos(alpha) ** -2 * q - kg), 11);
  });
});

describe('horizontal cylinder R .3: KM = R at any draught, GZ = (R − KG) sin φ at any heel', () => {
  const [L, R] = [4, 0.3];
  const hull = cylinder(L, R, 721);

  it.each([0.1, 0.3, 0.45])('draught %f: V = LR²(β − sin β cos β), KM = R', (h) => {
    const beta = Math.acos(1 - h / R);
    const p = immersedProperties(hull, { draft: h, trim: 0, heel: 0 });
    // 720 chords a half-turn hold 1 − (π/720)²/6 of the circle: 3e-6; the segment's own share is a little less.
    expect(Math.abs(p.volume / (L * R * R * (beta - Math.sin(beta) * Math.cos(beta))) - 1)).toBeLessThan(
      1e-5,
    );
    expect(p.centroid.z + p.waterplane.transverseBm).toBeCloseTo(R, 5);
  });

  it.each([10, 40, 70])('heel %d°', (degrees) => {
    const phi = toRadians(degrees);
    const masses = [{ mass: 400, x: 0, y: 0, z: 0.2 }];
    const rest = afloat(floatAtRest(hull, { masses, waterDensity: 1000, heel: phi }));
    expect(rightingArm(rest)).toBeCloseTo((R - 0.2) * Math.sin(phi), 5);
    // Held at a heel, GM is the slope of GZ there.
    expect(rest.transverseGm).toBeCloseTo((R - 0.2) * Math.cos(phi), 4);
  });
});
