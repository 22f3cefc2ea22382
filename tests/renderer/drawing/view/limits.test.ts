import { describe, expect, it } from 'vitest';
import type { Fit } from '../../../../core/document/fit-schema.ts';
import { dragLimits } from '../../../../renderer/drawing/view/limits.ts';
import { exampleFit, exampleSeat } from '../../../core/example/example-fit.ts';
import { valuesOf } from '../../../core/example/values-of.ts';

const limits = (coordinate: Parameters<typeof dragLimits>[0], fit: Fit = exampleFit()) =>
  dragLimits(coordinate, { fit, report: valuesOf(fit), seat: 0 });

describe('the limits of a coordinate', () => {
  it('carries the band that its finding was judged by', () => {
    expect(limits('kneePad.aftM')).toMatchObject({ bandLeast: 0.15, bandMost: 0.2 });
  });

  it('carries the coach’s own band when there is one', () => {
    const own = { quantity: 'padAft', min: 0.16, max: 0.24, reason: 'long thighs' };
    expect(limits('kneePad.aftM', exampleFit([exampleSeat({ bands: [own] })]))).toMatchObject({
      bandLeast: 0.16,
      bandMost: 0.24,
    });
  });

  it('speaks degrees for turns', () => {
    const { bandLeast, bandMost } = limits('rearRest.turnDeg');
    expect(bandLeast).toBeCloseTo(15, 9);
    expect(bandMost).toBeCloseTo(25, 9);
  });

  it('ends where the hardware ends, whichever way its travel was written', () => {
    const fit = exampleFit();
    const hardware = { ...fit.boat.hardware, padTravelM: [0.35, 0.05] as [number, number] };
    expect(limits('kneePad.aftM', { ...fit, boat: { ...fit.boat, hardware } })).toMatchObject({
      least: 0.05,
      most: 0.35,
    });
  });

  it('keeps the lower hand on the shaft, above the blade', () => {
    const { most } = limits('paddle.lowerHandM');
    expect(most).toBeCloseTo(1.1, 9);
  });

  it('leaves no blade as long as its paddle: a hand has room over it', () => {
    const { lengthM, bladeLengthM } = exampleFit().seats[0]!.paddle;
    expect(limits('paddle.bladeLengthM').most).toBeCloseTo(Math.min(1.2, lengthM - 0.2), 9);
    expect(limits('paddle.lengthM').least).toBeCloseTo(Math.max(0.8, bladeLengthM + 0.2), 9);
    const short = exampleFit();
    const seats = short.seats.map((seat) => ({ ...seat, paddle: { ...seat.paddle, lengthM: 1 } }));
    expect(limits('paddle.bladeLengthM', { ...short, seats }).most).toBeCloseTo(0.8, 9);
  });
});
