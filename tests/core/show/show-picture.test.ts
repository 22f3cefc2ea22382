import { describe, expect, it } from 'vitest';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { type ShowShape, type ShowView, showPicture } from '../../../core/show/show-picture.ts';
import { blendScenes, type ShowScene, showScene } from '../../../core/show/show-scene.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../example/example-fit.ts';
import { valuesOf } from '../example/values-of.ts';

const VIEWS: readonly ShowView[] = ['side', 'behind', 'above'];

function sceneOf(fit: Fit): ShowScene {
  return showScene(fit, valuesOf(fit), 0)!;
}

const fit = exampleFit();
const hull = hullOfBoat(fit.boat);
const padBack = exampleFit([
  exampleSeat({ kneePad: { ...exampleSeat().kneePad, aftM: 0.275, heightM: 0.15 } }),
]);
const pointsOf = (shapes: readonly ShowShape[], tone?: string) =>
  shapes.filter((shape) => !tone || shape.tone === tone).flatMap(({ rings }) => rings.flat());

describe('the picture of a paddler', () => {
  it('is none for an empty seat', () => {
    const empty = exampleFit([exampleSeat({ athlete: null })]);
    expect(showScene(empty, valuesOf(empty), 0)).toBeNull();
  });

  it.each(VIEWS)('from the %s is drawn of finite points and closed areas', (view) => {
    const shapes = showPicture(sceneOf(fit), hull, view);
    for (const [x, y] of pointsOf(shapes)) {
      expect(Number.isFinite(x)).toBe(true);
      expect(Number.isFinite(y)).toBe(true);
    }
    for (const { kind, rings } of shapes) {
      for (const ring of rings) expect(ring.length).toBeGreaterThanOrEqual(kind === 'area' ? 3 : 2);
    }
  });

  it('is as tall as the figure, standing on the floorboard of the boat', () => {
    const scene = sceneOf(fit);
    const tops = pointsOf(showPicture(scene, hull, 'side'), 'trunk').map(([, y]) => y);
    expect(Math.max(...tops)).toBeCloseTo(scene.points.headTop.z, 1);
  });

  it('has the pad where it is set: its aft edge and its top', () => {
    const wood = showPicture(sceneOf(fit), hull, 'side').filter(({ tone }) => tone === 'wood');
    const [pad] = wood;
    const heights = pad!.rings[0]!.map(([, y]) => y);
    const { heightM, recessDepthM } = fit.seats[0]!.kneePad;
    expect(Math.max(...heights)).toBeCloseTo(fit.boat.floorboard.heightM + heightM + recessDepthM, 9);
    expect(Math.min(...heights)).toBeCloseTo(fit.boat.floorboard.heightM, 9);
  });

  it('is the mirror image from behind and from above for the other side', () => {
    const right = exampleFit([exampleSeat({ side: 'right', athlete: exampleAthlete({ side: 'right' }) })]);
    const widest = (f: Fit, sign: number) =>
      Math.max(...pointsOf(showPicture(sceneOf(f), hull, 'behind'), 'blade').map(([x]) => sign * x));
    expect(widest(right, 1)).toBeCloseTo(widest(fit, -1), 6);
  });

  it('says nothing of anyone’s weight: a heavier paddler of the same stature is drawn alike', () => {
    const figure = (massKg: number) => {
      const scene = sceneOf(exampleFit([exampleSeat({ athlete: exampleAthlete({ massKg }) })]));
      const [x, y] = pointsOf(showPicture(scene, hull, 'side'), 'trunk').reduce(
        ([low, high], [px]) => [Math.min(low, px), Math.max(high, px)],
        [Infinity, -Infinity],
      );
      return y - x;
    };
    expect(Math.abs(figure(95) - figure(65))).toBeLessThan(0.02);
  });
});

describe('a picture between before and now', () => {
  const [from, to] = [sceneOf(fit), sceneOf(padBack)];

  it('is the one at one end and the other at the other', () => {
    expect(blendScenes(from, to, 0)).toBe(from);
    expect(blendScenes(from, to, 1)).toBe(to);
  });

  it('moves every joint evenly in between', () => {
    const half = blendScenes(from, to, 0.5);
    for (const name of ['kneelingKnee', 'headTop', 'frontKnee'] as const) {
      for (const axis of ['x', 'y', 'z'] as const) {
        const middle = (from.points[name][axis] + to.points[name][axis]) / 2;
        expect(half.points[name][axis]).toBeCloseTo(middle, 12);
      }
    }
    expect(half.seat.kneePad.aftM).toBeCloseTo(0.225, 12);
    expect(half.frame.side).toBe('left');
  });

  it('always has the same shapes, so that it can move without a jump', () => {
    const counts = [0, 0.01, 0.5, 0.99, 1].map((t) =>
      showPicture(blendScenes(from, to, t), hull, 'side').reduce((sum, { rings }) => sum + rings.length, 0),
    );
    expect(new Set(counts).size).toBe(1);
  });

  it('survives a boat that does not float in one of the two', () => {
    const sunk = { ...to, water: null };
    expect(blendScenes(from, sunk, 0.4).water).toEqual(from.water);
    expect(blendScenes(from, sunk, 0.6).water).toBeNull();
  });
});
