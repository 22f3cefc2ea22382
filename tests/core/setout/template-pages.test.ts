import { describe, expect, it } from 'vitest';
import { type FullSizeDrawing, inViews, ring } from '../../../core/setout/template-drawing.ts';
import { pageCount, pagesOf } from '../../../core/setout/template-pages.ts';

/** A rectangle with its lower left corner at a place. */
const plate = (width: number, height: number, [x, y]: readonly [number, number] = [0, 0]) => [
  ring('outline', [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ]),
];
const drawing = (...views: ReturnType<typeof plate>[]): FullSizeDrawing => ({
  title: 'A drawing',
  seen: 'from above',
  ...inViews(...views),
});
const tilesOf = (given: FullSizeDrawing) => pagesOf(given, 'A4').map(({ tiling }) => tiling.tiles.length);

describe('views of a template on A4', () => {
  it('share a page that has room for all, however far apart they stand in the drawing', () => {
    const wedge = drawing(plate(69, 120), plate(69, 50, [0, -120]), plate(120, 58, [110, -120]));
    expect(tilesOf(wedge)).toEqual([1]);
    // Three that find no room on a standing page lie on one on its side.
    const lying = drawing(plate(93, 140), plate(93, 62, [0, -120]), plate(134, 75, [130, -120]));
    expect(tilesOf(lying)).toEqual([1]);
    expect(pagesOf(lying, 'A4')[0]!.tiling.page.landscape).toBe(true);
  });

  it('have a page each where they have room on none together', () => {
    expect(tilesOf(drawing(plate(160, 200), plate(160, 190, [200, 0])))).toEqual([1, 1]);
  });

  it('have pages of their own where one is greater than a page, the others together', () => {
    const block = drawing(plate(285, 170), plate(80, 80, [330, 0]), plate(80, 80, [330, 90]));
    expect(tilesOf(block)).toEqual([2, 1]);
    expect(pageCount([block, block], 'A4')).toBe(6);
  });

  it('are one drawing where that takes fewer pages', () => {
    // Apart each strip of 300 mm takes two pages; one over the other they share those two.
    expect(tilesOf(drawing(plate(300, 100), plate(300, 100, [0, -130])))).toEqual([2]);
  });
});
