import { describe, expect, it } from 'vitest';
import type { Seat } from '../../../core/document/seat-schema.ts';
import { frontFootPlace, frontWedge } from '../../../core/setout/front-foot.ts';
import { inventedSetOut, ON_A_WEDGE } from './invented-set-out.ts';
import { areaOf } from './read-shapes.ts';

const on = (more: Partial<Seat['frontFoot']> = {}, side: 'left' | 'right' = 'left') =>
  inventedSetOut({ side, seat: { frontFoot: { ...ON_A_WEDGE, ...more } } }).fittings.foot;
const DEG = Math.PI / 180;

describe('the place of the front foot', () => {
  it('is the other foot than the one knelt on, at its heel, toes out away from the middle', () => {
    const left = on();
    expect(left).toMatchObject({ foot: 'right', place: { origin: [400, -60] } });
    expect(left.place.turn).toBeCloseTo(-6 * DEG, 12);
    const right = on({}, 'right');
    expect(right).toMatchObject({ foot: 'left', place: { origin: [400, 60] } });
    expect(right.place.turn).toBeCloseTo(6 * DEG, 12);
  });

  it('rises by the sine of its slope and covers the floor by the cosine', () => {
    const foot = on({ wedgeDeg: 20, heightM: 0.01 });
    expect(foot.toeHeight).toBeCloseTo(10 + foot.length * Math.sin(20 * DEG), 9);
    expect(foot.run).toBeCloseTo(foot.length * Math.cos(20 * DEG), 9);
    expect(Math.hypot(foot.run, foot.toeHeight - foot.heelHeight)).toBeCloseTo(foot.length, 9);
  });

  it('is the athlete’s own foot, where it was measured', () => {
    const out = inventedSetOut();
    expect(out.fittings.foot.length).toBeCloseTo(out.work.body.lengths.footLength.value * 1000, 9);
    expect(frontFootPlace(out.work)).toEqual(out.fittings.foot);
    expect(out.fittings.foot.heelToBall).toBeLessThan(out.fittings.foot.length);
  });
});

describe('the wedge under the front foot', () => {
  it('is none where the foot stands on the floor', () => {
    expect(frontWedge(on({ heightM: 0, wedgeDeg: 0 }))).toEqual({ kind: 'none' });
  });

  it('cannot be where the toes would be under the floor, and says by how much', () => {
    const wedge = frontWedge(on({ heightM: 0, wedgeDeg: -5 }));
    if (wedge.kind !== 'below-floor') throw new Error(`it is ${wedge.kind}`);
    expect(wedge.toeHeight).toBeLessThan(-15);
  });

  it.each([3, 5, 12, 25])('of %i° has a top of just that slope', (wedgeDeg) => {
    const wedge = frontWedge(on({ wedgeDeg }));
    if (wedge.kind !== 'wedge') throw new Error(`it is ${wedge.kind}`);
    const top = wedge.profile.filter(([, y]) => y > 0).sort((a, b) => a[0] - b[0]);
    const [low, high] = [top[0]!, top.at(-1)!];
    const slope = Math.atan2(high[1] - low[1], high[0] - low[0]) / DEG;
    expect(slope).toBeCloseTo(wedgeDeg, 6);
  });

  it('is the part itself: from heel to toes, as broad as the foot, the heel at its height', () => {
    const foot = on({ heightM: 0.02, wedgeDeg: 10 });
    const wedge = frontWedge(foot);
    if (wedge.kind !== 'wedge') throw new Error(`it is ${wedge.kind}`);
    const xs = wedge.profile.map(([x]) => x);
    expect([Math.min(...xs), Math.max(...xs)]).toEqual([0, foot.run]);
    expect(wedge.length).toBeCloseTo(foot.run, 9);
    expect(wedge.profile).toContainEqual([0, foot.heelHeight]);
    expect(wedge.halfWidth).toBeCloseTo(foot.breadth / 2, 9);
  });

  it('comes down to an edge at the heel when the heel is on the floor', () => {
    const wedge = frontWedge(on({ heightM: 0, wedgeDeg: 15 }));
    if (wedge.kind !== 'wedge') throw new Error(`it is ${wedge.kind}`);
    expect(wedge.profile).toHaveLength(3);
    expect(wedge.profile).toContainEqual([0, 0]);
    const { length } = wedge;
    expect(areaOf(wedge.profile)).toBeCloseTo((length ** 2 * Math.tan(15 * DEG)) / 2, 6);
  });

  it('slopes down to the toes for a slope below nothing, and ends where it meets the floor', () => {
    const foot = on({ heightM: 0.012, wedgeDeg: -2.5 });
    const wedge = frontWedge(foot);
    if (wedge.kind !== 'wedge') throw new Error(`it is ${wedge.kind}`);
    const xs = wedge.profile.map(([x]) => x);
    expect(Math.max(...xs)).toBeCloseTo(12 / Math.tan(2.5 * DEG), 4);
  });
});
