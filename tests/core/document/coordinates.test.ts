import { describe, expect, it } from 'vitest';
import {
  COORDINATES,
  coordinatesOfFitting,
  FITTING_COORDINATES,
  FITTINGS,
  isAngle,
} from '../../../core/document/coordinates.ts';
import { seatSchema } from '../../../core/document/seat-schema.ts';
import { exampleSeat } from '../example/example-fit.ts';

/** The seat with one field of one fitting replaced, as a file would hold it. */
function seatWith(coordinate: (typeof FITTING_COORDINATES)[number], value: number) {
  const { fitting, field } = COORDINATES[coordinate];
  const seat = exampleSeat();
  return { ...seat, [fitting]: { ...seat[fitting], [field]: value } };
}

describe('the table of coordinates', () => {
  it.each(FITTING_COORDINATES)('%s: its name is its place in a seat', (coordinate) => {
    const { fitting, field, unit } = COORDINATES[coordinate];
    expect(coordinate).toBe(`${fitting}.${field}`);
    expect(field.endsWith(unit === 'deg' ? 'Deg' : 'M')).toBe(true);
    expect(isAngle(coordinate)).toBe(unit === 'deg');
  });

  it.each(FITTING_COORDINATES)('%s: grows along its axis, but for what is named aft', (coordinate) => {
    const { field, axis, sign } = COORDINATES[coordinate];
    if (axis !== 'forward') return;
    expect(sign).toBe(field.startsWith('aft') ? -1 : 1);
    expect(field).toMatch(/^(aft|forward)M$/);
  });

  it.each(FITTING_COORDINATES)('%s: usual lies in reachable, reachable in allowed', (coordinate) => {
    const { usual, reachable, allowed } = COORDINATES[coordinate];
    expect(usual[0]).toBeGreaterThanOrEqual(reachable[0]);
    expect(usual[1]).toBeLessThanOrEqual(reachable[1]);
    expect(reachable[0]).toBeGreaterThanOrEqual(allowed[0]);
    expect(reachable[1]).toBeLessThanOrEqual(allowed[1]);
  });

  it.each(FITTING_COORDINATES)('%s: a file may hold what the table allows, and no more', (coordinate) => {
    const [least, most] = COORDINATES[coordinate].allowed;
    for (const value of [least, most])
      expect(seatSchema.safeParse(seatWith(coordinate, value)).success).toBe(true);
    for (const value of [least - 0.01, most + 0.01])
      expect(seatSchema.safeParse(seatWith(coordinate, value)).success).toBe(false);
  });

  it('belongs to the four fittings, each coordinate once', () => {
    expect(FITTINGS.flatMap(coordinatesOfFitting).toSorted()).toEqual([...FITTING_COORDINATES].toSorted());
  });
});
