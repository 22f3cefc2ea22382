import type { BoatValues, StationValues } from './boat-values.ts';

/** A beam that is far from what both its neighbours let expect: a typing error, or a hull of an unusual shape. */
export interface StandsOut {
  /** Its path in the form's values. */
  readonly path: string;
  /** Names this reading at this value: what a person says is right stays so until it is changed. */
  readonly key: string;
  /** Index of the station in the table. */
  readonly station: number;
  readonly valueM: number;
  readonly neighboursM: readonly [aft: number, fore: number];
}

/** A beam may pass the greater of its neighbours by this share, and fall short of the lesser by this. */
const MOST_OVER = 0.2;
const MOST_UNDER = 0.08;

/** Less than this is no waist, whatever its share, metres. */
const LEAST_STEP = 0.01;

type Beam = (station: StationValues) => number | null;

/** Beams of a tape's table that stand out from the stations beside them, and that nobody has said are right. */
export function outlyingBeams(values: BoatValues): StandsOut[] {
  const columns: readonly (readonly [key: string, read: Beam])[] = [
    ['sheerBeamM', (s) => s.sheerBeamM],
    ...values.beamHeightsM.map((_, i) => [`beamsM.${i}`, (s: StationValues) => s.beamsM[i] ?? null] as const),
  ];
  return columns
    .flatMap(([key, read]) => inColumn(values.stations, { key, read }))
    .filter(({ key }) => !values.sureOf.includes(key));
}

function inColumn(
  stations: readonly StationValues[],
  { key, read }: { key: string; read: Beam },
): StandsOut[] {
  const along = stations
    .map((station, at) => ({ at, from: station.fromSternM, beam: read(station) }))
    .filter((s): s is { at: number; from: number; beam: number } => s.from !== null && s.beam !== null)
    .toSorted((a, b) => a.from - b.from);
  return along.slice(1, -1).flatMap(({ at, beam }, i): StandsOut[] => {
    const [aft, fore] = [along[i]!.beam, along[i + 2]!.beam];
    const over = beam - Math.max(aft, fore) * (1 + MOST_OVER);
    const under = Math.min(aft, fore) * (1 - MOST_UNDER) - beam;
    const step = Math.min(Math.abs(beam - aft), Math.abs(beam - fore));
    if (Math.max(over, under) <= 0 || step < LEAST_STEP) return [];
    return [
      {
        path: `stations.${at}.${key}`,
        key: `${at}.${key}=${beam}`,
        station: at,
        valueM: beam,
        neighboursM: [aft, fore],
      },
    ];
  });
}
