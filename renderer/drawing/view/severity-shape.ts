import type { Severity } from '../../../core/evaluation/finding.ts';
import type { Pen } from './pen.ts';

/** Side of a severity's mark beside a value, pixels. */
export const SEVERITY_PX = 10;

/** The mark of a severity as in the margin, distinguished by shape: open triangle, filled square, eight-cornered sign. */
export function drawSeverity(pen: Pen, severity: Severity, { x, y }: { x: number; y: number }): void {
  const s = SEVERITY_PX / 2;
  if (severity === 'check') {
    pen.ring(
      [
        { x, y: y - s },
        { x: x + s, y: y + s - 1 },
        { x: x - s, y: y + s - 1 },
      ],
      { stroke: 'check', width: 1.5 },
    );
  } else if (severity === 'change') {
    pen.rect({ left: x - s + 1, top: y - s + 1, width: 2 * s - 2, height: 2 * s - 2 }, { fill: 'change' });
  } else if (severity === 'stop') {
    const c = s * 0.42;
    const corners: [number, number][] = [
      [-c, -s],
      [c, -s],
      [s, -c],
      [s, c],
      [c, s],
      [-c, s],
      [-s, c],
      [-s, -c],
    ];
    pen.ring(
      corners.map(([dx, dy]) => ({ x: x + dx, y: y + dy })),
      { fill: 'stop' },
    );
    pen.line(
      [
        { x: x - s * 0.5, y },
        { x: x + s * 0.5, y },
      ],
      { stroke: 'paper', width: 1.6 },
    );
  }
}
