import { describe, expect, it } from 'vitest';
import { stripPlace } from '../../../../renderer/drawing/layers/strip.ts';
import { afloatReady } from '../../../../renderer/drawing/view/scene.ts';
import { exampleFit, exampleSeat } from '../../../core/example/example-fit.ts';
import { notEmpty } from '../../../not-empty.ts';
import { drawnScene } from '../view/drawn-scene.ts';

describe('the strip afloat', () => {
  it('holds the higher end of a tilted boat, however far the pad goes aft', () => {
    const rises = [0.1, 0.3, 0.5].map((aftM) => {
      const fit = exampleFit([exampleSeat({ kneePad: { ...exampleSeat().kneePad, aftM } })]);
      const scene = drawnScene(fit, { width: 1464, height: 1030 }, { showing: 'boat' });
      const { pixelsPerMetre, times, waterY } = stripPlace(scene);
      const { trim, draft } = afloatReady(scene.picture)!;
      const rise = times * Math.tan(Math.abs(trim)) * (scene.lines.hull.length / 2);
      expect(waterY - pixelsPerMetre * (scene.lines.sheerTop - draft + rise)).toBeGreaterThan(
        scene.layout.strip.top,
      );
      return times * Math.abs(trim);
    });
    expect(Math.max(...notEmpty(rises))).toBeGreaterThan(0.02);
  });
});
