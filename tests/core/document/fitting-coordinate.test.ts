import { describe, expect, it } from 'vitest';
import { COORDINATES, FITTING_COORDINATES } from '../../../core/document/coordinates.ts';
import {
  coordinateOf,
  endsOf,
  freeCoordinates,
  holePitch,
  withCoordinate,
} from '../../../core/document/fitting-coordinate.ts';
import { exampleBoat, exampleFit, exampleSeat } from '../example/example-fit.ts';

const fit = exampleFit([exampleSeat(), exampleSeat({ side: 'right' })]);
const withHardware = (hardware: object) => ({
  boat: { ...exampleBoat(), hardware: { ...exampleBoat().hardware, ...hardware } },
});

describe('every coordinate', () => {
  it.each(FITTING_COORDINATES)('%s reads back what was set, and nothing else is touched', (coordinate) => {
    const moved = withCoordinate(fit, { seat: 1, coordinate }, 0.123);
    expect(coordinateOf(moved.seats[1]!, coordinate)).toBe(0.123);
    expect(moved.seats[0]).toBe(fit.seats[0]);
    for (const other of FITTING_COORDINATES.filter((c) => c !== coordinate)) {
      expect(coordinateOf(moved.seats[1]!, other)).toBe(coordinateOf(fit.seats[1]!, other));
    }
  });

  it.each(FITTING_COORDINATES)(
    '%s has ends that the example lies between, and a grain finer than its scale',
    (c) => {
      const {
        usual: [least, most],
        snapStep: grain,
        moveUnit: scale,
        longestMove: reach,
      } = COORDINATES[c];
      const at = coordinateOf(exampleSeat(), c);
      expect(at).toBeGreaterThanOrEqual(least);
      expect(at).toBeLessThanOrEqual(most);
      expect(grain).toBeLessThan(scale);
      expect(scale).toBeLessThan(reach);
    },
  );
});

describe('freeCoordinates', () => {
  it('leaves out locked fittings, the lower hand and the front foot’s height', () => {
    const free = freeCoordinates(exampleSeat({ locks: ['frontFoot'] }));
    expect(free.some((c) => c.startsWith('frontFoot'))).toBe(false);
    expect(free).toContain('kneePad.aftM');
    expect(freeCoordinates(exampleSeat())).not.toContain('paddle.lowerHandM');
    expect(freeCoordinates(exampleSeat())).not.toContain('frontFoot.heightM');
  });
});

describe('holePitch', () => {
  it('is that of the pad’s or the rest’s rail, along the boat alone', () => {
    const drilled = { ...fit, ...withHardware({ padHolePitchM: 0.02, restHolePitchM: 0.03 }) };
    expect(holePitch(drilled, 'kneePad.aftM')).toBe(0.02);
    expect(holePitch(drilled, 'rearRest.aftM')).toBe(0.03);
    expect(holePitch(drilled, 'kneePad.outM')).toBeNull();
    expect(holePitch(fit, 'kneePad.aftM')).toBeNull();
  });
});

describe('endsOf', () => {
  it('is the rule’s where there is no rail', () => {
    const {
      usual: [least, most],
    } = COORDINATES['frontFoot.forwardM'];
    expect(endsOf(fit, 'frontFoot.forwardM')).toEqual({ least, most });
  });

  it('is the rail’s where it ends sooner, whichever end is named first', () => {
    const short = withHardware({ padTravelM: [0.17, 0.05], restTravelM: [0.4, 0.6] });
    expect(endsOf(short, 'kneePad.aftM')).toEqual({ least: 0.05, most: 0.17 });
    expect(endsOf(short, 'rearRest.aftM')).toEqual({ least: 0.4, most: 0.6 });
    expect(endsOf(short, 'kneePad.heightM')).toEqual(endsOf(fit, 'kneePad.heightM'));
  });

  it('is the rule’s where the rail goes on farther', () => {
    const long = withHardware({ padTravelM: [-1, 2] });
    const {
      usual: [least, most],
    } = COORDINATES['kneePad.aftM'];
    expect(endsOf(long, 'kneePad.aftM')).toEqual({ least, most });
  });
});
