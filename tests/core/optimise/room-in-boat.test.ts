import { describe, expect, it } from 'vitest';
import { estimateBody } from '../../../core/body/estimate-body.ts';
import type { Boat } from '../../../core/document/boat-schema.ts';
import { partRoom } from '../../../core/evaluation/part-clearances.ts';
import { partsOfSeat } from '../../../core/evaluation/parts-of.ts';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { innerSkin } from '../../../core/hull/inner-skin.ts';
import { inBoat, type Place } from '../../../core/optimise/room-in-boat.ts';
import { type SeatSetting, usualSetting } from '../../../core/optimise/usual-setting.ts';
import { footprintOf } from '../../../core/parts/part.ts';
import { exampleBoat } from '../example/example-fit.ts';

const body = estimateBody({ stature: 1.85, mass: 85, sex: 'male' });
const footLength = body.lengths.footLength.value;

function placeIn(boat: Boat, stationX = 0): Place {
  const frame = { stationX, floorZ: boat.floorboard.heightM, side: 'left' as const };
  return { boat, hull: hullOfBoat(boat), frame, footLength };
}

/** The example boat with another floor, of one width all along, or other hardware. */
function boatWith(more: { floor?: object; hardware?: object; seats?: number }): Boat {
  const boat = exampleBoat(more.seats ?? 1);
  const { outline: _, ...plain } = boat.floorboard;
  return {
    ...boat,
    floorboard: { ...plain, ...more.floor },
    hardware: { ...boat.hardware, ...more.hardware },
  };
}

const usual = usualSetting(body, 1, 'left');
const wide: SeatSetting = {
  ...usual,
  kneePad: { ...usual.kneePad, outM: 0.2 },
  rearRest: { ...usual.rearRest, outM: -0.25 },
  frontFoot: { ...usual.frontFoot, outM: -0.25 },
};

const NAMES = ['kneePad', 'rearRest', 'frontFoot'] as const;

const partsIn = (setting: SeatSetting, { boat, frame }: Place) =>
  partsOfSeat(boat, setting, { index: 0, frame, footLength });

/** The room of each part of a setting. */
function roomsIn(setting: SeatSetting, place: Place) {
  const parts = partsIn(setting, place);
  const where = { skin: innerSkin(place.hull, place.boat.skinM), board: place.boat.floorboard };
  return {
    kneePad: partRoom(parts.kneePad, where),
    rearRest: partRoom(parts.rearRest, where),
    frontFoot: partRoom(parts.frontFoot, where),
  };
}

describe('across the boat', () => {
  it('leaves alone what has room', () => {
    const roomy = boatWith({ floor: { widthM: 0.3, heightM: 0.1 } });
    const { kneePad, rearRest, frontFoot } = inBoat(usual, placeIn(roomy));
    expect([kneePad.outM, rearRest.outM, frontFoot.outM]).toEqual([
      usual.kneePad.outM,
      usual.rearRest.outM,
      usual.frontFoot.outM,
    ]);
  });

  it('brings every part that stood in the hull within its limits, with 6 mm of room and not a step more', () => {
    const place = placeIn(boatWith({ floor: { widthM: 0.9, heightM: 0.08 } }));
    const before = roomsIn(wide, place);
    const after = roomsIn(inBoat(wide, place), place);
    const limits = { kneePad: 0.03, rearRest: 0.015, frontFoot: 0 };
    for (const name of NAMES) {
      expect(before[name].insideHull, name).toBeLessThan(-limits[name]);
      // To the hull 6 mm are kept over the limit, to the holes 2 over what a drill may be out by.
      const { insideHull, holesToSkin } = after[name];
      const room = Math.min(insideHull + limits[name] - 0.006, holesToSkin - 0.005);
      expect(room, name).toBeGreaterThanOrEqual(-1e-9);
      expect(room, name).toBeLessThan(0.0025);
    }
  });

  it('keeps every part on the floorboard as far as it must stand on it', () => {
    const place = placeIn(boatWith({ floor: { widthM: 0.2 } }));
    const rooms = roomsIn(inBoat(wide, place), place);
    const overhangs = { kneePad: 0.03, rearRest: 0.03, frontFoot: 0.01 };
    for (const name of NAMES) {
      expect(rooms[name].onBoard, name).toBeGreaterThanOrEqual(-overhangs[name]);
      expect(rooms[name].holesOnBoard, name).toBeGreaterThanOrEqual(0.006);
    }
  });

  it('stands where there is most room when there is not enough anywhere', () => {
    const place = placeIn(boatWith({ floor: { widthM: 0.05 } }));
    const { frontFoot } = inBoat(wide, place);
    expect(Math.abs(frontFoot.outM)).toBeLessThan(0.001);
  });

  it('brings a crew’s pad out until it rests partly on the hull, and a knee no farther than 9.5 cm', () => {
    const crew = usualSetting(body, 2, 'left');
    const inward = { ...crew, kneePad: { ...crew.kneePad, outM: 0.03 } };
    const pair = placeIn(boatWith({ seats: 2, floor: { widthM: 0.34, heightM: 0.06 } }));
    expect(roomsIn(inward, pair).kneePad.insideHull).toBeGreaterThan(0.013);
    const inside = roomsIn(inBoat(inward, pair), pair).kneePad.insideHull;
    expect(inside).toBeLessThanOrEqual(0.013);
    expect(inside).toBeGreaterThan(0.01);
    const beamier = placeIn(boatWith({ seats: 4, floor: { widthM: 0.5, heightM: 0.14 } }));
    expect(inBoat(crew, beamier).kneePad.outM).toBeCloseTo(0.095, 9);
  });
});

describe('along the boat', () => {
  it('keeps the toes and the back of the rest between the floorboard’s ends', () => {
    const place = placeIn(boatWith({ floor: { aftEndXM: -0.55, foreEndXM: 0.5 } }));
    const after = partsIn(inBoat(usual, place), place);
    const before = partsIn(usual, place);
    const ends = (of: typeof after) => [
      Math.min(...footprintOf(of.rearRest).map(({ x }) => x)),
      Math.max(...footprintOf(of.frontFoot).map(({ x }) => x)),
    ];
    expect(ends(before)[0]!).toBeLessThan(-0.55);
    expect(ends(before)[1]!).toBeGreaterThan(0.5);
    expect(ends(after)[0]!).toBeGreaterThanOrEqual(-0.55 - 1e-9);
    expect(ends(after)[0]!).toBeLessThan(-0.548);
    expect(ends(after)[1]!).toBeCloseTo(0.5, 9);
  });

  it('sets pad and rest in the nearest holes within the hardware’s travel', () => {
    const hardware = {
      padHolePitchM: 0.03,
      restHolePitchM: 0.05,
      padTravelM: [0, 0.17],
      restTravelM: [0.3, 0.58],
    };
    const { kneePad, rearRest } = inBoat(usual, placeIn(boatWith({ hardware })));
    expect(kneePad.aftM).toBeCloseTo(0.15, 9);
    expect(rearRest.aftM).toBeCloseTo(0.55, 9);
  });

  it('goes to the end of a travel too short for a hole', () => {
    const hardware = { padHolePitchM: 0.2, padTravelM: [0.11, 0.13] };
    expect(inBoat(usual, placeIn(boatWith({ hardware }))).kneePad.aftM).toBe(0.13);
  });
});

it('a pad goes to the nearest hole of its row, not to the one before', () => {
  const boat = boatWith({ hardware: { padHolePitchM: 0.025 } });
  const at = (aftM: number) =>
    inBoat({ ...usual, kneePad: { ...usual.kneePad, aftM } }, placeIn(boat)).kneePad.aftM;
  expect(at(0.187)).toBeCloseTo(0.175, 9);
  expect(at(0.188)).toBeCloseTo(0.2, 9);
});
