import { describe, expect, it } from 'vitest';
import { formatFor } from '../../../../app/language/format.ts';
import { BLANK_STATION, type BoatValues, boatValues } from '../../../../renderer/pages/boat/boat-values.ts';
import { outlyingBeams } from '../../../../renderer/pages/boat/stands-out.ts';
import { pasteStations } from '../../../../renderer/pages/boat/station-paste.ts';
import { exampleBoat } from '../../../core/example/example-fit.ts';

const format = formatFor({ length: 'cm', mass: 'kg', decimal: 'point' });
const blank: BoatValues = {
  ...boatValues(exampleBoat()),
  beamHeightsM: [0.05, 0.12],
  stations: Array.from({ length: 5 }, () => BLANK_STATION),
};

const withBeams = (beams: readonly number[], sureOf: readonly string[] = []): BoatValues => ({
  ...blank,
  sureOf,
  stations: beams.map((cm, i) => ({ ...BLANK_STATION, fromSternM: i + 0.5, sheerBeamM: cm / 100 })),
});

describe('a beam that stands out', () => {
  it('is asked about: 42.0 beside 22.0 and 28.6', () => {
    const [one, ...more] = outlyingBeams(withBeams([12, 22, 42, 28.6, 24]));
    expect(one).toMatchObject({ station: 2, valueM: 0.42, neighboursM: [0.22, expect.closeTo(0.286, 9)] });
    expect(more).toEqual([]);
  });

  it('is asked about where the hull would have a waist', () => {
    expect(outlyingBeams(withBeams([24, 36, 30, 42, 36])).map(({ path }) => path)).toEqual([
      'stations.2.sheerBeamM',
    ]);
  });

  it('is not asked about once somebody said it is right, and again when it is changed', () => {
    const { key } = outlyingBeams(withBeams([12, 22, 42, 28.6, 24]))[0]!;
    expect(outlyingBeams(withBeams([12, 22, 42, 28.6, 24], [key]))).toEqual([]);
    expect(outlyingBeams(withBeams([12, 22, 43, 28.6, 24], [key]))).toHaveLength(1);
  });

  it('is none in a boat as boats are, however coarse the stations', () => {
    expect(outlyingBeams(withBeams([24, 36, 44, 48, 44, 36, 24]))).toEqual([]);
    expect(outlyingBeams(withBeams([20, 38, 42, 38, 20]))).toEqual([]);
    expect(outlyingBeams(boatValues(exampleBoat()))).toEqual([]);
  });
});

describe('a table pasted from a spreadsheet', () => {
  const text = 'from stern\tkeel\tsheer\n60\t3,5\t36\n120\t\t33\n190\tabout 2\t31\n';

  it('fills rows and columns from the entry that it was pasted into, its heading passed over', () => {
    const pasted = pasteStations(blank, { entry: 'stations.1.fromSternM', text }, format)!;
    expect(pasted.stations[0]).toEqual(BLANK_STATION);
    expect(pasted.stations[1]).toMatchObject({ fromSternM: 0.6, keelM: 0.035, sheerM: 0.36 });
    expect(pasted.stations[2]).toMatchObject({ fromSternM: 1.2, keelM: null, sheerM: 0.33 });
    expect(pasted.notUnderstood).toBe(1);
  });

  it('adds stations, and fills beams lower down', () => {
    const rows = Array.from({ length: 7 }, (_, i) => `${i}\t${i + 1}`).join('\r\n');
    const pasted = pasteStations(blank, { entry: 'stations.0.beamsM.0', text: rows }, format)!;
    expect(pasted.stations).toHaveLength(7);
    expect(pasted.stations[6]!.beamsM).toEqual([0.06, 0.07]);
  });

  it('leaves a single cell, and an entry elsewhere, to an ordinary paste', () => {
    expect(pasteStations(blank, { entry: 'stations.0.keelM', text: '3.5' }, format)).toBeNull();
    expect(pasteStations(blank, { entry: 'name', text }, format)).toBeNull();
  });
});
