import { describe, expect, it } from 'vitest';
import { rulerMarks } from '../../../../renderer/drawing/view/ruler-marks.ts';

const ruler = { zero: 300, from: 50, to: 650, pixelsPerMetre: 200, unit: 'cm' as const };

describe('marks of a ruler', () => {
  it('stand where their distance says, on both sides of zero, without signs', () => {
    for (const { at, text } of rulerMarks(ruler)) {
      expect(Math.abs(at - 300)).toBeCloseTo(Number(text) * 2, 6);
    }
    const labelled = rulerMarks(ruler).filter((mark) => mark.labelled);
    expect(labelled.map(({ text }) => text)).toContain('100');
    expect(labelled.every(({ text }) => !text.startsWith('-'))).toBe(true);
  });

  it.each([20, 80, 200, 700, 3000])('leave room between labels at %i px per metre', (pixelsPerMetre) => {
    const at = rulerMarks({ ...ruler, pixelsPerMetre })
      .filter(({ labelled }) => labelled)
      .map((mark) => mark.at);
    for (let k = 1; k < at.length; k++) expect(at[k]! - at[k - 1]!).toBeGreaterThan(39);
  });

  it('are inches where inches are read', () => {
    const foot = rulerMarks({ ...ruler, unit: 'in' }).find(({ text }) => text === '12');
    expect(Math.abs(foot!.at - 300)).toBeCloseTo(0.3048 * 200, 6);
  });
});
