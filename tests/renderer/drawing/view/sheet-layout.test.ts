import { describe, expect, it } from 'vitest';
import { drawnHead, type Head } from '../../../../core/figure/head.ts';
import { usualHull } from '../../../../core/hull/usual-hull.ts';
import { overlap } from '../../../../renderer/drawing/view/label-placer.ts';
import { isShown, layOutSheet, layOutWholeBoat } from '../../../../renderer/drawing/view/sheet-layout.ts';
import { cockpitCamera, fitCamera, project, VIEWS } from '../../../../renderer/drawing/view/view-geometry.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../../../core/example/example-fit.ts';
import { notEmpty } from '../../../not-empty.ts';
import { drawnScene } from './drawn-scene.ts';

/** A cockpit: rest to toes, as broad as the hull, keel to crown. */
const box = { least: { x: -0.72, y: -0.23, z: -0.07 }, most: { x: 0.74, y: 0.23, z: 1.42 } };
const SIZES = [
  [720, 658],
  [800, 690],
  [919, 758],
  [663, 658],
  [1050, 858],
  [1490, 1038],
  [640, 560],
  [1024, 420],
] as const;
/** What the part's card needs. */
const CARD = { width: 336, height: 218 };

describe.each(SIZES)('a sheet of %i × %i', (width, height) => {
  const layout = layOutSheet({ width, height }, box);
  const { plan, profile, section } = layout.windows;
  const rects = [layout.strip, layout.stripWords, plan, profile, section, layout.card];

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

  it('names the plan over it, where the boat’s side is not', () => {
    expect(plan.top - layout.strip.top - layout.strip.height).toBeGreaterThanOrEqual(16);
  });

  it('leaves both lanes free: no view, and no card where leaders come in past it', () => {
    const past = layout.cardPlace === 'beside' ? rects.filter((rect) => rect !== layout.card) : rects;
    for (const y of notEmpty(Object.values(layout.lanes))) {
      for (const { top, height: tall } of past) expect(y > top && y < top + tall).toBe(false);
    }
  });

  it('shows a figure of a metre and a half at least 190 pixels tall', () => {
    expect(fitCamera(layout.windows, box).pixelsPerMetre * 1.5).toBeGreaterThan(190);
    for (const view of VIEWS) expect(layout.windows[view].height).toBeGreaterThan(55);
  });

  it('has room for the whole card, but on a small screen, where it stands after the drawing', () => {
    if (layout.cardPlace === 'after') return expect(width).toBeLessThan(700);
    expect(layout.card.width).toBeGreaterThanOrEqual(CARD.width);
    expect(layout.card.height).toBeGreaterThanOrEqual(CARD.height);
  });
});

describe.each(SIZES)('a sheet of %i × %i for the whole of a nine-metre boat', (width, height) => {
  const long = { least: { x: -4.6, y: -0.75, z: -0.5 }, most: { x: 4.6, y: 0.75, z: 1.75 } };
  const layout = layOutWholeBoat({ width, height }, long);
  const { plan, profile } = layout.windows;
  const rects = [layout.strip, layout.stripWords, plan, profile, layout.card];

  it('is as long as the sheet is wide, nothing over anything, with room for the note', () => {
    expect(isShown(layout, 'section')).toBe(false);
    expect([plan.left, plan.width]).toEqual([profile.left, profile.width]);
    rects.forEach((a, i) => {
      for (const b of rects.slice(i + 1)) expect(overlap(a, b)).toBe(false);
      expect(a.left + a.width).toBeLessThanOrEqual(width);
      expect(a.top + a.height).toBeLessThanOrEqual(height);
    });
    if (layout.cardPlace === 'foot') expect(layout.card.height).toBeGreaterThanOrEqual(120);
    const { pixelsPerMetre } = fitCamera(layout.windows, long);
    expect(pixelsPerMetre * 9.2).toBeLessThanOrEqual(plan.width + 1e-6);
    if (height > 600) expect(pixelsPerMetre * 9.2).toBeGreaterThan(0.98 * plan.width);
  });
});

describe('the first view in a window of 1280 × 800', () => {
  const layout = layOutSheet({ width: 919, height: 758 }, box);
  const camera = cockpitCamera(layout.windows, box);

  it('is the cockpit, a pixel at most 3 mm, from the rest to the toes', () => {
    expect(1000 / camera.pixelsPerMetre).toBeLessThanOrEqual(3.0001);
    const { plan, profile } = layout.windows;
    const seen = (pixels: number) => pixels / camera.pixelsPerMetre;
    expect(seen(plan.width)).toBeGreaterThan(box.most.x - box.least.x);
    expect(seen(plan.height)).toBeGreaterThan(0.46);
    expect(seen(profile.height)).toBeGreaterThan(0.9 * (box.most.z - box.least.z));
  });

  it('is as large for a long stance, which may take some of the paper around it', () => {
    const long = { least: { ...box.least, x: -0.76 }, most: { ...box.most, x: 0.78 } };
    const { windows } = layOutSheet({ width: 919, height: 758 }, long);
    const { pixelsPerMetre } = cockpitCamera(windows, long);
    expect(1000 / pixelsPerMetre).toBeLessThanOrEqual(3.0001);
    expect(windows.profile.width / pixelsPerMetre).toBeGreaterThan(1.54 - 0.06);
  });

  it('keeps the keel in sight', () => {
    const keel = project({ windows: layout.windows, camera }, 'profile', { x: 0, y: 0, z: -0.05 });
    const { top, height } = layout.windows.profile;
    expect(keel.y).toBeLessThan(top + height);
  });
});

describe('the first view of a broad training single', () => {
  const scene = drawnScene(
    { ...exampleFit(), boat: usualHull({ boatClass: 'training' }) },
    { width: 919, height: 758 },
  );
  const { windows, camera } = scene.geometry;

  it('is as near as that of a narrow one, the head in it: what is worked on is shown, not all of the beam', () => {
    expect(1000 / camera.pixelsPerMetre).toBeLessThanOrEqual(3.0001);
    const { headTop } = scene.picture.report.seats[0]!.stances.ready.points;
    const crown = project(scene.geometry, 'profile', headTop).y;
    expect(windows.profile.top - crown).toBeLessThan(0.04 * windows.profile.height);
    const { floorboard } = scene.picture.fit.boat;
    expect(windows.plan.height / camera.pixelsPerMetre).toBeGreaterThan(floorboard.widthM);
  });

  it('shows the whole beam where there is room for it', () => {
    const large = drawnScene(scene.picture.fit, { width: 1488, height: 1038 }).geometry;
    expect(1000 / large.camera.pixelsPerMetre).toBeLessThanOrEqual(3);
    expect(large.windows.plan.height / large.camera.pixelsPerMetre).toBeGreaterThan(0.82);
  });
});

describe('the first view in a window of 1024 × 700, beside card and margin', () => {
  const { windows } = layOutSheet({ width: 663, height: 658 }, box);

  it('has a pixel of at most 4 mm: the figure is as tall as the window allows', () => {
    expect(1000 / cockpitCamera(windows, box).pixelsPerMetre).toBeLessThanOrEqual(4);
  });
});

/** Top of the hair as it is drawn from the side, metres. */
function crownOf(head: Head): number {
  const heights = drawnHead(head, 'profile', 4).fills.flatMap(({ ring }) =>
    [...ring].filter((_, k) => k % 2 === 1),
  );
  return Math.max(...notEmpty(heights));
}

describe.each([1.6, 1.75, 1.86, 1.95, 2.05])('the first view of a paddler %f m tall', (statureM) => {
  const athlete = exampleAthlete({ statureM, massKg: 22 * statureM ** 2 });
  const crew = (seats: number) => exampleFit(Array.from({ length: seats }, () => exampleSeat({ athlete })));

  it.each([
    ['a single', 1, 758],
    ['a pair', 2, 758],
    ['a four', 4, 758],
    ['a single under a banner', 1, 712],
  ] as const)('has all of the head and the keel in it: %s', (_, seats, height) => {
    const { geometry, picture, lines } = drawnScene(crew(seats), { width: 919, height });
    const { top, height: tall } = geometry.windows.profile;
    const crown = { x: 0, y: 0, z: crownOf(picture.figures[0]!.head) };
    expect(project(geometry, 'profile', crown).y).toBeGreaterThanOrEqual(top);
    for (const at of lines.keel) expect(project(geometry, 'profile', at).y).toBeLessThanOrEqual(top + tall);
    // Up to 1.8 m a pixel is 3 mm; a taller head is worth more than that.
    const most = statureM <= 1.8 && height === 758 ? 3.0001 : 3.8;
    expect(1000 / geometry.camera.pixelsPerMetre).toBeLessThanOrEqual(most);
  });
});
