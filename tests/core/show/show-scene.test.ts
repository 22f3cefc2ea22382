import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { FIGURE_POINTS } from '../../../core/posture/stance.ts';
import { blendScenes, type ShowScene, showScene } from '../../../core/show/show-scene.ts';
import { cases } from '../../cases.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../example/example-fit.ts';
import { valuesOf } from '../example/values-of.ts';

const SEED = 20260509;
const sceneOf = (fit: Fit, index = 0) => showScene(fit, valuesOf(fit), index);
const seat = exampleSeat();
const from = sceneOf(exampleFit())!;
const to = sceneOf(
  exampleFit([
    {
      ...seat,
      kneePad: { ...seat.kneePad, aftM: 0.24, heightM: 0.14 },
      rearRest: { ...seat.rearRest, turnDeg: 30 },
    },
  ]),
)!;

/** Every number in a scene by its place. */
function numbersOf(value: unknown, path = ''): [string, number][] {
  if (typeof value === 'number') return [[path, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => numbersOf(inner, `${path}.${key}`));
}

const share = fc.double({ min: 0.001, max: 0.999, noNaN: true });

describe('the scene of a seat', () => {
  it('is none where the seat is empty or not there', () => {
    expect(sceneOf(exampleFit([exampleSeat({ athlete: null })]))).toBeNull();
    expect(sceneOf(exampleFit(), 1)).toBeNull();
  });

  it('is the solved ready stance, in the boat’s frame, with the fittings as they are set', () => {
    const fit = exampleFit();
    const report = valuesOf(fit);
    const scene = showScene(fit, report, 0)!;
    expect(scene.points).toBe(report.seats[0]!.stances.ready.points);
    expect(scene.seat.kneePad).toBe(fit.seats[0]!.kneePad);
    expect(scene.board).toBe(fit.boat.floorboard);
    expect(scene.body.stature).toBe(1.8);
  });

  it('floats as the boat floats at the ready stance', () => {
    const fit = exampleFit();
    const { ready } = valuesOf(fit).afloat;
    if (ready.kind !== 'afloat') throw new Error('the example sinks');
    expect(from.water).toEqual({ draft: ready.draft, trim: ready.trim });
  });

  it('has no water where the boat cannot float', () => {
    const heavy = exampleFit([exampleSeat({ athlete: exampleAthlete({ massKg: 200 }) })]);
    const sunk = { ...heavy, boat: { ...heavy.boat, massKg: 400 } };
    const report = valuesOf(sunk);
    expect(report.afloat.ready.kind).not.toBe('afloat');
    expect(showScene(sunk, report, 0)!.water).toBeNull();
  });

  it('of each seat of a crew is that seat’s own', () => {
    const pair = exampleFit([
      exampleSeat(),
      exampleSeat({ side: 'right', athlete: exampleAthlete({ side: 'right', statureM: 1.65 }) }),
    ]);
    const [bow, stern] = [sceneOf(pair, 0)!, sceneOf(pair, 1)!];
    expect(bow.frame.stationX - stern.frame.stationX).toBeCloseTo(1.15, 9);
    expect([bow.frame.side, stern.frame.side]).toEqual(['left', 'right']);
    expect(stern.body.stature).toBe(1.65);
  });
});

describe('a scene between two others', () => {
  it('has every number between those of the two, at its share of the way', () => {
    const [a, b] = [new Map(numbersOf(from)), new Map(numbersOf(to))];
    fc.assert(
      fc.property(share, (t) => {
        for (const [path, value] of numbersOf(blendScenes(from, to, t))) {
          const [low, high] = [a.get(path)!, b.get(path)!];
          expect(Math.abs(value - (low + (high - low) * t)), path).toBeLessThan(1e-9);
        }
      }),
      { seed: SEED, numRuns: cases(10, 40) },
    );
  });

  it('is the same from either end', () => {
    fc.assert(
      fc.property(share, (t) => {
        const [there, back] = [blendScenes(from, to, t), blendScenes(to, from, 1 - t)];
        for (const name of FIGURE_POINTS) {
          for (const axis of ['x', 'y', 'z'] as const) {
            expect(there.points[name][axis]).toBeCloseTo(back.points[name][axis], 9);
          }
        }
      }),
      { seed: SEED, numRuns: cases(10, 40) },
    );
  });

  it('stays at its ends beyond them', () => {
    expect(blendScenes(from, to, -0.5)).toBe(from);
    expect(blendScenes(from, to, 1.5)).toBe(to);
  });

  it('goes on the way that it has come: half of a half is a quarter', () => {
    const half = blendScenes(from, to, 0.5);
    const quarter = numbersOf(blendScenes(from, half, 0.5));
    const straight = new Map(numbersOf(blendScenes(from, to, 0.25)));
    for (const [path, value] of quarter) expect(value).toBeCloseTo(straight.get(path)!, 9);
  });

  it('changes sides half way, never between', () => {
    const right = sceneOf(
      exampleFit([exampleSeat({ side: 'right', athlete: exampleAthlete({ side: 'right' }) })]),
    ) as ShowScene;
    expect(blendScenes(from, right, 0.49).frame.side).toBe('left');
    expect(blendScenes(from, right, 0.51).frame.side).toBe('right');
  });
});
