import { describe, expect, it } from 'vitest';
import { toFloor } from '../../../core/setout/block-frame.ts';
import { padBlock, padCorners } from '../../../core/setout/pad-block.ts';
import { inventedSetOut } from './invented-set-out.ts';
import { areaOf, distance } from './read-shapes.ts';

const DEG = Math.PI / 180;
const left = inventedSetOut();
const right = inventedSetOut({ side: 'right' });

describe('the pad block', () => {
  it('has the knee’s bearing point where it is set: 175 aft, 35 to the kneeling side', () => {
    expect(left.fittings.pad.place.origin).toEqual([-175, 35]);
    expect(right.fittings.pad.place.origin).toEqual([-175, -35]);
  });

  it('is as long, as wide and as high as it is set', () => {
    const { pad } = left.fittings;
    expect(pad.foreEnd - pad.aftEnd).toBeCloseTo(260, 9);
    expect(2 * pad.halfWidth).toBeCloseTo(160, 9);
    expect(pad.bearingHeight).toBeCloseTo(110, 9);
    expect(pad.topHeight).toBeCloseTo(130, 9);
  });

  it('turns its aft end away from the kneeling side by the recess’s turn', () => {
    const aftMiddle = toFloor(left.fittings.pad.place, [left.fittings.pad.aftEnd, 0]);
    const [x, y] = left.fittings.pad.place.origin;
    expect(Math.atan2(y - aftMiddle[1], x - aftMiddle[0]) / DEG).toBeCloseTo(12, 9);
    const other = toFloor(right.fittings.pad.place, [right.fittings.pad.aftEnd, 0]);
    expect(other[0]).toBeCloseTo(aftMiddle[0], 9);
    expect(other[1]).toBeCloseTo(-aftMiddle[1], 9);
  });

  it('has four corners of right angles going round', () => {
    const corners = padCorners(left.fittings.pad);
    expect(Math.abs(areaOf(corners))).toBeCloseTo(260 * 160, 6);
    expect(distance(corners[0]!, corners[2]!)).toBeCloseTo(Math.hypot(260, 160), 9);
    expect(distance(corners[1]!, corners[3]!)).toBeCloseTo(Math.hypot(260, 160), 9);
    expect(corners.map(([, y]) => Math.sign(y))).toEqual([1, -1, -1, 1]);
  });

  it('knows how far the shank lies off the recess’s axis: what the ankle shows, less the turn', () => {
    for (const { work, fittings } of [left, right]) {
      const { kneelingKnee, kneelingAnkle } = work.solved.stances.ready.points;
      const lies = Math.atan2(kneelingKnee.y - kneelingAnkle.y, kneelingKnee.x - kneelingAnkle.x);
      expect(fittings.pad.shankOffAxis + fittings.pad.place.turn).toBeCloseTo(lies, 9);
    }
  });

  it('follows a recess that is turned further', () => {
    const { seat } = left.work;
    const turned = { ...seat, kneePad: { ...seat.kneePad, recessTurnDeg: 20 } };
    const pad = padBlock({ ...left.work, seat: turned });
    expect(pad.place.turn).toBeCloseTo(20 * DEG, 12);
    expect(pad.shankOffAxis - left.fittings.pad.shankOffAxis).toBeCloseTo(-8 * DEG, 9);
  });
});
