import { describe, expect, it } from 'vitest';
import { showScene } from '../../../../core/show/show-scene.ts';
import { BODY_PLACES } from '../../../../core/trial/observation.ts';
import { PLACES_AFT, PLACES_FORWARD, placeInView } from '../../../../renderer/pages/trial/figure-places.ts';
import { exampleFit, exampleSeat } from '../../../core/example/example-fit.ts';
import { valuesOf } from '../../../core/example/values-of.ts';
import { notEmpty } from '../../../not-empty.ts';

describe('places on the figure', () => {
  const fits = [exampleFit(), exampleFit([exampleSeat({ side: 'right' })])];
  const scenes = fits.map((fit) => showScene(fit, valuesOf(fit), 0)!);

  it('are all named once', () => {
    expect([...PLACES_AFT, ...PLACES_FORWARD].sort()).toEqual([...BODY_PLACES].sort());
  });

  it.each(BODY_PLACES)('%s lies on the figure and not on another place', (place) => {
    for (const scene of notEmpty(scenes)) {
      const [forward, up] = placeInView(scene, place);
      expect(Math.abs(forward)).toBeLessThan(1);
      expect(up).toBeGreaterThan(-0.05);
      expect(up).toBeLessThan(1.3);
      for (const other of BODY_PLACES) {
        if (other === place) continue;
        const at = placeInView(scene, other);
        expect(Math.hypot(at[0] - forward, at[1] - up), other).toBeGreaterThan(0.03);
      }
    }
  });

  it('stand in the order of the body: toes aft of the knee, foot ahead of it, back above the hip', () => {
    for (const scene of notEmpty(scenes)) {
      const at = (place: (typeof BODY_PLACES)[number]) => placeInView(scene, place);
      expect(at('rearToes')[0]).toBeLessThan(at('kneelingShin')[0]);
      expect(at('kneelingShin')[0]).toBeLessThan(at('kneelingKnee')[0]);
      expect(at('frontFoot')[0]).toBeGreaterThan(at('kneelingKnee')[0]);
      expect(at('lowerBack')[1]).toBeGreaterThan(at('kneelingHip')[1]);
    }
  });

  it('are the same from the side whichever knee is knelt on', () => {
    for (const place of BODY_PLACES) {
      const [left, right] = scenes.map((scene) => placeInView(scene, place));
      expect(left![0]).toBeCloseTo(right![0], 9);
      expect(left![1]).toBeCloseTo(right![1], 9);
    }
  });
});
