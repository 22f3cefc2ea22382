import { describe, expect, it } from 'vitest';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { innerSkin } from '../../../core/hull/inner-skin.ts';
import { onPart } from '../../../core/parts/part.ts';
import { finishedBlock, recessDepthBlock } from '../../../core/setout/finished-block.ts';
import { hollowLevel, recessStations } from '../../../core/setout/recess-floor.ts';
import { setOutSeat } from '../../../core/setout/set-out.ts';
import { sheetBlocks } from '../../../core/setout/sheet-blocks.ts';
import { templatesOf } from '../../../core/setout/templates.ts';
import { workParts } from '../../../core/setout/work-parts.ts';
import { cases } from '../../cases.ts';
import { english } from '../../english.ts';
import { valuesOf } from '../example/values-of.ts';
import { inventedFit, inventedSetOut } from './invented-set-out.ts';
import { areaOf, linesOn, textsOf } from './read-shapes.ts';

const out = inventedSetOut();

function withBoat(change: (boat: Fit['boat']) => Fit['boat']) {
  const fit = inventedFit();
  const changed = { ...fit, boat: change(fit.boat) };
  return setOutSeat({
    fit: changed,
    report: valuesOf(changed),
    index: 0,
    options: { units: 'mm' },
    words: english,
  })!;
}

describe('a block’s base', () => {
  // A pad far out on a low board: the hull's side cuts into its base.
  const far = inventedSetOut({ seat: { kneePad: { ...out.work.seat.kneePad, outM: 0.12 } } });

  it('follows the hull’s inner face where that is higher, point by point', () => {
    const { boat, frame } = far.work;
    const distance = innerSkin(hullOfBoat(boat), boat.skinM);
    const { place } = workParts(far.work).kneePad;
    let cut = 0;
    for (const { along, bed, base } of [far.bases.kneePad.fore, far.bases.kneePad.aft]) {
      for (const [across, height] of base) {
        const at = onPart(place, along / 1000, across / 1000);
        const inside = distance({ ...at, z: frame.floorZ + height / 1000 });
        if (height > bed && height < far.fittings.pad.topHeight) {
          cut += 1;
          expect(Math.abs(inside)).toBeLessThan(2e-6);
        }
      }
    }
    expect(cut).toBeGreaterThan(5);
  });

  it('has a template of each end with the hull’s section on a layer of its own, and only where it is cut', () => {
    const ids = (of: typeof out) => templatesOf(of).map(({ id }) => id);
    const ends = templatesOf(far).find(({ id }) => id === 'pad-ends')!;
    expect(linesOn(ends.shapes, 'outline')).toHaveLength(2);
    expect(linesOn(ends.shapes, 'hull').length).toBeGreaterThan(0);
    expect(textsOf(ends.shapes)).toEqual(
      expect.arrayContaining(['FORE END', 'AFT END', 'port', 'starboard']),
    );
    const wide = withBoat((boat) => ({ ...boat, floorboard: { ...boat.floorboard, heightM: 0.15 } }));
    expect(wide.bases.kneePad.cutMm === 0).toBe(!ids(wide).includes('pad-ends'));
  });

  it('stands on its rails: the finished block is lower by them, and the heights over the board stay', () => {
    const rails = [{ fitting: 'kneePad', apartM: 0.1, heightM: 0.012, holeM: 0.006 }] as const;
    const raised = withBoat((boat) => ({ ...boat, hardware: { ...boat.hardware, rails: [...rails] } }));
    const cells = (of: typeof out) => {
      const block = sheetBlocks(of).find(({ heading }) => heading.startsWith('Finished sizes'))!;
      return block.kind === 'table' ? block.cells : [];
    };
    expect(cells(out)[0]).toEqual(['Pad block', '260', '160', '130', '130']);
    expect(cells(raised)[0]).toEqual(['Pad block', '260', '160', '118', '118']);
    expect(cells(raised)[1]!.at(-1)).toBe('88');
    expect(raised.heights.find(({ height }) => height === 'padTop')!.aboveFloorMm).toBe(130);
  });

  it('follows a board that slopes: fore and aft end have heights of their own', () => {
    const profile = [
      { xM: -1, heightM: 0.02 },
      { xM: 1, heightM: 0.06 },
    ];
    const sloping = withBoat((boat) => ({ ...boat, floorboard: { ...boat.floorboard, profile } }));
    const { bedFore, bedAft, foreEnd, aftEnd, place } = sloping.fittings.pad;
    // The board rises by 20 mm over a metre.
    const fall = 0.02 * (foreEnd - aftEnd) * Math.cos(place.turn);
    expect(bedFore - bedAft).toBeCloseTo(fall, 6);
    const [, profileRing] = linesOn(
      templatesOf(sloping).find(({ id }) => id === 'pad-block')!.shapes,
      'outline',
    );
    const ys = profileRing!.points.map(([, y]) => y);
    expect(ys[0]! - ys[3]!).toBeCloseTo(fall, 6);
  });
});

describe('the recess’s depths', () => {
  const { recess } = out.fittings.pad;

  it('are those of the ellipsoid that a knee is drawn as, ahead of the knee', () => {
    for (const [x, y] of [
      [0, 0],
      [0, 20],
      [10, 10],
      [20, 0],
    ] as const) {
      const { kneeDepth, halfBreadth, depth } = recess;
      const rest = 1 - (x / kneeDepth) ** 2 - (y / halfBreadth) ** 2;
      const level = Math.min(depth, kneeDepth * (1 - Math.sqrt(Math.max(0, rest))));
      expect(hollowLevel(recess, [x, y], 0)).toBeCloseTo(level, 4);
    }
  });

  it('are printed at stations: the whole depth at K, and the foam more in the wood', () => {
    const knee = recessStations(recess, 10).find(({ along }) => along === 0)!;
    expect(knee.depths[0]).toMatchObject({ across: 0 });
    expect(knee.depths[0]!.finished).toBeCloseTo(20, 4);
    expect(knee.depths[0]!.wood).toBeCloseTo(30, 4);
    const block = recessDepthBlock(out)!;
    const row = block.kind === 'table' ? block.cells.find(([station]) => station === 'K')! : [];
    expect(row[1]).toBe('30 / 20');
  });
});

describe('contours for a cutter', () => {
  it('are closed, finished and wood on layers of their own, with their depths written', () => {
    const { shapes } = templatesOf(out).find(({ id }) => id === 'pad-recess')!;
    for (const layer of ['recess', 'foamCut', 'depthLine', 'woodLine'] as const) {
      const lines = linesOn(shapes, layer);
      expect(lines.length).toBeGreaterThan(0);
      for (const { closed, points } of lines) {
        expect(closed).toBe(true);
        expect(Math.abs(areaOf(points))).toBeGreaterThan(100);
      }
    }
    expect(textsOf(shapes)).toEqual(expect.arrayContaining(['5', '10', '15', '20', '25']));
  });
});

describe('every template', () => {
  it('says which knee, which face is up, and where port lies', () => {
    for (const side of ['left', 'right'] as const) {
      for (const { facing } of templatesOf(inventedSetOut({ side }))) {
        expect(facing).toContain(side === 'left' ? 'LEFT KNEE' : 'RIGHT KNEE');
        expect(facing).toMatch(/up/);
        expect(facing).toMatch(/port/);
      }
    }
  });
});

describe('an inch sheet', () => {
  it('agrees with itself: every check is the distance between the marks as they are printed', () => {
    for (let k = 0; k < cases(2, 30); k++) {
      const pad = { ...out.work.seat.kneePad, aftM: 0.12 + 0.0037 * k, outM: 0.02 + 0.0011 * k };
      const inch = inventedSetOut({ seat: { kneePad: pad }, options: { units: 'in' } });
      const grain = 25.4 / 32;
      const at = (name: string) => inch.marks.find((mark) => mark.name === name)!;
      for (const { forwardMm } of inch.marks) {
        expect(forwardMm / grain).toBeCloseTo(Math.round(forwardMm / grain), 6);
      }
      for (const { from, to, lengthMm } of inch.checks) {
        const [a, b] = [at(from), at(to)];
        const between = Math.hypot(a.forwardMm - b.forwardMm, a.portMm - b.portMm);
        expect(Math.abs(between - lengthMm)).toBeLessThanOrEqual(grain / 2 + 1e-9);
      }
      const height = (name: string) => inch.heights.find((row) => row.height === name)!;
      const depth = height('padTop').aboveFloorMm - height('recessBottom').aboveFloorMm;
      expect(height('recessBottom').check.lengthMm).toBeCloseTo(depth, 9);
    }
  });
});

it('a block on a board that rises forward is cut lower at its fore end, by the board’s rise under each end', () => {
  const fit = inventedFit();
  const profile = [-1, 1].map((xM) => ({ xM, heightM: 0.06 + 0.1 * xM }));
  const seat = fit.seats[0]!;
  const straight = { ...seat, kneePad: { ...seat.kneePad, recessTurnDeg: 0 } };
  const boat = { ...fit.boat, floorboard: { ...fit.boat.floorboard, profile } };
  const sloped = { ...fit, boat, seats: [straight] };
  const given = { fit: sloped, report: valuesOf(sloped), index: 0, options: { units: 'mm' as const } };
  const block = finishedBlock(setOutSeat({ ...given, words: english })!);
  const [long, , fore, aft] = (block.kind === 'table' ? block.cells[0]! : []).slice(1);
  // The pad is 260 long, 117 of it ahead of the knee; the mark at the boat's middle. Its top is 130 over the mark.
  const bed = (x: number) => 100 * x;
  expect(long).toBe('260');
  expect(Number(fore)).toBeCloseTo(130 - bed(-0.175 + 0.117), -0.5);
  expect(Number(aft)).toBeCloseTo(130 - bed(-0.175 - 0.143), -0.5);
  expect(Number(aft)).toBeGreaterThan(Number(fore) + 20);
});
