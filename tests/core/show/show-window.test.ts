import { describe, expect, it } from 'vitest';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { evaluateFit } from '../../../core/evaluation/evaluator.ts';
import { paddleShape } from '../../../core/figure/paddle-shape.ts';
import { pointsOf, ringsOf } from '../../../core/graphics/shape.ts';
import { inView } from '../../../core/graphics/view.ts';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { SHOWN_IN, type ShowView, showPicture } from '../../../core/show/show-picture.ts';
import { showScene } from '../../../core/show/show-scene.ts';
import { showWindow } from '../../../core/show/show-window.ts';
import { strokeScenes } from '../../../core/show/stroke-scenes.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../example/example-fit.ts';
import { valuesOf } from '../example/values-of.ts';

const sceneOf = (fit: Fit) => showScene(fit, valuesOf(fit), 0)!;
const VIEWS: readonly ShowView[] = ['side', 'behind', 'above'];

const people = [
  ['a man of 1.80 m', exampleFit()],
  [
    'the other side',
    exampleFit([exampleSeat({ side: 'right', athlete: exampleAthlete({ side: 'right' }) })]),
  ],
  [
    'a child of 1.45 m',
    exampleFit([exampleSeat({ athlete: exampleAthlete({ statureM: 1.45, massKg: 38 }) })]),
  ],
  ['a man of 2.02 m', exampleFit([exampleSeat({ athlete: exampleAthlete({ statureM: 2.02, massKg: 98 }) })])],
] as const;

describe.each(people)('the window on %s', (_, fit) => {
  const scene = sceneOf(fit);

  it.each(VIEWS)('from the %s holds the whole paddler, paddle and fittings', (view) => {
    const { from, width, height } = showWindow([scene], view);
    const points = ringsOf(showPicture(scene, hullOfBoat(fit.boat), view).person).flatMap(pointsOf);
    expect(points.length).toBeGreaterThan(0);
    const [rights, ups] = [points.map(([right]) => right), points.map(([, up]) => up)];
    expect(Math.min(...rights)).toBeGreaterThan(from[0]);
    expect(Math.max(...rights)).toBeLessThan(from[0] + width);
    expect(Math.min(...ups)).toBeGreaterThan(from[1]);
    expect(Math.max(...ups)).toBeLessThan(from[1] + height);
  });
});

describe('the window on a whole stroke', () => {
  const fit = exampleFit();
  const { scenes } = strokeScenes({ fit, report: evaluateFit(fit) }, 0, 24)!;

  it.each(VIEWS)('from the %s holds the blade on its way back to the catch too', (view) => {
    const { from, width, height } = showWindow(scenes, view);
    const points = scenes.flatMap(({ seat, points: { topHand: top, lowerHand: lower } }) =>
      paddleShape(seat.paddle, { top, lower })!.blade.map((point) => inView(SHOWN_IN[view], point)),
    );
    expect(points.length).toBeGreaterThan(24);
    for (const [right, up] of points) {
      expect(Math.abs(right - from[0] - width / 2)).toBeLessThan(width / 2);
      expect(Math.abs(up - from[1] - height / 2)).toBeLessThan(height / 2);
    }
  });
});

describe('the window on before and now', () => {
  it('is one for both: as deep as the deeper and as high as the higher of the two', () => {
    const [small, tall] = [sceneOf(people[2][1]), sceneOf(people[3][1])];
    const both = showWindow([small, tall], 'side');
    expect(both).toEqual(showWindow([tall, small], 'side'));
    const [ofSmall, ofTall] = [showWindow([small], 'side'), showWindow([tall], 'side')];
    const top = ({ from, height }: typeof both) => from[1] + height;
    expect(both.from[1]).toBe(Math.min(ofSmall.from[1], ofTall.from[1]));
    expect(top(both)).toBeCloseTo(Math.max(top(ofSmall), top(ofTall)), 9);
    expect(ofSmall.from[1]).toBeLessThan(ofTall.from[1]);
    expect(top(ofTall)).toBeGreaterThan(top(ofSmall));
  });
});
