import { describe, expect, it } from 'vitest';
import type { Fit } from '../../../core/document/fit-schema.ts';
import type { Seat } from '../../../core/document/seat-schema.ts';
import { evaluateFit } from '../../../core/evaluation/evaluator.ts';
import type { Report } from '../../../core/evaluation/report.ts';
import { otherSide } from '../../../core/frame/mirror.ts';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { strokeCycle } from '../../../core/stroke/stroke-cycle.ts';
import { strokeOfFit } from '../../../core/stroke/stroke-of-fit.ts';
import { notEmpty } from '../../not-empty.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../example/example-fit.ts';

/** Numbers of two reports are the same to this share: figure and boat are solved to it. */
const SAME = 1e-7;

const crew: Fit = {
  ...exampleFit([
    exampleSeat({ athlete: exampleAthlete({ massKg: 72 }), kneels: 'right' }),
    exampleSeat({
      side: 'right',
      athlete: exampleAthlete({ massKg: 90, side: 'right' }),
      stroke: { driveForceN: 220 },
    }),
  ]),
  heelDeg: 2,
};

const mirroredSeat = ({ kneels, athlete, ...seat }: Seat): Seat => ({
  ...seat,
  side: otherSide(seat.side),
  ...(kneels && { kneels: otherSide(kneels) }),
  athlete: athlete && { ...athlete, side: otherSide(athlete.side) },
});

/** Expects every value, doubt and severity of another report to be that of the first, those `besides` left out. */
function expectSame(
  one: Report,
  other: Report,
  besides: readonly string[],
  sideways: readonly string[] = [],
) {
  const near = (value: number) =>
    expect.closeTo(value, Math.floor(-Math.log10(SAME * Math.max(1, Math.abs(value)))));
  const of = (report: Report, sign: 1 | -1, read: (value: number) => unknown) =>
    report.quantities
      .filter(({ id }) => !besides.includes(id))
      .map(({ id, seat, value, sd }) => {
        const at = sideways.includes(id) ? sign * value : value;
        return [id, seat, read(at), sd === null ? null : read(sd)];
      });
  expect(of(other, -1, (value) => value)).toEqual(of(one, 1, near));
  const said = ({ findings }: Report) => findings.map(({ id, severity }) => `${id} ${severity}`).toSorted();
  expect(said(other)).toEqual(said(one));
}

describe('the same boat and crew', () => {
  const report = evaluateFit(crew);

  it('mirrored, heel and odd knee too, has the same values, doubts, findings and stroke', () => {
    const mirrored = { ...crew, heelDeg: -crew.heelDeg, seats: crew.seats.map(mirroredSeat) };
    const other = evaluateFit(mirrored);
    expectSame(report, other, [], ['offCentre', 'steadyMoment']);
    const loads = (fit: Fit, of: Report) =>
      strokeCycle(strokeOfFit(fit, of), 2).flatMap(({ seats }) =>
        seats.flatMap((seat) => Object.values(seat!.loadsN!)),
      );
    const there = loads(mirrored, other);
    for (const [i, load] of notEmpty([...loads(crew, report).entries()]))
      expect(there[i]).toBeCloseTo(load, 4);
  });

  it('counted from another place along the boat and in height has the same values, doubts and findings', () => {
    const { floorboard, seats } = crew.boat;
    const { stations } = hullOfBoat(crew.boat);
    const from = (x: number, z: number): Fit => ({
      ...crew,
      boat: {
        ...crew.boat,
        hull: {
          kind: 'offsets',
          stations: stations.map((at) => ({
            xM: at.x + x,
            section: at.section.map(([y, height]): [number, number] => [y, height + z]),
          })),
        },
        floorboard: {
          ...floorboard,
          heightM: floorboard.heightM + z,
          aftEndXM: floorboard.aftEndXM + x,
          foreEndXM: floorboard.foreEndXM + x,
          outline: floorboard.outline!.map(({ xM, widthM }) => ({ xM: xM + x, widthM })),
        },
        seats: seats.map(({ stationM }) => ({ stationM: stationM + x })),
      },
    });
    // The draft is told at the origin, the knee's place from amidships.
    const besides = ['draft', 'padFromMid'];
    expectSame(evaluateFit(from(0, 0)), evaluateFit(from(0.7, 0.1)), besides);
  });
});
