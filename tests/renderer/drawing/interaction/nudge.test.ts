import { describe, expect, it } from 'vitest';
import type { Fit } from '../../../../core/document/fit-schema.ts';
import {
  arrowKey,
  arrowStepOf,
  drilledAlong,
  type Nudge,
  nudged,
  nudgeOf,
} from '../../../../renderer/drawing/interaction/nudge.ts';
import type { Grip } from '../../../../renderer/drawing/view/handle.ts';
import { seatPlace } from '../../../../renderer/drawing/view/handle-places.ts';
import { dragLimits } from '../../../../renderer/drawing/view/limits.ts';
import { exampleFit, exampleSeat } from '../../../core/example/example-fit.ts';
import { valuesOf } from '../../../core/example/values-of.ts';

const left = exampleFit();
const right = exampleFit([exampleSeat({ side: 'right' })]);
const plain = { shift: false, ctrl: false, alt: false };
const placeIn = (fit: Fit) => seatPlace(fit, valuesOf(fit), 0);
const pad = (view: Grip['view']): Grip => ({ handle: 'kneePad', view });

describe('arrows go the way they point on the drawing', () => {
  it('to the left is aft', () => {
    const push = nudgeOf(pad('plan'), 'ArrowLeft', placeIn(left));
    expect(push).toEqual({ coordinate: 'kneePad.aftM', direction: 1 });
    expect(nudgeOf({ handle: 'frontFoot', view: 'plan' }, 'ArrowLeft', placeIn(left))).toEqual({
      coordinate: 'frontFoot.forwardM',
      direction: -1,
    });
  });

  it('up in the plan is to port: out for a left paddler, in for a right one', () => {
    expect(nudgeOf(pad('plan'), 'ArrowUp', placeIn(left))?.direction).toBe(1);
    expect(nudgeOf(pad('plan'), 'ArrowUp', placeIn(right))?.direction).toBe(-1);
  });

  it('from behind port is on the left', () => {
    expect(nudgeOf(pad('section'), 'ArrowLeft', placeIn(left))).toEqual({
      coordinate: 'kneePad.outM',
      direction: 1,
    });
    expect(nudgeOf(pad('section'), 'ArrowUp', placeIn(left))).toEqual({
      coordinate: 'kneePad.heightM',
      direction: 1,
    });
  });

  it('down the shaft is farther from the grip; a view that does not move that way does nothing', () => {
    expect(nudgeOf({ handle: 'lowerHand', view: 'profile' }, 'ArrowDown', placeIn(left))?.direction).toBe(1);
    expect(nudgeOf({ handle: 'frontFoot', view: 'section' }, 'ArrowUp', placeIn(left))).toBeNull();
    expect(nudgeOf({ handle: 'frontFoot', view: 'profile' }, 'ArrowUp', placeIn(left))).toEqual({
      coordinate: 'frontFoot.heightM',
      direction: 1,
    });
    expect(arrowKey('Tab')).toBeNull();
  });
});

describe('steps are the same everywhere', () => {
  it('one millimetre, ten with Shift, a tenth with Ctrl; degrees likewise', () => {
    expect(arrowStepOf('kneePad.aftM', plain)).toBe(0.001);
    expect(arrowStepOf('kneePad.aftM', { ...plain, shift: true })).toBe(0.01);
    expect(arrowStepOf('kneePad.aftM', { ...plain, ctrl: true })).toBe(0.0001);
    expect(arrowStepOf('rearRest.turnDeg', { ...plain, shift: true })).toBe(10);
  });

  it('a thousand nudges there and back end where they began', () => {
    const there: Nudge = { coordinate: 'kneePad.aftM', direction: 1 };
    const back: Nudge = { coordinate: 'kneePad.aftM', direction: -1 };
    const start = placeIn(left);
    let fit = left;
    for (let k = 0; k < 2000; k++) {
      const place = { ...start, seat: fit.seats[0]! };
      const limits = {
        least: -5,
        most: 5,
        utmost: [-5, 5] as const,
        bandLeast: null,
        bandMost: null,
        pitch: null,
      };
      const aftM = nudged(place, k < 1000 ? there : back, { limits, press: plain });
      fit = { ...fit, seats: [{ ...fit.seats[0]!, kneePad: { ...fit.seats[0]!.kneePad, aftM } }] };
    }
    expect(fit.seats[0]!.kneePad.aftM).toBe(0.175);
  });
});

describe('hardware with holes', () => {
  const hardware = { ...left.boat.hardware, padHolePitchM: 0.02 };
  const drilled: Fit = { ...left, boat: { ...left.boat, hardware } };
  const limits = dragLimits('kneePad.aftM', { fit: drilled, report: valuesOf(drilled), seat: 0 });
  const push: Nudge = { coordinate: 'kneePad.aftM', direction: 1 };

  it('an arrow goes to the next hole that way, from between two holes too', () => {
    expect(nudged(placeIn(drilled), push, { limits, press: plain })).toBe(0.18);
    expect(nudged(placeIn(drilled), { ...push, direction: -1 }, { limits, press: plain })).toBe(0.16);
  });

  it('with Alt it leaves the holes', () => {
    expect(nudged(placeIn(drilled), push, { limits, press: { ...plain, alt: true } })).toBe(0.176);
  });

  it('stops at the end of the travel', () => {
    const place = placeIn(drilled);
    const seat = { ...place.seat, kneePad: { ...place.seat.kneePad, aftM: 0.4 } };
    expect(nudged({ ...place, seat }, push, { limits, press: plain })).toBe(0.4);
  });
});

describe('arrows and holes of the board that are drilled', () => {
  const place = placeIn(left);
  const limits = {
    ...dragLimits('kneePad.aftM', { fit: left, report: valuesOf(left), seat: 0 }),
    pitch: null,
  };
  const { aftM, outM } = place.seat.kneePad;
  const aft: Nudge = { coordinate: 'kneePad.aftM', direction: 1 };
  const holes = drilledAlong(place, aft, [
    { aftM: aftM + 0.0004, outM },
    { aftM: aftM + 0.006, outM: outM + 0.0003 },
    { aftM: aftM + 0.0002, outM: outM + 0.004 },
  ]);
  const press = (more: Partial<typeof plain>, drilled = holes) =>
    nudged(place, aft, { limits, press: { ...plain, ...more }, drilled });

  it('stop in the first one on their way, where the fitting need not move aside', () => {
    expect(holes).toEqual([aftM + 0.0004, aftM + 0.006]);
    expect(press({})).toBeCloseTo(aftM + 0.0004, 9);
    expect(press({ shift: true }, holes.slice(1))).toBeCloseTo(aftM + 0.006, 9);
  });

  it('pass none with Alt or Ctrl, and leave the one they stand in', () => {
    expect(press({ alt: true })).toBeCloseTo(aftM + 0.001, 9);
    expect(press({ ctrl: true })).toBeCloseTo(aftM + 0.0001, 9);
    expect(press({}, [aftM])).toBeCloseTo(aftM + 0.001, 9);
  });
});
