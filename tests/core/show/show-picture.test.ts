import { describe, expect, it } from 'vitest';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { pointsOf, ringsOf, type Shape } from '../../../core/graphics/shape.ts';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { type ShowView, showPicture } from '../../../core/show/show-picture.ts';
import { blendScenes, type ShowScene, showScene } from '../../../core/show/show-scene.ts';
import { notEmpty } from '../../not-empty.ts';
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
const shapesOf = (scene: ShowScene, view: ShowView): Shape[] => {
  const { ground, person } = showPicture(scene, hull, view);
  return [...ground, ...person];
};
const placesOf = (shapes: readonly Shape[], of?: string) =>
  ringsOf(shapes.filter((shape) => !of || shape.of === of)).flatMap(pointsOf);

describe('the picture of a paddler', () => {
  it('is none for an empty seat', () => {
    const empty = exampleFit([exampleSeat({ athlete: null })]);
    expect(showScene(empty, valuesOf(empty), 0)).toBeNull();
  });

  it.each(VIEWS)('from the %s is drawn of finite points and closed areas', (view) => {
    for (const shape of notEmpty(shapesOf(sceneOf(fit), view))) {
      const lines = shape.kind === 'line' ? shape.lines : ringsOf([shape]);
      for (const line of lines) {
        expect(line.every(Number.isFinite)).toBe(true);
        expect(line.length).toBeGreaterThanOrEqual(shape.kind === 'area' ? 6 : 4);
      }
    }
  });

  it('is as tall as the figure, standing on the floorboard of the boat', () => {
    const scene = sceneOf(fit);
    const tops = placesOf(shapesOf(scene, 'side'), 'head').map(([, y]) => y);
    expect(Math.max(...tops)).toBeCloseTo(scene.points.headTop.z, 1);
  });

  it('has the pad where it is set: its aft edge and its top', () => {
    const heights = placesOf(shapesOf(sceneOf(fit), 'side'), 'kneePad').map(([, y]) => y);
    const { heightM, recessDepthM } = fit.seats[0]!.kneePad;
    expect(Math.max(...heights)).toBeCloseTo(fit.boat.floorboard.heightM + heightM + recessDepthM, 9);
    expect(Math.min(...heights)).toBeCloseTo(fit.boat.floorboard.heightM, 9);
  });

  it('is the mirror image from behind and from above for the other side', () => {
    const right = exampleFit([exampleSeat({ side: 'right', athlete: exampleAthlete({ side: 'right' }) })]);
    const widest = (f: Fit, sign: number) =>
      Math.max(...placesOf(shapesOf(sceneOf(f), 'behind'), 'paddle').map(([x]) => sign * x));
    expect(widest(right, 1)).toBeCloseTo(widest(fit, -1), 6);
  });

  it('says nothing of anyone’s weight: a heavier paddler of the same stature is drawn alike', () => {
    const figure = (massKg: number) => {
      const scene = sceneOf(exampleFit([exampleSeat({ athlete: exampleAthlete({ massKg }) })]));
      const [x, y] = placesOf(shapesOf(scene, 'side'), 'trunk').reduce(
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
    const counts = [0, 0.01, 0.5, 0.99, 1].map(
      (t) => ringsOf(shapesOf(blendScenes(from, to, t), 'side')).length,
    );
    expect(new Set(counts).size).toBe(1);
  });

  it('survives a boat that does not float in one of the two', () => {
    const sunk = { ...to, water: null };
    expect(blendScenes(from, sunk, 0.4).water).toEqual(from.water);
    expect(blendScenes(from, sunk, 0.6).water).toBeNull();
  });
});
