import { describe, expect, it } from 'vitest';
import { overlap } from '../../../../renderer/drawing/view/label-placer.ts';
import { isShown, layOutSheet, layOutWholeBoat } from '../../../../renderer/drawing/view/sheet-layout.ts';
import { fitCamera, VIEWS } from '../../../../renderer/drawing/view/view-geometry.ts';

const box = { least: { x: -0.9, y: -0.35, z: -0.45 }, most: { x: 0.9, y: 0.6, z: 1.6 } };
const SIZES = [
  [720, 658],
  [934, 758],
  [1050, 858],
  [1490, 1038],
  [640, 560],
] as const;

describe.each(SIZES)('a sheet of %i × %i', (width, height) => {
  const layout = layOutSheet({ width, height }, box);
  const { plan, profile, section } = layout.windows;
  const rects = [layout.strip, layout.stripWords, plan, profile, section, layout.quarter];

  it('has plan over profile, section beside profile, and nothing over anything', () => {
    expect([plan.left, plan.width]).toEqual([profile.left, profile.width]);
    expect([profile.top, profile.height]).toEqual([section.top, section.height]);
    rects.forEach((a, i) => {
      for (const b of rects.slice(i + 1)) expect(overlap(a, b)).toBe(false);
      expect(a.left).toBeGreaterThanOrEqual(0);
      expect(a.left + a.width).toBeLessThanOrEqual(width);
      expect(a.top + a.height).toBeLessThanOrEqual(height);
    });
  });

  it('leaves both lanes free', () => {
    for (const y of Object.values(layout.lanes)) {
      for (const { top, height: tall } of rects) expect(y > top && y < top + tall).toBe(false);
    }
  });

  it('shows a figure of a metre and a half at least 190 pixels tall', () => {
    expect(fitCamera(layout.windows, box).pixelsPerMetre * 1.5).toBeGreaterThan(190);
    for (const view of VIEWS) expect(layout.windows[view].height).toBeGreaterThan(90);
  });
});

describe.each(SIZES)('a sheet of %i × %i for the whole of a nine-metre boat', (width, height) => {
  const long = { least: { x: -4.6, y: -0.75, z: -0.5 }, most: { x: 4.6, y: 0.75, z: 1.75 } };
  const layout = layOutWholeBoat({ width, height }, long);
  const { plan, profile } = layout.windows;
  const rects = [layout.strip, layout.stripWords, plan, profile, layout.quarter];

  it('is as long as the sheet is wide, nothing over anything, with room for the note', () => {
    expect(isShown(layout, 'section')).toBe(false);
    expect([plan.left, plan.width]).toEqual([profile.left, profile.width]);
    rects.forEach((a, i) => {
      for (const b of rects.slice(i + 1)) expect(overlap(a, b)).toBe(false);
      expect(a.left + a.width).toBeLessThanOrEqual(width);
      expect(a.top + a.height).toBeLessThanOrEqual(height);
    });
    expect(layout.quarter.height).toBeGreaterThanOrEqual(120);
    const { pixelsPerMetre } = fitCamera(layout.windows, long);
    expect(pixelsPerMetre * 9.2).toBeLessThanOrEqual(plan.width + 1e-6);
    if (height > 600) expect(pixelsPerMetre * 9.2).toBeGreaterThan(0.98 * plan.width);
  });
});
