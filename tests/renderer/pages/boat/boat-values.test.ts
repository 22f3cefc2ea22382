import { describe, expect, it } from 'vitest';
import { type Boat, boatSchema } from '../../../../core/document/boat-schema.ts';
import { usualHull } from '../../../../core/hull/usual-hull.ts';
import { BLANK_PAD, BLANK_RAILS, BLANK_REST } from '../../../../renderer/pages/boat/blank-pieces.ts';
import { withBoatChange } from '../../../../renderer/pages/boat/boat-changes.ts';
import { boatRules, hullOfValues } from '../../../../renderer/pages/boat/boat-rules.ts';
import {
  type BoatValues,
  boatValues,
  marksForSeats,
  spreadStations,
} from '../../../../renderer/pages/boat/boat-values.ts';
import { readForm } from '../../../../renderer/ui/form/form-rules.ts';
import { exampleBoat } from '../../../core/example/example-fit.ts';

const usual = boatValues(null);
/** A new boat that is measured: empty entries. */
const blank = { ...usual, ...withBoatChange(usual, { hullKind: 'tape' }, true) };

/** The boat that the form makes of these values, or what it says is wrong. */
function boatOf(
  values: BoatValues,
  before: Boat | null,
): { boat: Boat } | { problems: Readonly<Record<string, string>> } {
  const read = readForm(boatRules(before), values);
  return read.ok ? { boat: read.document } : { problems: read.problems };
}

describe('the boat’s values', () => {
  it.each([1, 2, 4])('give back a boat of %i seats as it was', (seats) => {
    const boat = exampleBoat(seats);
    const made = boatOf(boatValues(boat), boat);
    expect('boat' in made && made.boat.floorboard).toEqual(boat.floorboard);
    if (!('boat' in made) || made.boat.hull.kind !== 'tape' || boat.hull.kind !== 'tape')
      throw new Error('no boat');
    const before = boat.hull.stations;
    made.boat.seats.forEach(({ stationM }, i) => {
      expect(stationM).toBeCloseTo(boat.seats[i]!.stationM, 5);
    });
    expect(made.boat.hull.stations).toHaveLength(before.length);
    made.boat.hull.stations.forEach((station, i) => {
      const was = before[i] as typeof station;
      expect(station.xM).toBeCloseTo(was.xM, 5);
      expect(station.keelM).toBeCloseTo(was.keelM, 5);
      expect(station.beams).toEqual(was.beams);
    });
  });

  it('give back holes of the floorboard and rakes of the ends, in a measured hull and in a usual one', () => {
    const holes = (['drilled', 'planned', 'plugged'] as const).map((state, k) => ({
      xM: [-0.2, -0.3, -0.4][k]!,
      yM: 0.03,
      diameterM: 0.0065,
      state,
    }));
    const stems = { bow: { rakeM: 0.12, curveM: 0.02 } };
    for (const boat of [exampleBoat(), usualHull({ boatClass: 'C1' })]) {
      const { hull } = boat;
      if (hull.kind === 'offsets') throw new Error('no ends');
      const raked = { ...boat, holes, hull: { ...hull, stems } } as Boat;
      const made = boatOf(boatValues(raked), raked);
      if (!('boat' in made)) throw new Error('no boat');
      expect(made.boat.holes).toEqual(holes);
      expect(made.boat.hull).toMatchObject({ stems });
      const upright = boatOf({ ...boatValues(raked), stems: boatValues(boat).stems, holes: [] }, raked);
      expect('boat' in upright && [upright.boat.holes, 'stems' in upright.boat.hull]).toEqual([
        undefined,
        false,
      ]);
    }
  });

  it('keep a float check and its correction while the hull is the same, and drop the correction with it', () => {
    const boat = { ...exampleBoat(), correction: { fullness: 0.02, foreAftFullness: 0, residualM: 0.001 } };
    const rounded = boatOf(boatValues(boat), null);
    if (!('boat' in rounded)) throw new Error('no boat');
    const before = { ...rounded.boat, correction: boat.correction };
    const same = boatOf(boatValues(before), before);
    expect('boat' in same && same.boat.correction).toEqual(boat.correction);
    const values = boatValues(before);
    const wider = {
      ...values,
      stations: values.stations.map((s) => ({ ...s, sheerBeamM: s.sheerBeamM! + 0.01 })),
    };
    const other = boatOf(wider, before);
    expect('boat' in other && other.boat.correction).toBeNull();
  });

  it('carry the board’s thickness into the boat, 8 mm if nothing is entered, and keep the outline it had', () => {
    const plain = exampleBoat();
    const outline = [
      { xM: -0.8, widthM: 0.2 },
      { xM: 0.9, widthM: 0.24 },
    ];
    const boat = { ...plain, floorboard: { ...plain.floorboard, outline } };
    const values = boatValues(boat);
    const made = boatOf({ ...values, floorboard: { ...values.floorboard, thicknessM: 0.012 } }, boat);
    expect('boat' in made && made.boat.floorboard.thicknessM).toBe(0.012);
    expect('boat' in made && made.boat.floorboard.outline).toEqual(outline);
    expect(blank.floorboard.thicknessM).toBe(0.008);
  });

  it('bring a base line below the keel up to the boat’s own origin, floorboard with it', () => {
    const boat = exampleBoat();
    const values = boatValues(boat);
    const lifted = {
      ...values,
      stations: values.stations.map((s) => ({ ...s, keelM: s.keelM! + 0.1, sheerM: s.sheerM! + 0.1 })),
      floorboard: { ...values.floorboard, heightM: values.floorboard.heightM! + 0.1 },
    };
    const made = boatOf(lifted, null);
    if (!('boat' in made) || made.boat.hull.kind !== 'tape') throw new Error('no boat');
    expect(Math.min(...made.boat.hull.stations.map((s) => s.keelM))).toBe(0);
    expect(made.boat.floorboard.heightM).toBeCloseTo(boat.floorboard.heightM, 9);
  });

  it('say what is missing, field by field', () => {
    const made = boatOf(blank, null);
    expect('problems' in made && Object.keys(made.problems)).toEqual(
      expect.arrayContaining(['name', 'massKg', 'hull', 'floorboard.heightM', 'seatsFromSternM.0']),
    );
  });

  it('say what is wrong with a station', () => {
    const values = boatValues(exampleBoat());
    const change = (part: Partial<(typeof values.stations)[number]>) => {
      const made = hullOfValues({
        ...values,
        stations: values.stations.map((s, i) => (i === 2 ? { ...s, ...part } : s)),
      });
      return 'problem' in made ? made.problem : null;
    };
    expect(change({ sheerM: 0 })).toContain('Station 3: sheer');
    expect(change({ fromSternM: 99 })).toContain('Station 3 is off the boat');
    expect(change({ fromSternM: values.stations[1]!.fromSternM })).toContain('Stations 2 and 3 coincide');
    expect(change({})).toBeNull();
  });

  it('spread stations evenly between stern and bow', () => {
    const places = spreadStations({ ...blank, lengthM: 5.2 }).map((s) => s.fromSternM!);
    expect(places).toHaveLength(7);
    const gaps = places.slice(1).map((place, i) => place - places[i]!);
    for (const gap of gaps) expect(Math.abs(gap - 5.2 / 7)).toBeLessThan(0.011);
    expect(spreadStations(blank)).toBe(blank.stations);
  });

  it('keep the marks that are set when seats are added or taken away', () => {
    const values = { ...blank, seatsFromSternM: [3, 2] };
    expect(marksForSeats(values, 3)).toEqual([3, 2, null]);
    expect(marksForSeats(values, 1)).toEqual([3]);
  });
});

describe('what is kept with a boat', () => {
  const boat = boatSchema.parse({
    ...exampleBoat(),
    floorboard: {
      ...exampleBoat().floorboard,
      profile: [
        { xM: -1, heightM: 0.05 },
        { xM: 1, heightM: 0.03 },
      ],
    },
    hardware: { rails: [{ fitting: 'kneePad', apartM: 0.12, heightM: 0.01, holeM: 0.006 }] },
    earlierFloatChecks: [
      {
        check: {
          bowMarkXM: 2,
          sternMarkXM: -2,
          alone: { bowM: 0.22, sternM: 0.22 },
          loaded: { bowM: 0.15, sternM: 0.15, massKg: 40, atXM: 0 },
        },
        correction: null,
      },
    ],
    stock: {
      pads: [
        { name: 'Low', lengthM: 0.24, widthM: 0.15, heightM: 0.08, recessDepthM: 0.02, foamGiveM: 0.006 },
      ],
      rests: [{ name: 'Steep', widthM: 0.15, heightM: 0.11, tiltDeg: 70 }],
    },
  });

  it('comes through the values and back', () => {
    const made = boatOf(boatValues(boat), boat);
    if (!('boat' in made)) throw new Error(JSON.stringify(made.problems));
    expect(made.boat.floorboard.profile).toEqual(boat.floorboard.profile);
    expect(made.boat.hardware).toEqual(boat.hardware);
    expect(made.boat.stock).toEqual(boat.stock);
    expect(made.boat.earlierFloatChecks).toEqual(boat.earlierFloatChecks);
  });

  it('is not in a boat that has none of it', () => {
    const made = boatOf(boatValues(exampleBoat()), null);
    if (!('boat' in made)) throw new Error('no boat');
    expect(made.boat.stock).toBeUndefined();
    expect(made.boat.hardware.rails).toBeUndefined();
    expect(made.boat.floorboard.profile).toBeUndefined();
  });

  it('says which figure of it is missing', () => {
    const values = boatValues(boat);
    const made = boatOf(
      {
        ...values,
        profile: [{ fromSternM: 1, heightM: 0.03 }],
        rails: [BLANK_RAILS],
        pads: [BLANK_PAD],
        rests: [{ ...BLANK_REST, name: 'Steep' }],
      },
      boat,
    );
    expect('problems' in made && Object.keys(made.problems).sort()).toEqual([
      'pads.0.heightM',
      'pads.0.name',
      'profile',
      'rails.0.apartM',
      'rests.0.heightM',
    ]);
  });
});
