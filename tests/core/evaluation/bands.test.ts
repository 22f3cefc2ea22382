import { describe, expect, it } from 'vitest';
import { BANDS } from '../../../core/evaluation/bands.ts';
import { judge } from '../../../core/evaluation/judge.ts';
import { QUANTITIES, type QuantityId } from '../../../core/evaluation/quantities.ts';
import { exampleFit, exampleSeat } from '../example/example-fit.ts';

/** Edges of a band: [least, most], and the limits past which it says stop. */
interface Row {
  readonly band: readonly [least: number | null, most: number | null];
  readonly stop?: readonly [least: number | null, most: number | null];
  /** Numbers of seats. */
  readonly seats?: readonly number[];
}

type Rows = readonly (readonly [QuantityId, Row])[];

const SINGLE = [1];
const CREW = [2, 3, 4];
const YES: Row = { band: [1, null] };

/** Degrees. Sources: ISO 11226, EN 1005-4, AAOS handbook, Soucie et al. 2011, Kendall; where it says so, our own estimate. */
const ANGLES: Rows = [
  ['recessTurn', { band: [3, 30] }],
  ['restTurn', { band: [15, 25] }],
  ['frontKnee', { band: [110, 160] }],
  ['trunkRoll', { band: [0, 6] }],
  ['trunkPitch', { band: [-5, 20], stop: [null, 60] }],
  // Flexion to 142° (Soucie et al. 2011).
  ['kneelingKnee', { band: [60, 125], stop: [180 - 142, null] }],
  // Stop: the middle of 20 to 30° of extension (AAOS), our own choice.
  ['kneelingHip', { band: [130, 195], stop: [null, 180 + 25] }],
  // Flexion to 135° (Soucie et al. 2011).
  ['frontHip', { band: [65, null], stop: [180 - 135, null] }],
  ['hipFlexorStretch', { band: [null, 0] }],
  // Stop: our own estimate, 65° of pointing the foot.
  ['rearAnkle', { band: [90 - 20, 90 + 50], stop: [null, 155] }],
  ['frontAnkle', { band: [90 - 17, 90 + 50] }],
];

/** Centimetres. Places are common practice, all else our own estimates. */
const LENGTHS: Rows = [
  ['padAft', { band: [15, 20], seats: SINGLE }],
  ['padOut', { band: [2, 5], seats: SINGLE }],
  ['padOut', { band: [4, 12], seats: CREW }],
  ['padHeight', { band: [8, 15], seats: SINGLE }],
  ['padHeight', { band: [10, 17], seats: [2, 3] }],
  ['padHeight', { band: [12, 19], seats: [4] }],
  ['recessDepth', { band: [0.8, 4] }],
  ['paddleUnderStature', { band: [8, 12] }],
  ['trimRest', { band: [0, 3.5] }],
  ['trimCatch', { band: [-1, null] }],
  ['supportMargin', { band: [0.5, null], stop: [0, null] }],
  ['rearReach', { band: [null, 0], stop: [null, 1] }],
  ['frontReach', { band: [null, 0], stop: [null, 1] }],
  ['padInsideHull', { band: [null, 2], seats: CREW }],
  ['padBevel', { band: [null, 3] }],
  ['kneeInsideHull', { band: [0, null] }],
  ['restBevel', { band: [null, 1.5] }],
  ['padHolesToSkin', { band: [0.3, null], stop: [0, null] }],
  ['restHolesToSkin', { band: [0.3, null], stop: [0, null] }],
  ['padHolesOnBoard', { band: [0.6, null] }],
  ['restHolesOnBoard', { band: [0.6, null] }],
  ['padOverhang', { band: [null, 3], seats: SINGLE }],
  ['padOverhang', { band: [null, 6], seats: CREW }],
  ['restOverhang', { band: [null, 3] }],
  ['footOverhang', { band: [null, 1] }],
  ['footInsideHull', { band: [0, null] }],
  ['padToRest', { band: [2, null] }],
  ['padToFrontHeel', { band: [2, null] }],
  ['toNextSeat', { band: [1, null], seats: CREW }],
  ['bladeSpacing', { band: [80, null], seats: CREW }],
  ['padTravel', { band: [0, null] }],
  ['restTravel', { band: [0, null] }],
  ['offCentre', { band: [-1, 1] }],
  // What planing its lower edge takes off a board.
  ['boardInsideHull', { band: [-0.3, null] }],
  // Stop: our own estimate, 2 cm.
  ['leastFreeboard', { band: [5, null], stop: [2, null] }],
];

/** Plain numbers and shares. */
const NUMBERS: Rows = [
  ['bladeShare', { band: [1 / 3, 0.38] }],
  ['strapReleases', { band: [1, null], stop: [0, null] }],
  ['floorNonSlip', YES],
  ['padBraced', YES],
  ['kneelsOnSide', YES],
  ['kneeShare', { band: [0.4, 0.7] }],
  ['rearShare', { band: [0.03, 0.25] }],
  ['frontShare', { band: [0.15, 0.5] }],
];

/** Everything in SI. */
const TABLE = [
  ...ANGLES.map((row) => [...row, Math.PI / 180] as const),
  ...LENGTHS.map((row) => [...row, 0.01] as const),
  ...NUMBERS.map((row) => [...row, 1] as const),
];

/** Far over rounding, far under a shown step. */
const LITTLE = 1e-7;

/** What a boat of so many seats is told of one value without doubt. */
function told(seats: number, id: QuantityId, value: number) {
  const fit = exampleFit(Array.from({ length: seats }, () => exampleSeat()));
  const stations = fit.boat.seats.map(() => ({ stationM: 0 }));
  const { scope, unit } = QUANTITIES[id];
  const at = { id, seat: scope === 'boat' ? null : 0, value, sd: 0, unit };
  return judge({ ...fit, boat: { ...fit.boat, seats: stations } }, [at])[0]!.severity;
}

/** Severities worse than good. A place of thumb with good outcomes is at most a check. */
const OUTSIDE = ['check', 'change'];

describe('every finding turns at the number that is documented for it', () => {
  it('has no band besides these', () => {
    const rows = (of: readonly (readonly [string, readonly number[] | undefined])[]) =>
      of.map(([id, seats]) => `${id} ${(seats ?? [1, 2, 3, 4]).join()}`).toSorted();
    expect(rows(BANDS.map(({ quantity, crews }) => [quantity, crews]))).toEqual(
      rows(TABLE.map(([id, { seats }]) => [id, seats])),
    );
  });

  it.each(TABLE)('%s', (id, { band: [least, most], stop = [null, null], seats = [1] }, unit) => {
    for (const count of seats) {
      const severity = (at: number) => told(count, id, at);
      if (least !== null) {
        expect(severity(least * unit)).toBe('good');
        expect(OUTSIDE).toContain(severity(least * unit - LITTLE));
      }
      if (most !== null) {
        expect(severity(most * unit)).toBe('good');
        expect(OUTSIDE).toContain(severity(most * unit + LITTLE));
      }
      const [stopLeast, stopMost] = stop;
      if (stopLeast !== null) {
        expect(severity(stopLeast * unit)).toBe('change');
        expect(severity(stopLeast * unit - LITTLE)).toBe('stop');
      } else if (least !== null) expect(severity(least * unit - 1e3)).not.toBe('stop');
      if (stopMost !== null) {
        expect(severity(stopMost * unit)).toBe('change');
        expect(severity(stopMost * unit + LITTLE)).toBe('stop');
      } else if (most !== null) expect(severity(most * unit + 1e3)).not.toBe('stop');
    }
  });
});
