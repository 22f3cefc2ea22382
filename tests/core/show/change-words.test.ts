import { describe, expect, it } from 'vitest';
import { COORDINATES, FITTING_COORDINATES } from '../../../core/document/coordinates.ts';
import { coordinateOf, withSeatCoordinate } from '../../../core/document/fitting-coordinate.ts';
import { toldChanges } from '../../../core/show/change-words.ts';
import { formatOf } from '../../../core/text/format.ts';
import { english } from '../../english.ts';
import { exampleSeat } from '../example/example-fit.ts';

/** As it is said, with plain spaces. */
const writer = formatOf({ length: 'cm', mass: 'kg', mark: '.' });
const format = {
  ...writer,
  spokenLength: (length: number) => writer.spokenLength(length).replaceAll('\u{202f}', ' '),
};
const told = (before = exampleSeat(), after = exampleSeat(), kneels: 'left' | 'right' = 'left') =>
  toldChanges(before, after, { kneels, format, words: english });

describe('changes as an athlete is told of them', () => {
  it('are none for the same setting, and none that a tape could not read', () => {
    expect(told()).toEqual([]);
    expect(told(exampleSeat(), withSeatCoordinate(exampleSeat(), 'kneePad.aftM', 0.1754))).toEqual([]);
  });

  it.each(FITTING_COORDINATES)('tell of %s both ways, with the amount', (coordinate) => {
    const seat = exampleSeat();
    const { unit } = COORDINATES[coordinate];
    const by = unit === 'm' ? 0.015 : 4;
    const more = told(seat, withSeatCoordinate(seat, coordinate, coordinateOf(seat, coordinate) + by));
    const less = told(seat, withSeatCoordinate(seat, coordinate, coordinateOf(seat, coordinate) - by));
    expect(more).toHaveLength(1);
    expect(less).toHaveLength(1);
    expect(more[0]!.what).not.toBe(less[0]!.what);
    for (const { what, feel } of [...more, ...less]) {
      expect(what).toContain(unit === 'm' ? '1.5 cm' : '4°');
      expect(feel.length).toBeGreaterThan(10);
    }
  });

  it('say left and right as the paddler sees them, for either knee', () => {
    const seat = exampleSeat();
    const out = withSeatCoordinate(seat, 'kneePad.outM', 0.045);
    expect(told(seat, out, 'left')[0]!.what).toMatch(/left\./);
    expect(told(seat, out, 'right')[0]!.what).toMatch(/right\./);
    expect(told(out, seat, 'right')[0]!.what).toMatch(/left\./);
  });

  it('say back for a pad that goes aft', () => {
    const seat = exampleSeat();
    const [change] = told(seat, withSeatCoordinate(seat, 'kneePad.aftM', 0.2));
    expect(change!.what).toBe('Your knee pad goes 2.5 cm back.');
  });

  it('tell of a strap that now opens, a brace and a floor with grip', () => {
    const bare = exampleSeat();
    const before = {
      ...bare,
      rearRest: { ...bare.rearRest, strap: 'fixed' as const },
      kneePad: { ...bare.kneePad, braced: false },
      frontFoot: { ...bare.frontFoot, nonSlip: false },
    };
    expect(told(before, bare)).toHaveLength(3);
    expect(told(bare, before)).toHaveLength(0);
  });
});
