import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Fit, fitSchema } from '../../../../core/document/fit-schema.ts';
import { drillingWishes } from '../../../../core/drilling/drilling-wish.ts';
import { createEvaluator } from '../../../../core/evaluation/evaluator.ts';
import type { Report } from '../../../../core/evaluation/report.ts';
import { type DragKeys, draggedTo, startDrag } from '../../../../renderer/drawing/interaction/drag.ts';
import { GRIPS, type Grip, HANDLES, isTabStop } from '../../../../renderer/drawing/view/handle.ts';
import { handlePlace, seatPlace } from '../../../../renderer/drawing/view/handle-places.ts';
import { project, type ViewGeometry } from '../../../../renderer/drawing/view/view-geometry.ts';
import { exampleFit, exampleSeat } from '../../../core/example/example-fit.ts';

const geometry: ViewGeometry = {
  windows: {
    plan: { left: 50, top: 100, width: 600, height: 180 },
    profile: { left: 50, top: 310, width: 600, height: 400 },
    section: { left: 680, top: 310, width: 220, height: 400 },
  },
  camera: { pixelsPerMetre: 1000, at: { x: 0, y: 0, z: 0.5 } },
};
const SEED = 5150;
const keys: DragKeys = { free: false, fine: false, all: false };
const evaluator = createEvaluator();

/** Reports of the fits that pulls start from, each made once. */
const reports = new Map<string, Report>();
function reportOf(fit: Fit): Report {
  const key = JSON.stringify(fit);
  const report = reports.get(key) ?? evaluator.evaluate(fit);
  reports.set(key, report);
  return report;
}

/** Takes a grip where it stands and pulls it by so many pixels. */
function pull(fit: Fit, grip: Grip, by: { x: number; y: number }, held: DragKeys = keys): Fit {
  const report = reportOf(fit);
  const at = handlePlace(seatPlace(fit, report, 0), grip.handle)!;
  const screen = project(geometry, grip.view, at);
  const hold = startDrag(grip, { fit, report, seat: 0 }, { screen, geometry })!;
  return draggedTo(hold, { x: screen.x + by.x, y: screen.y + by.y }, held)(fit);
}

describe('a pull', () => {
  it('that goes nowhere changes nothing, not even the object', () => {
    const fit = exampleFit();
    for (const grip of GRIPS) expect(pull(fit, grip, { x: 0, y: 0 })).toBe(fit);
  });

  it('moves by what the hand moves, in plan and profile alike', () => {
    const fit = exampleFit();
    const fromAbove = pull(fit, { handle: 'kneePad', view: 'plan' }, { x: -50, y: 0 });
    const fromSide = pull(fit, { handle: 'kneePad', view: 'profile' }, { x: -50, y: 0 });
    expect(fromAbove.seats[0]!.kneePad.aftM).toBeCloseTo(0.225, 9);
    expect(fromSide).toEqual(fromAbove);
  });

  it('the profile and the section agree on height, the plan and the section on breadth', () => {
    const fit = exampleFit();
    const height = (view: Grip['view']) =>
      pull(fit, { handle: 'rearRest', view }, { x: 0, y: -30 }).seats[0]!.rearRest.heightM;
    expect(height('profile')).toBeCloseTo(0.08, 9);
    expect(height('section')).toBe(height('profile'));
    const out = pull(fit, { handle: 'kneePad', view: 'section' }, { x: -30, y: 0 });
    expect(out).toEqual(pull(fit, { handle: 'kneePad', view: 'plan' }, { x: 0, y: -30 }));
  });

  it('slides the front foot along the board, and lifts it only when pulled clearly up', () => {
    const fit = exampleFit();
    const foot = (by: { x: number; y: number }) =>
      pull(fit, { handle: 'frontFoot', view: 'profile' }, by).seats[0]!.frontFoot;
    expect(foot({ x: 30, y: -8 })).toEqual({ ...fit.seats[0]!.frontFoot, forwardM: 0.43 });
    expect(foot({ x: 0, y: -48 }).heightM).toBeCloseTo(0.04, 9);
    expect(foot({ x: 0, y: 60 }).heightM).toBe(0);
  });

  it('is mirrored for the other side', () => {
    const fit = exampleFit([exampleSeat({ side: 'right' })]);
    const out = pull(fit, { handle: 'kneePad', view: 'plan' }, { x: 0, y: 30 });
    expect(out.seats[0]!.kneePad.outM).toBeCloseTo(0.065, 9);
  });

  it('turns what turns by the angle that the hand goes round', () => {
    const fit = exampleFit();
    const report = evaluator.evaluate(fit);
    const place = seatPlace(fit, report, 0);
    for (const [handle, field, sign] of [
      ['padTurn', ['kneePad', 'recessTurnDeg'], 1],
      ['restTurn', ['rearRest', 'turnDeg'], 1],
      ['toeOut', ['frontFoot', 'toeOutDeg'], -1],
    ] as const) {
      const pivotOf = { padTurn: 'kneePad', restTurn: 'rearRest', toeOut: 'frontFoot' } as const;
      const pivot = project(geometry, 'plan', handlePlace(place, pivotOf[handle])!);
      const at = project(geometry, 'plan', handlePlace(place, handle)!);
      const turn = (8 * Math.PI) / 180;
      const [dx, dy] = [at.x - pivot.x, at.y - pivot.y];
      // On the screen y runs down, so port is up: a turn from x toward port is counter-clockwise to the eye.
      const to = {
        x: dx * Math.cos(turn) + dy * Math.sin(turn) - dx,
        y: -dx * Math.sin(turn) + dy * Math.cos(turn) - dy,
      };
      const [fitting, name] = field;
      const read = (f: Fit) => (f.seats[0]![fitting] as unknown as Record<string, number>)[name]!;
      expect(
        read(pull(fit, { handle, view: 'plan' }, to, { free: true, fine: true, all: false })) - read(fit),
        handle,
      ).toBeCloseTo(8 * sign, 1);
    }
  });

  it('slides the lower hand along the shaft, seen from any side, and not across it', () => {
    const fit = exampleFit();
    const { hands } = seatPlace(fit, evaluator.evaluate(fit), 0);
    for (const view of ['profile', 'section'] as const) {
      const [top, lower] = [hands!.top, hands!.lower].map((p) => project(geometry, view, p));
      const seen = Math.hypot(lower!.x - top!.x, lower!.y - top!.y);
      const unit = { x: (lower!.x - top!.x) / seen, y: (lower!.y - top!.y) / seen };
      const grip = { handle: 'lowerHand', view } as const;
      const tenth = pull(fit, grip, { x: unit.x * seen * 0.1, y: unit.y * seen * 0.1 });
      expect(tenth.seats[0]!.paddle.lowerHandM).toBeCloseTo(0.77, 2);
      expect(pull(fit, grip, { x: -unit.y * 40, y: unit.x * 40 })).toEqual(fit);
    }
  });

  it('follows at a tenth of a millimetre with Ctrl', () => {
    const fine = pull(
      exampleFit(),
      { handle: 'kneePad', view: 'plan' },
      { x: -50.3, y: 0 },
      { free: false, fine: true, all: false },
    );
    expect(fine.seats[0]!.kneePad.aftM).toBeCloseTo(0.2253, 9);
  });

  it('however wild leaves a fit that the store would keep, and that evaluates to numbers', () => {
    const far = fc.integer({ min: -5000, max: 5000 });
    fc.assert(
      fc.property(fc.constantFrom(...GRIPS), far, far, fc.boolean(), (grip, x, y, free) => {
        const fit = pull(exampleFit(), grip, { x, y }, { free, fine: false, all: false });
        expect(fitSchema.safeParse(fit).success).toBe(true);
        const { quantities } = evaluator.evaluateHolding(fit, reportOf(exampleFit()));
        for (const { value } of quantities) expect(Number.isFinite(value)).toBe(true);
      }),
      { seed: SEED, numRuns: 150 },
    );
  });
});

describe('with Ctrl and Shift, a whole crew moves', () => {
  const two = exampleFit([
    exampleSeat(),
    exampleSeat({ side: 'right', kneePad: { ...exampleSeat().kneePad, aftM: 0.2 } }),
  ]);
  const all = { free: false, fine: false, all: true };

  it('by as much, each from its own mark and to its own side', () => {
    const moved = pull(two, { handle: 'kneePad', view: 'plan' }, { x: -50, y: -20 }, all);
    expect(moved.seats.map(({ kneePad }) => kneePad.aftM)).toEqual([0.225, 0.25]);
    expect(moved.seats.map(({ kneePad }) => kneePad.outM)).toEqual([0.055, 0.055]);
  });

  it('but not what is locked', () => {
    const [first, second] = two.seats;
    const held: Fit = { ...two, seats: [first!, { ...second!, locks: ['kneePad'] }] };
    const moved = pull(held, { handle: 'kneePad', view: 'plan' }, { x: -50, y: 0 }, all);
    expect(moved.seats.map(({ kneePad }) => kneePad.aftM)).toEqual([0.225, 0.2]);
  });

  it('and never past what the store would keep', () => {
    const moved = pull(two, { handle: 'kneePad', view: 'profile' }, { x: 0, y: -5000 }, all);
    expect(fitSchema.safeParse(moved).success).toBe(true);
  });
});

describe('handles', () => {
  it('every coordinate that a handle moves in the view from behind, a handle in the Tab order moves too', () => {
    const reached = new Set(
      GRIPS.filter(isTabStop).flatMap(({ handle, view }) => HANDLES[handle].views[view] ?? []),
    );
    for (const { handle, view } of GRIPS) {
      for (const coordinate of HANDLES[handle].views[view] ?? []) expect(reached).toContain(coordinate);
    }
  });

  it('there is no hand to hold in an empty seat', () => {
    const fit = exampleFit([exampleSeat({ athlete: null })]);
    const report = evaluator.evaluate(fit);
    const grip = { handle: 'lowerHand', view: 'profile' } as const;
    expect(startDrag(grip, { fit, report, seat: 0 }, { screen: { x: 0, y: 0 }, geometry })).toBeNull();
  });
});

describe('a pull near holes of the board that are drilled', () => {
  const bolts = drillingWishes([exampleFit()], () => 0)[0]!.bolts;
  const fit = fitSchema.parse({
    ...exampleFit(),
    boat: {
      ...exampleFit().boat,
      // Three centimetres aft and one to port of where the pad's bolts are now.
      holes: bolts.map(({ x, y }) => ({ xM: x - 0.03, yM: y + 0.01 })),
    },
  });
  const grip = { handle: 'kneePad', view: 'plan' } as const;

  it('ends on the holes', () => {
    const { kneePad } = pull(fit, grip, { x: -27, y: -8 }).seats[0]!;
    expect(kneePad.aftM).toBeCloseTo(fit.seats[0]!.kneePad.aftM + 0.03, 6);
    expect(kneePad.outM).toBeCloseTo(fit.seats[0]!.kneePad.outM + 0.01, 6);
  });

  it('does not with Alt, nor farther off', () => {
    const free = pull(fit, grip, { x: -27, y: -8 }, { ...keys, free: true }).seats[0]!.kneePad;
    expect(free.aftM).toBeCloseTo(fit.seats[0]!.kneePad.aftM + 0.027, 6);
    const far = pull(fit, grip, { x: -27, y: 8 }).seats[0]!.kneePad;
    expect(far.outM).toBeCloseTo(fit.seats[0]!.kneePad.outM - 0.008, 6);
  });
});
