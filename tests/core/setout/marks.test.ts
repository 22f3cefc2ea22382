import { describe, expect, it } from 'vitest';
import { checksOf, MARKS, type MarkName } from '../../../core/setout/marks.ts';
import { CHECK_TOLERANCE_MM, PLACE_TOLERANCE_MM } from '../../../core/setout/tolerances.ts';
import { notEmpty } from '../../not-empty.ts';
import { inventedSetOut, ON_A_WEDGE } from './invented-set-out.ts';

const DEG = Math.PI / 180;
const out = inventedSetOut({ seat: { frontFoot: ON_A_WEDGE } });
const mirrored = inventedSetOut({ side: 'right', seat: { frontFoot: ON_A_WEDGE } });

const at = (name: MarkName, of = out) => {
  const { forwardMm, portMm } = of.marks.find((mark) => mark.name === name)!;
  return [forwardMm, portMm] as const;
};

describe('marks on the floorboard', () => {
  it('are all there once, in whole millimetres', () => {
    expect(out.marks.map(({ name }) => name)).toEqual([...MARKS]);
    for (const { forwardMm, portMm, toleranceMm, name } of out.marks) {
      expect(Number.isInteger(forwardMm) && Number.isInteger(portMm)).toBe(true);
      expect(Object.is(forwardMm, -0) || Object.is(portMm, -0)).toBe(false);
      expect(toleranceMm).toBe(name === 'M' ? 0 : PLACE_TOLERANCE_MM);
    }
  });

  it('K and F stand where pad and foot are set', () => {
    expect(at('M')).toEqual([0, 0]);
    expect(at('K')).toEqual([-175, 35]);
    expect(at('F')).toEqual([400, -60]);
  });

  it('P1 to P4 are the corners of a block 260 × 160 turned by 12° about K, worked by hand', () => {
    const [cos, sin] = [Math.cos(12 * DEG), Math.sin(12 * DEG)];
    // 45 % of the block lies ahead of the knee.
    const corner = (x: number, y: number) => [
      Math.round(-175 + x * cos - y * sin),
      Math.round(35 + x * sin + y * cos),
    ];
    expect(at('P1')).toEqual(corner(117, 80));
    expect(at('P2')).toEqual(corner(117, -80));
    expect(at('P3')).toEqual(corner(-143, -80));
    expect(at('P4')).toEqual(corner(-143, 80));
  });

  it('R1 and R2 are the ends of an edge of 140 turned by 20°, left end first', () => {
    const [cos, sin] = [Math.cos(20 * DEG), Math.sin(20 * DEG)];
    expect(at('R1')).toEqual([Math.round(-620 - 70 * sin), Math.round(-100 + 70 * cos)]);
    expect(at('R2')).toEqual([Math.round(-620 + 70 * sin), Math.round(-100 - 70 * cos)]);
  });

  it('T lies on the foot’s axis by the length of its shadow, toes turned out by 6°', () => {
    const { run } = out.fittings.foot;
    expect(at('T')).toEqual([
      Math.round(400 + run * Math.cos(6 * DEG)),
      Math.round(-60 - run * Math.sin(6 * DEG)),
    ]);
  });

  it('are mirrored for the other side, corners going by name', () => {
    const partner: Partial<Record<MarkName, MarkName>> = {
      P1: 'P2',
      P2: 'P1',
      P3: 'P4',
      P4: 'P3',
      R1: 'R2',
      R2: 'R1',
    };
    for (const name of MARKS) {
      const [x, y] = at(name);
      const [otherX, otherY] = at(partner[name] ?? name, mirrored);
      expect(otherX).toBe(x);
      expect(otherY + y).toBe(0);
    }
  });
});

describe('check dimensions', () => {
  it('are Pythagoras between the rounded marks: what the tape must read', () => {
    for (const { from, to, lengthMm, toleranceMm } of notEmpty(out.checks)) {
      const [a, b] = [at(from), at(to)];
      expect(lengthMm).toBe(Math.round(Math.sqrt((a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2)));
      expect(toleranceMm).toBe(CHECK_TOLERANCE_MM);
    }
  });

  it('hold both diagonals of the pad block, equal within rounding, as a right angle asks', () => {
    const length = (from: MarkName, to: MarkName) =>
      out.checks.find((check) => check.from === from && check.to === to)!.lengthMm;
    expect(Math.abs(length('P1', 'P3') - Math.hypot(260, 160))).toBeLessThan(1.5);
    expect(Math.abs(length('P1', 'P3') - length('P2', 'P4'))).toBeLessThanOrEqual(1);
    expect(Math.abs(length('R1', 'R2') - 140)).toBeLessThanOrEqual(1);
  });

  it('tie every mark but M to at least three others', () => {
    for (const name of MARKS) {
      const ties = out.checks.filter(({ from, to }) => from === name || to === name);
      expect(ties.length, name).toBeGreaterThanOrEqual(name === 'M' ? 2 : 3);
    }
  });

  /**
   * Least error in the worst direction that some check feels, millimetres, as found for the example: pad and rest are
   * proved well; heel and toes, far ahead of everything, less so across the boat (the toes' turn is proved by its angle).
   */
  const FELT_MM: Readonly<Record<Exclude<MarkName, 'M'>, number>> = {
    K: 10,
    P1: 12,
    P2: 12,
    P3: 12,
    P4: 12,
    R1: 8,
    R2: 8,
    F: 25,
    T: 35,
  };

  it.each(Object.entries(FELT_MM))('feel a mark %s that is %i mm off in any direction', (name, off) => {
    for (const side of [out, mirrored]) {
      for (let turn = 0; turn < 360; turn += 10) {
        const moved = side.marks.map((mark) =>
          mark.name === name
            ? {
                ...mark,
                forwardMm: mark.forwardMm + off * Math.cos(turn * DEG),
                portMm: mark.portMm + off * Math.sin(turn * DEG),
              }
            : mark,
        );
        const felt = checksOf(moved).some(
          ({ lengthMm, toleranceMm }, k) => Math.abs(lengthMm - side.checks[k]!.lengthMm) > toleranceMm,
        );
        expect(felt, `${name} at ${turn}°`).toBe(true);
      }
    }
  });

  it('catch a mark that was laid off wrong by more than their tolerance', () => {
    const wrong = out.marks.map((mark) => (mark.name === 'K' ? { ...mark, portMm: -mark.portMm } : mark));
    const differing = checksOf(wrong).filter(
      ({ lengthMm, toleranceMm }, k) => Math.abs(lengthMm - out.checks[k]!.lengthMm) > toleranceMm,
    );
    expect(differing.length).toBeGreaterThan(0);
    for (const { from, to } of differing) expect([from, to]).toContain('K');
  });
});
