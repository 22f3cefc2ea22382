import { describe, expect, it } from 'vitest';
import { LAYER_LINES } from '../../../core/setout/layer-lines.ts';
import { SHEET_INKS } from '../../../core/setout/sheet-inks.ts';

describe('lines of layers', () => {
  it('are of widths that ISO 128 knows as thick and thin, in inks that a sheet has', () => {
    for (const { ink, width, dash } of Object.values(LAYER_LINES)) {
      expect(SHEET_INKS).toContain(ink);
      expect(width).toBeGreaterThanOrEqual(0.18);
      expect(width).toBeLessThanOrEqual(0.5);
      expect(dash.length % 2).toBe(0);
    }
    expect(LAYER_LINES.outline.width).toBeGreaterThan(LAYER_LINES.dimension.width);
  });

  it('tell the holes in use from the others by more than their colour', () => {
    expect(LAYER_LINES.drillNow.width).toBeGreaterThan(LAYER_LINES.drill.width);
  });
});
