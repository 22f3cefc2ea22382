import { describe, expect, it } from 'vitest';
import { setOutSeat } from '../../../core/setout/set-out.ts';
import { paperOptionsSchema } from '../../../core/setout/set-out-options.ts';
import { english } from '../../english.ts';
import { exampleAthlete, exampleBoat, exampleFit, exampleSeat } from '../example/example-fit.ts';
import { valuesOf } from '../example/values-of.ts';
import { inventedFit, inventedSetOut } from './invented-set-out.ts';

const options = { units: 'mm' } as const;
const pair = exampleFit([
  exampleSeat(),
  exampleSeat({ side: 'right', athlete: exampleAthlete({ name: 'The other', side: 'right' }) }),
]);
const seatOf = (index: number, fit = pair) =>
  setOutSeat({ fit, report: valuesOf(fit), index, options, words: english });

describe('a seat set out', () => {
  it('is none where the seat is empty or not there', () => {
    const empty = exampleFit([exampleSeat({ athlete: null })]);
    expect(seatOf(0, empty)).toBeNull();
    expect(seatOf(2)).toBeNull();
    expect(seatOf(-1)).toBeNull();
  });

  it('of a single has its mark at the boat’s middle', () => {
    expect(inventedSetOut()).toMatchObject({ seatMarkForwardMm: 0, kneels: 'left' });
  });

  it('of a crew boat has its own mark, forward or aft of the boat’s middle, and measures from it', () => {
    const [bow, stern] = [seatOf(0)!, seatOf(1)!];
    expect(bow.seatMarkForwardMm).toBe(575);
    expect(stern.seatMarkForwardMm).toBe(-575);
    const knee = (out: typeof bow) => out.marks.find(({ name }) => name === 'K')!;
    expect(knee(bow)).toMatchObject({ forwardMm: -175, portMm: 35 });
    expect(knee(stern)).toMatchObject({ forwardMm: -175, portMm: -35 });
    expect(stern.kneels).toBe('right');
  });

  it('kneels on the side that is set, where it is another than the paddle’s', () => {
    const fit = exampleFit([exampleSeat({ side: 'left', kneels: 'right' })]);
    const out = seatOf(0, fit)!;
    expect(out.kneels).toBe('right');
    expect(out.marks.find(({ name }) => name === 'K')!.portMm).toBe(-35);
  });

  it('says which knee its recess is drawn for, and whether anybody measured it', () => {
    expect(inventedSetOut().knee.measured).toBe(false);
    expect(inventedSetOut({ options: { kneeBreadthM: 0.1 } }).knee).toMatchObject({
      breadthMm: 100,
      measured: true,
    });
  });

  it('is the same wherever the seat stands in the boat', () => {
    const moved = { ...pair, boat: { ...exampleBoat(2), seats: [{ stationM: 0.9 }, { stationM: -0.4 }] } };
    const [before, after] = [seatOf(0)!, seatOf(0, moved)!];
    expect(after.seatMarkForwardMm).toBe(900);
    expect(after.marks).toEqual(before.marks);
    expect(after.angles).toEqual(before.angles);
  });
});

describe('what the builder chooses', () => {
  it('is millimetres unless said otherwise, and nothing of how the seat is made', () => {
    expect(paperOptionsSchema.parse({})).toEqual({ units: 'mm' });
  });

  it.each([
    [{ foamM: 0.01 }],
    [{ boltM: 0.006 }],
    [{ kneeBreadthM: 0.1 }],
    [{ units: 'cm' }],
    [{ glue: 'epoxy' }],
  ])('cannot be %j', (wrong) => {
    expect(paperOptionsSchema.safeParse(wrong).success).toBe(false);
  });

  it('changes nothing of the fit', () => {
    const fit = inventedFit();
    const kept = structuredClone(fit);
    setOutSeat({
      fit,
      report: valuesOf(fit),
      index: 0,
      options,
      words: english,
    });
    expect(fit).toEqual(kept);
  });
});
