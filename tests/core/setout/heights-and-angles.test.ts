import { describe, expect, it } from 'vitest';
import { ANGLES, type AngleName, HEIGHTS, type HeightName } from '../../../core/setout/heights-and-angles.ts';
import { ANGLE_TOLERANCE_DEG, HEIGHT_TOLERANCE_MM } from '../../../core/setout/tolerances.ts';
import { inventedSetOut, ON_A_WEDGE, type Wanted } from './invented-set-out.ts';

const DEG = Math.PI / 180;
const flat = inventedSetOut();
const wedged = inventedSetOut({ seat: { frontFoot: ON_A_WEDGE } });

const height = (name: HeightName, out = flat) => out.heights.find((row) => row.height === name);
const angle = (name: AngleName, out = flat) => out.angles.find((row) => row.angle === name)!;

describe('heights over the floorboard', () => {
  it('are those of pad, foam and rest: 130, 110, 100, 50', () => {
    const heights = flat.heights.map((row) => [row.height, row.aboveFloorMm]);
    expect(heights).toEqual([
      ['padTop', 130],
      ['recessBottom', 110],
      ['woodUnderFoam', 100],
      ['restEdge', 50],
    ]);
    for (const { toleranceMm } of flat.heights) expect(toleranceMm).toBe(HEIGHT_TOLERANCE_MM);
  });

  it('are proved by another length: the recess’s depth, the foam, the slope of the face', () => {
    expect(height('recessBottom')!.check).toEqual({ how: 'straightedge', lengthMm: 20 });
    expect(height('woodUnderFoam')!.check).toEqual({ how: 'foam', lengthMm: 10 });
    expect(height('restEdge')!.check).toEqual({
      how: 'slope',
      lengthMm: Math.round(50 / Math.sin(60 * DEG)),
    });
  });

  it('add up: wood under the foam and foam are the recess’s bottom; with its depth the block’s top', () => {
    for (const foamM of [0.005, 0.01, 0.0154]) {
      const out = inventedSetOut({ options: { foamM } });
      const wood = height('woodUnderFoam', out)!;
      expect(wood.aboveFloorMm + wood.check.lengthMm).toBe(height('recessBottom', out)!.aboveFloorMm);
      const bottom = height('recessBottom', out)!;
      expect(bottom.aboveFloorMm + bottom.check.lengthMm).toBe(height('padTop', out)!.aboveFloorMm);
    }
  });

  it('leave out foam where there is none, and heel and toes where the foot stands on the floor', () => {
    const bare = inventedSetOut({ options: { foamM: 0 } });
    expect(height('woodUnderFoam', bare)).toBeUndefined();
    expect(height('heel')).toBeUndefined();
    expect(HEIGHTS.filter((name) => height(name, wedged)).length).toBe(HEIGHTS.length);
  });

  it('of a foot on a wedge are heel and, by the sine of its slope, toes', () => {
    const toes = Math.round(10 + wedged.fittings.foot.length * Math.sin(5 * DEG));
    expect(height('heel', wedged)!.aboveFloorMm).toBe(10);
    expect(height('toes', wedged)!.aboveFloorMm).toBe(toes);
    expect(height('toes', wedged)!.check).toEqual({ how: 'ends', lengthMm: toes - 10 });
  });
});

describe('angles', () => {
  it('are all there, to a tenth, within what a bevel holds', () => {
    expect(flat.angles.map((row) => row.angle)).toEqual([...ANGLES]);
    for (const row of flat.angles) {
      expect(row.deg).toBe(Math.round(row.deg * 10) / 10);
      expect(row.toleranceDeg).toBe(ANGLE_TOLERANCE_DEG);
    }
  });

  it('are the same with a tape by the tangent: 12° is 43 aside over 200, 20° is 73', () => {
    expect(angle('padTurn')).toMatchObject({
      deg: 12,
      overMm: 200,
      byMm: Math.round(200 * Math.tan(12 * DEG)),
    });
    expect(angle('padTurn').byMm).toBe(43);
    expect(angle('restTurn')).toMatchObject({ deg: 20, overMm: 200, byMm: 73 });
  });

  it('are laid off over eight inches where an inch tape is used', () => {
    const inches = inventedSetOut({ options: { units: 'in' } });
    expect(angle('padTurn', inches).overMm).toBeCloseTo(8 * 25.4, 9);
  });

  it('steeper than 45° are laid off the other way round', () => {
    const out = inventedSetOut({ seat: { rearRest: { ...flat.work.seat.rearRest, turnDeg: 60 } } });
    const { overMm, byMm } = angle('restTurn', out);
    expect(byMm).toBe(200);
    expect(overMm).toBe(Math.round(200 / Math.tan(60 * DEG)));
  });

  it('of the rest’s face is its height over what lies ahead of its edge', () => {
    const { deg, byMm, overMm } = angle('restTilt');
    expect(deg).toBe(60);
    expect(byMm).toBe(50);
    expect(overMm).toBe(Math.round(50 / Math.tan(60 * DEG)));
  });

  it('of the foot’s slope is toes over heel on the length of its shadow', () => {
    const { deg, byMm, overMm } = angle('footWedge', wedged);
    expect(deg).toBe(5);
    const { length } = wedged.fittings.foot;
    expect(overMm).toBe(Math.round(length * Math.cos(5 * DEG)));
    expect(byMm).toBe(Math.round(length * Math.sin(5 * DEG)));
  });

  it('turn toward the side where the mark shows them: the aft end of pad and rest, the toes of the foot', () => {
    const left: Wanted = { seat: { frontFoot: ON_A_WEDGE } };
    for (const [wanted, aftEnd, toes] of [
      [left, 'right', 'right'],
      [{ ...left, side: 'right' }, 'left', 'left'],
    ] as const) {
      const out = inventedSetOut(wanted);
      expect(angle('padTurn', out).toward).toBe(aftEnd);
      expect(angle('restTurn', out).toward).toBe(aftEnd);
      expect(angle('footTurn', out).toward).toBe(toes);
      const mark = (name: string) => out.marks.find((m) => m.name === name)!;
      const aft = (mark('P3').portMm + mark('P4').portMm) / 2;
      expect(aft < mark('K').portMm).toBe(aftEnd === 'right');
      expect(mark('T').portMm < mark('F').portMm).toBe(toes === 'right');
    }
  });

  it('straight fore and aft turn toward no side', () => {
    const straight = inventedSetOut({ seat: { kneePad: { ...flat.work.seat.kneePad, recessTurnDeg: 0 } } });
    expect(angle('padTurn', straight)).toMatchObject({ deg: 0, toward: null, byMm: 0 });
  });
});
