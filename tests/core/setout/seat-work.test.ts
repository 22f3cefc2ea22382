import { describe, expect, it } from 'vitest';
import { floorPoint, sideOf } from '../../../core/setout/seat-work.ts';
import { inventedSetOut } from './invented-set-out.ts';

describe('points of the floorboard', () => {
  it('are forward of the seat’s mark and to port of the centreline, in millimetres', () => {
    const { frame } = inventedSetOut().work;
    const knee = inventedSetOut().work.solved.stances.ready.points.kneelingKnee;
    const [forward, port] = floorPoint(knee, { ...frame, stationX: 0.5 });
    expect(forward).toBeCloseTo((knee.x - 0.5) * 1000, 9);
    expect(port).toBeCloseTo(knee.y * 1000, 9);
  });

  it('lie on the left for port, on the right for starboard', () => {
    expect([sideOf(3), sideOf(0), sideOf(-3)]).toEqual(['left', 'left', 'right']);
  });

  it('put the knee of the solved stance on its mark, within what the stance may settle', () => {
    for (const side of ['left', 'right'] as const) {
      const { work, marks } = inventedSetOut({ side });
      const [forward, port] = floorPoint(work.solved.stances.ready.points.kneelingKnee, work.frame);
      const knee = marks.find(({ name }) => name === 'K')!;
      expect(Math.abs(forward - knee.forwardMm)).toBeLessThan(2);
      expect(Math.abs(port - knee.portMm)).toBeLessThan(2);
    }
  });
});
