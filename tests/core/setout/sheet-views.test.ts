import { describe, expect, it } from 'vitest';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { keelHeight, sectionAt, sheerHeight } from '../../../core/hull/section-at.ts';
import { planView, profileView, sectionView, viewStretch } from '../../../core/setout/sheet-views.ts';
import { notEmpty } from '../../not-empty.ts';
import { inventedSetOut, ON_A_WEDGE } from './invented-set-out.ts';
import { areaOf, boxOf, circlesOn, linesOn } from './read-shapes.ts';

const out = inventedSetOut({ seat: { frontFoot: ON_A_WEDGE } });
const hull = hullOfBoat(out.work.boat);
const stretch = viewStretch(out, hull);
const plan = planView(out, hull, stretch);
const profile = profileView(out, hull, stretch);
const section = sectionView(out, hull);
/** Top of the floorboard over the hull's lowest point, millimetres. */
const FLOOR = 60;

describe('the stretch of boat that is shown', () => {
  it('holds everything that is built, with boat beyond it, inside the hull', () => {
    for (const { forwardMm } of out.marks) {
      expect(forwardMm).toBeGreaterThan(stretch.aft + 50);
      expect(forwardMm).toBeLessThan(stretch.fore - 50);
    }
    expect(stretch.aft).toBeGreaterThanOrEqual(hull.aftX * 1000);
    expect(stretch.fore).toBeLessThanOrEqual(hull.foreX * 1000);
  });
});

describe('the plan', () => {
  it('has the sheer of both sides, each the mirror of the other', () => {
    const [port, starboard] = linesOn(plan, 'hull').map(({ points }) => points);
    port!.forEach(([x, y], k) => {
      expect(starboard![k]).toEqual([x, -y]);
      const at = sectionAt(hull, x / 1000);
      expect(y).toBeLessThanOrEqual(1000 * Math.max(...at.map((point) => point.y)) + 1e-6);
    });
  });

  it('has the pad at full size where its corners are marked', () => {
    const [pad] = linesOn(plan, 'fitting');
    expect(Math.abs(areaOf(pad!.points))).toBeCloseTo(260 * 160, 6);
    const corners = pad!.points.map(([x, y]) => [Math.round(x), Math.round(y)]);
    for (const name of ['P1', 'P2', 'P3', 'P4']) {
      const { forwardMm, portMm } = out.marks.find((mark) => mark.name === name)!;
      expect(corners).toContainEqual([forwardMm, portMm]);
    }
  });

  it('has the bolts in use and the knee’s round about K', () => {
    expect(circlesOn(plan, 'drillNow').map(({ centre }) => centre)).toEqual(
      out.holes.flatMap(({ bolts }) => bolts),
    );
    const [knee] = circlesOn(plan, 'person');
    const mark = out.marks.find(({ name }) => name === 'K')!;
    expect(Math.hypot(knee!.centre[0] - mark.forwardMm, knee!.centre[1] - mark.portMm)).toBeLessThan(2);
    expect(knee!.radius).toBeCloseTo(out.work.body.lengths.kneeRadius.value * 1000, 9);
  });
});

describe('the profile', () => {
  const outlines = linesOn(profile, 'fitting').map(({ points }) => boxOf(points));

  it('has keel and sheer of the hull', () => {
    const [sheer, keel] = linesOn(profile, 'hull').map(({ points }) => points);
    for (const [x, y] of notEmpty(sheer!)) expect(y).toBeCloseTo(1000 * sheerHeight(hull, x / 1000), 9);
    for (const [x, y] of keel!) expect(y).toBeCloseTo(1000 * keelHeight(hull, x / 1000), 9);
  });

  it('has pad, rest and wedge standing on the floorboard at their heights', () => {
    const [pad, rest, wedge] = outlines;
    for (const box of [pad, rest, wedge]) expect(box!.low).toBeCloseTo(FLOOR, 9);
    expect(pad!.high).toBeCloseTo(FLOOR + 130, 9);
    expect(rest!.high).toBeCloseTo(FLOOR + 50, 9);
    expect(wedge!.high).toBeGreaterThan(FLOOR + out.fittings.foot.toeHeight - 0.5);
  });

  it('stands under the plan: the pad has the same ends in both', () => {
    const inPlan = boxOf(linesOn(plan, 'fitting')[0]!.points);
    expect(outlines[0]!.left).toBeCloseTo(inPlan.left, 9);
    expect(outlines[0]!.right).toBeCloseTo(inPlan.right, 9);
  });

  it('shows the bottom of the recess under K', () => {
    const [bottom] = linesOn(profile, 'recess');
    expect(bottom!.points.every(([, y]) => Math.abs(y - FLOOR - 110) < 1e-9)).toBe(true);
    expect((bottom!.points[0]![0] + bottom!.points[1]![0]) / 2).toBeCloseTo(-175, 9);
  });

  it('has no wedge where the foot stands on the floor', () => {
    const flat = inventedSetOut();
    expect(linesOn(profileView(flat, hull, stretch), 'fitting')).toHaveLength(2);
  });
});

describe('the section from behind', () => {
  it('is the hull’s own section at K, port on the left, the same on both sides', () => {
    const [line] = linesOn(section, 'hull');
    const { left, right } = boxOf(line!.points);
    expect(left).toBeCloseTo(-right, 9);
    const own = sectionAt(hull, -0.175).map(({ y, z }) => [-1000 * y, 1000 * z]);
    for (const point of own) {
      const there = line!.points.some(([x, y]) => Math.hypot(x - point[0]!, y - point[1]!) < 1e-6);
      expect(there).toBe(true);
    }
  });

  it('has the kneeling knee on its side: to the left of the middle on the left', () => {
    const [knee] = circlesOn(section, 'person');
    expect(knee!.centre[0]).toBeLessThan(-30);
    const right = inventedSetOut({ side: 'right' });
    expect(circlesOn(sectionView(right, hull), 'person')[0]!.centre[0]).toBeGreaterThan(30);
  });

  it('has a hollow that ends at the block’s top and bears at its bottom', () => {
    const [hollow] = linesOn(section, 'recess');
    const { low, high, left, right } = boxOf(hollow!.points);
    // Read by halving, to a thousandth of a millimetre.
    expect(low).toBeCloseTo(FLOOR + 110, 3);
    expect(high).toBeCloseTo(FLOOR + 130, 6);
    expect((left + right) / 2).toBeCloseTo(-35, 6);
  });
});
