import { describe, expect, it } from 'vitest';
import { estimateBody } from '../../../core/body/estimate-body.ts';
import type { Boat } from '../../../core/fit/boat-schema.ts';
import { frontFootOutline, padOutline, restOutline } from '../../../core/fit/fitting-outlines.ts';
import { insideHull } from '../../../core/fit/inside-hull.ts';
import type { BoatPoint } from '../../../core/frame/vec3.ts';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { inBoat, type Place } from '../../../core/proposal/room-in-boat.ts';
import { type SeatSetting, usualSetting } from '../../../core/proposal/usual-setting.ts';
import { exampleBoat } from '../example/example-fit.ts';

const body = estimateBody({ stature: 1.85, mass: 85, sex: 'male' });
const footLength = body.lengths.footLength.value;

function placeIn(boat: Boat, stationX = 0): Place {
  const frame = { stationX, floorZ: boat.floorboard.heightM, side: 'left' as const };
  return { boat, hull: hullOfBoat(boat), frame, footLength };
}

/** The example boat with another floor or other hardware. */
function boatWith(more: { floor?: object; hardware?: object; seats?: number }): Boat {
  const boat = exampleBoat(more.seats ?? 1);
  return {
    ...boat,
    floorboard: { ...boat.floorboard, ...more.floor },
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

const outlines = (setting: SeatSetting, { frame }: Place) => ({
  pad: padOutline(setting.kneePad, frame),
  rest: restOutline(setting.rearRest, frame),
  foot: frontFootOutline(setting.frontFoot, footLength, frame),
});
const farthest = (outline: readonly BoatPoint[]) => Math.max(...outline.map(({ y }) => Math.abs(y)));

describe('across the boat', () => {
  it('leaves alone what has room', () => {
    const roomy = boatWith({ floor: { widthM: 0.4 } });
    const { kneePad, rearRest, frontFoot } = inBoat(usual, placeIn(roomy));
    expect([kneePad.outM, rearRest.outM, frontFoot.outM]).toEqual([
      usual.kneePad.outM,
      usual.rearRest.outM,
      usual.frontFoot.outM,
    ]);
  });

  it('brings every fitting that stood in the hull’s face inside it, with 6 mm of room and not a step more', () => {
    const place = placeIn(boatWith({ floor: { widthM: 0.9 } }));
    const before = outlines(wide, place);
    const after = outlines(inBoat(wide, place), place);
    for (const name of ['pad', 'rest', 'foot'] as const) {
      expect(insideHull(before[name], place.hull, place.boat.skinM), name).toBeLessThan(0);
      const room = insideHull(after[name], place.hull, place.boat.skinM);
      expect(room, name).toBeGreaterThanOrEqual(0.006);
      expect(room, name).toBeLessThan(0.0085);
    }
  });

  it('keeps the front foot whole on the floorboard and half the rest over it', () => {
    const place = placeIn(boatWith({ floor: { widthM: 0.18 } }));
    const setting = inBoat(wide, place);
    expect(farthest(outlines(setting, place).foot)).toBeLessThanOrEqual(0.09 + 1e-9);
    expect(Math.abs(setting.rearRest.outM) + setting.rearRest.widthM / 4).toBeLessThanOrEqual(0.09 + 1e-9);
  });

  it('stands where there is most room when there is not enough anywhere', () => {
    const place = placeIn(boatWith({ floor: { widthM: 0.05 } }));
    const { frontFoot } = inBoat(wide, place);
    expect(Math.abs(frontFoot.outM)).toBeLessThan(0.001);
  });

  it('brings a crew’s pad out until it rests partly on the hull, and a knee no farther than 9.5 cm', () => {
    const narrow = placeIn(boatWith({ seats: 2 }));
    const crew = usualSetting(body, 2, 'left');
    const pad = outlines(inBoat(crew, narrow), narrow).pad;
    expect(insideHull(outlines(crew, narrow).pad, narrow.hull, narrow.boat.skinM)).toBeGreaterThan(0.013);
    expect(insideHull(pad, narrow.hull, narrow.boat.skinM)).toBeLessThanOrEqual(0.013);
    const beamier = placeIn(boatWith({ seats: 4 }));
    expect(inBoat(crew, beamier).kneePad.outM).toBeCloseTo(0.095, 9);
  });
});

describe('along the boat', () => {
  it('keeps the toes and the back of the rest between the floorboard’s ends', () => {
    const place = placeIn(boatWith({ floor: { aftEndXM: -0.55, foreEndXM: 0.5 } }));
    const after = outlines(inBoat(usual, place), place);
    const before = outlines(usual, place);
    const ends = (o: typeof after) => [
      Math.min(...o.rest.map(({ x }) => x)),
      Math.max(...o.foot.map(({ x }) => x)),
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
