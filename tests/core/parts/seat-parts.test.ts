import { describe, expect, it } from 'vitest';
import { partsOf } from '../../../core/evaluation/parts-of.ts';
import type { Part, PartName } from '../../../core/parts/part.ts';
import { exampleFit, exampleSeat } from '../example/example-fit.ts';

const turned = exampleSeat();
const fit = exampleFit([turned]);
const rad = (deg: number) => (deg * Math.PI) / 180;

function partOf(name: PartName, of = fit): Part {
  return partsOf(of).find(({ part }) => part === name)!;
}

/** The least and greatest of a coordinate among points. */
const range = (values: readonly number[]) => [Math.min(...values), Math.max(...values)] as const;

describe('partsOf', () => {
  it('gives pad, rest and front foot of every seat, bow first', () => {
    const crew = partsOf(exampleFit([exampleSeat(), exampleSeat({ side: 'right' })]));
    expect(crew.map(({ seat, part }) => [seat, part])).toEqual([
      [0, 'kneePad'],
      [0, 'rearRest'],
      [0, 'frontFoot'],
      [1, 'kneePad'],
      [1, 'rearRest'],
      [1, 'frontFoot'],
    ]);
  });

  it('stands the pad on the floorboard, its top the rim of the recess, turned about the bearing point', () => {
    const { aftM, outM, heightM, recessDepthM, recessTurnDeg, lengthM, widthM } = turned.kneePad;
    const pad = partOf('kneePad');
    const floor = fit.boat.floorboard.heightM;
    expect(range(pad.vertices.map(({ z }) => z))).toEqual([floor, floor + (heightM + recessDepthM)]);
    // The fore port corner by hand: ahead by 45 % of the length, to port by half the width, turned.
    const [ahead, half] = [0.45 * lengthM, widthM / 2];
    const turn = rad(recessTurnDeg);
    const station = fit.boat.seats[0]!.stationM;
    expect(pad.vertices[0]!.x).toBeCloseTo(
      station - aftM + ahead * Math.cos(turn) - half * Math.sin(turn),
      12,
    );
    expect(pad.vertices[0]!.y).toBeCloseTo(outM + ahead * Math.sin(turn) + half * Math.cos(turn), 12);
  });

  it('slopes the rest’s face from the floorboard up and aft to its bearing edge', () => {
    const { heightM, tiltDeg } = turned.rearRest;
    const { shape } = partOf('rearRest');
    expect(shape.topFore).toBe(0);
    expect(shape.baseFore).toBeCloseTo(heightM / Math.tan(rad(tiltDeg)), 12);
    expect(shape.topAft).toBe(shape.baseAft);
  });

  it('raises heel and toes of the front foot by its height and wedge', () => {
    const seat = { ...turned, frontFoot: { ...turned.frontFoot, heightM: 0.03, wedgeDeg: 10 } };
    const foot = partOf('frontFoot', exampleFit([seat]));
    const length = foot.shape.baseFore / Math.cos(rad(10));
    const floor = fit.boat.floorboard.heightM;
    expect(foot.vertices[7]!.z).toBeCloseTo(floor + 0.03, 12);
    expect(foot.vertices[4]!.z).toBeCloseTo(floor + 0.03 + length * Math.sin(rad(10)), 12);
  });

  it('carries each hole from under the board up into the wood', () => {
    const { heightM, thicknessM } = fit.boat.floorboard;
    for (const { holes } of partsOf(fit)) {
      for (const { from, to, diameterM } of holes) {
        expect(from.z).toBeLessThan(heightM - thicknessM);
        expect(to.z).toBeGreaterThan(heightM);
        expect([from.x, from.y]).toEqual([to.x, to.y]);
        expect(diameterM).toBeGreaterThan(0);
      }
    }
    expect(partsOf(fit).map(({ holes }) => holes.length)).toEqual([4, 2, 0]);
  });

  it('puts bolts straight across, on the board where the block leaves room for that', () => {
    const hardware = { ...fit.boat.hardware, padHolePitchM: 0.01, restHolePitchM: 0.01 };
    const seat = { ...turned, kneePad: { ...turned.kneePad, outM: 0.09, recessTurnDeg: 0 } };
    const narrow = exampleFit([seat]);
    const pad = partOf('kneePad', { ...narrow, boat: { ...narrow.boat, hardware } });
    const ys = pad.holes.map(({ from }) => from.y);
    expect(ys[0]).toBeCloseTo(narrow.boat.floorboard.widthM / 2 - 0.012, 12);
    expect(ys[1]).toBeCloseTo(0.09 - 0.045, 12);
  });

  it('mirrors to the last bit that matters', () => {
    const other = exampleFit([{ ...turned, side: 'right' }]);
    const flat = ({ vertices }: Part) =>
      vertices
        .map(({ x, y, z }) =>
          [x, y, z].map((v) => v.toFixed(12).replace('-0.000000000000', '0.000000000000')).join(),
        )
        .sort();
    for (const name of ['kneePad', 'rearRest', 'frontFoot'] as const) {
      const mirrored = partOf(name, other).vertices.map((v) => ({ ...v, y: -v.y }));
      expect(flat({ ...partOf(name), vertices: mirrored })).toEqual(flat(partOf(name)));
    }
  });
});

describe('a pad on rails', () => {
  const onRails = (apartM: number) => {
    const rails = [{ fitting: 'kneePad' as const, apartM, heightM: 0.012, holeM: 0.008 }];
    const { boat } = fit;
    return partOf('kneePad', { ...fit, boat: { ...boat, hardware: { ...boat.hardware, rails } } });
  };

  it('is bolted in both rails straight across under the knee, from the board up, 30 mm into its wood', () => {
    const { holes } = onRails(0.06);
    const { heightM } = fit.boat.floorboard;
    const station = fit.boat.seats[0]!.stationM - turned.kneePad.aftM;
    expect(holes.map(({ from }) => [from.x, from.y])).toEqual([
      [station, 0.03],
      [station, -0.03],
    ]);
    for (const { from, to, diameterM, throughBoard } of holes) {
      expect(diameterM).toBe(0.008);
      expect(throughBoard).toBe(false);
      expect(from.z).toBeCloseTo(heightM, 9);
      expect(to.z).toBeCloseTo(heightM + 0.012 + 0.03, 9);
    }
  });

  it('has no bolt in a rail that does not run under it', () => {
    expect(onRails(0.3).holes).toEqual([]);
  });
});
