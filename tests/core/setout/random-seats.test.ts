import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Seat } from '../../../core/document/seat-schema.ts';
import { MARKS, type MarkName } from '../../../core/setout/marks.ts';
import type { SeatSetOut } from '../../../core/setout/set-out.ts';
import { sheetBlocks } from '../../../core/setout/sheet-blocks.ts';
import { templatesOf } from '../../../core/setout/templates.ts';
import { cases } from '../../cases.ts';
import { inventedSetOut, ROWS_OF_HOLES } from './invented-set-out.ts';
import { dimensionsOf, distance } from './read-shapes.ts';

/** What holds of every seat, on seats made at random within what a coach may set. */
const SEED = 20260508;
const CASES = cases(3, 25);

const { seat } = inventedSetOut().work;
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Fittings anywhere that the schema and a boat allow. */
const fittings = fc.record({
  kneePad: fc
    .record({
      aftM: between(0.05, 0.3),
      outM: between(-0.02, 0.08),
      heightM: between(0.03, 0.2),
      recessTurnDeg: between(-10, 35),
      recessDepthM: between(0.005, 0.04),
      lengthM: between(0.18, 0.34),
      widthM: between(0.12, 0.22),
    })
    .map((pad): Seat['kneePad'] => ({ ...seat.kneePad, ...pad })),
  rearRest: fc
    .record({
      aftM: between(0.5, 0.75),
      outM: between(-0.14, 0.02),
      heightM: between(0.02, 0.12),
      turnDeg: between(-10, 40),
      tiltDeg: between(20, 90),
      widthM: between(0.08, 0.2),
    })
    .map((rest): Seat['rearRest'] => ({ ...seat.rearRest, ...rest })),
  frontFoot: fc
    .record({
      forwardM: between(0.25, 0.55),
      outM: between(-0.12, 0.02),
      heightM: between(0, 0.06),
      toeOutDeg: between(-10, 30),
      wedgeDeg: between(0, 25),
    })
    .map((foot): Seat['frontFoot'] => ({ ...seat.frontFoot, ...foot })),
});

const made = (given: Partial<Seat>, side: 'left' | 'right' = 'left') =>
  inventedSetOut({ side, seat: given, hardware: ROWS_OF_HOLES });

const MIRRORED: Partial<Record<MarkName, MarkName>> = {
  P1: 'P2',
  P2: 'P1',
  P3: 'P4',
  P4: 'P3',
  R1: 'R2',
  R2: 'R1',
};

const markOf = ({ marks }: SeatSetOut, name: MarkName) => marks.find((mark) => mark.name === name)!;

describe(`any seat, seed ${SEED}`, () => {
  it('has marks whose mirror image is the set-out of the other side, within rounding', () => {
    fc.assert(
      fc.property(fittings, (given) => {
        const [left, right] = [made(given), made(given, 'right')];
        for (const name of MARKS) {
          const [a, b] = [markOf(left, name), markOf(right, MIRRORED[name] ?? name)];
          expect(Math.abs(a.forwardMm - b.forwardMm)).toBeLessThanOrEqual(1);
          expect(Math.abs(a.portMm + b.portMm)).toBeLessThanOrEqual(1);
        }
        expect(right.heights).toEqual(left.heights);
        expect(right.angles.map(({ deg }) => deg)).toEqual(left.angles.map(({ deg }) => deg));
      }),
      { seed: SEED, numRuns: CASES },
    );
  });

  it('has a block and a rest of their own sizes between their marks', () => {
    fc.assert(
      fc.property(fittings, (given) => {
        const out = made(given);
        const span = (a: MarkName, b: MarkName) => {
          const [p, q] = [markOf(out, a), markOf(out, b)];
          return Math.hypot(p.forwardMm - q.forwardMm, p.portMm - q.portMm);
        };
        const { lengthM, widthM } = given.kneePad;
        // Each end is rounded by up to half a millimetre both ways: √2 between two.
        expect(Math.abs(span('P1', 'P2') - widthM * 1000)).toBeLessThan(1.5);
        expect(Math.abs(span('P2', 'P3') - lengthM * 1000)).toBeLessThan(1.5);
        expect(Math.abs(span('P1', 'P3') - 1000 * Math.hypot(lengthM, widthM))).toBeLessThan(1.5);
        expect(Math.abs(span('R1', 'R2') - given.rearRest.widthM * 1000)).toBeLessThan(1.5);
      }),
      { seed: SEED, numRuns: CASES },
    );
  });

  it('has check dimensions that keep the triangle inequality with one another', () => {
    fc.assert(
      fc.property(fittings, (given) => {
        const { checks } = made(given);
        const length = (a: MarkName, b: MarkName) =>
          checks.find(({ from, to }) => (from === a && to === b) || (from === b && to === a))!.lengthMm;
        for (const [a, b, c] of [
          ['M', 'K', 'F'],
          ['M', 'F', 'T'],
        ] as const) {
          expect(length(b, c)).toBeLessThanOrEqual(length(a, b) + length(a, c) + 1);
          expect(length(b, c)).toBeGreaterThanOrEqual(Math.abs(length(a, b) - length(a, c)) - 1);
        }
      }),
      { seed: SEED, numRuns: CASES },
    );
  });

  it('has templates whose every dimension says what it measures, to the rounding of a tape', () => {
    fc.assert(
      fc.property(fittings, (given) => {
        for (const { id, shapes } of templatesOf(made(given))) {
          for (const { from, to, text } of dimensionsOf(shapes)) {
            expect(Math.abs(distance(from, to) - Number(text)), `${id} ${text}`).toBeLessThanOrEqual(
              0.5 + 1e-6,
            );
          }
        }
      }),
      { seed: SEED, numRuns: CASES },
    );
  });

  it('has holes that carry its fittings to themselves: hole n less hole m is n − m pitches', () => {
    fc.assert(
      fc.property(fittings, (given) => {
        for (const { rows, pitchMm } of made(given).holes) {
          for (const { holes } of rows) {
            const [first] = holes;
            for (const { number, at } of holes) {
              expect(first!.at[0] - at[0]).toBeCloseTo((number! - first!.number!) * pitchMm!, 6);
              expect(at[1]).toBeCloseTo(first!.at[1], 9);
            }
          }
        }
      }),
      { seed: SEED, numRuns: CASES },
    );
  });

  it('is told in whole words: no NaN, no minus before a side, no cell left open', () => {
    fc.assert(
      fc.property(fittings, (given) => {
        const out = made(given);
        for (const block of sheetBlocks(out)) {
          const texts =
            block.kind === 'list'
              ? block.sentences
              : block.kind === 'table'
                ? block.cells.flat()
                : block.entries.map(({ label, value }) => `${label}: ${value}`);
          for (const text of texts) expect(text).not.toMatch(/NaN|undefined|Infinity|-\d+ (aft|left|right)/);
        }
      }),
      { seed: SEED, numRuns: CASES },
    );
  });
});
