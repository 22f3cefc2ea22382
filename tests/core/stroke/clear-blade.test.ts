import { describe, expect, it } from 'vitest';
import { paddleShape } from '../../../core/figure/paddle-shape.ts';
import { norm, subtract } from '../../../core/frame/vec3.ts';
import { strokeRow } from '../../../core/stroke/stroke-cycle.ts';
import { strokeOfFit } from '../../../core/stroke/stroke-of-fit.ts';
import { exampleFit, exampleSeat } from '../example/example-fit.ts';
import { valuesOf } from '../example/values-of.ts';

describe.each(['left', 'right'] as const)('the blade of a paddler on the %s', (side) => {
  const fit = exampleFit([exampleSeat({ side })]);
  const crew = strokeOfFit(fit, valuesOf(fit));
  /** How far the blade's lowest point is over the water, metres. */
  const over = (at: number) => {
    const row = strokeRow(crew, at);
    const { points } = row.seats[0]!.stance;
    const shape = paddleShape(fit.seats[0]!.paddle, { top: points.topHand, lower: points.lowerHand })!;
    if (row.afloat.kind !== 'afloat') throw new Error('it floats');
    const { draft, trim, heel } = row.afloat;
    const water = (x: number, y: number) => draft - x * Math.tan(trim) - y * Math.tan(heel);
    return Math.min(...shape.blade.map(({ x, y, z }) => z - water(x, y)));
  };

  it('stands in the water at catch, drive, exit and ready', () => {
    for (const at of [0, 1, 1.5, 2, 3]) expect(over(at), String(at)).toBeLessThan(-0.1);
  });

  it('is out of it half way back, and half way to the catch', () => {
    for (const at of [0.5, 2.5]) expect(over(at), String(at)).toBeGreaterThan(0);
  });

  it('stays in both hands, as far apart as they are, within the reach of the arms', () => {
    const { upperArm, forearm, hand } = crew.seats[0]!.body.lengths;
    const arm = upperArm.value + forearm.value + hand.value;
    for (let at = 0; at <= 3; at += 0.25) {
      const { points } = strokeRow(crew, at).seats[0]!.stance;
      const apart = norm(subtract(points.topHand, points.lowerHand));
      expect(Math.abs(apart - fit.seats[0]!.paddle.lowerHandM)).toBeLessThan(1e-6);
      expect(norm(subtract(points.lowerHand, points.lowerShoulder))).toBeLessThan(1.02 * arm);
      expect(norm(subtract(points.topHand, points.topShoulder))).toBeLessThan(1.02 * arm);
    }
  });
});
