import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  boxSize,
  fitCamera,
  GREATEST_SCALE,
  LEAST_SCALE,
  nearness,
  panBy,
  project,
  unproject,
  VIEWS,
  type ViewCamera,
  type ViewGeometry,
  viewAt,
  type Windows,
  zoomAbout,
} from '../../../../renderer/drawing/view/view-geometry.ts';

const windows: Windows = {
  plan: { left: 50, top: 100, width: 600, height: 180 },
  profile: { left: 50, top: 310, width: 600, height: 400 },
  section: { left: 680, top: 310, width: 220, height: 400 },
};
const camera: ViewCamera = { pixelsPerMetre: 200, at: { x: -0.1, y: 0.05, z: 0.6 } };
const geometry: ViewGeometry = { windows, camera };
const SEED = 4711;

const metre = fc.double({ min: -5, max: 5, noNaN: true });
const point = fc.record({ x: metre, y: metre, z: metre });

describe('the views are those of a lines drawing', () => {
  it('bow to the right in plan and profile, port to the left from behind, up is up', () => {
    const at = { x: 0, y: 0, z: 0 };
    for (const view of ['plan', 'profile'] as const) {
      expect(project(geometry, view, { ...at, x: 1 }).x - project(geometry, view, at).x).toBeCloseTo(200, 9);
    }
    expect(project(geometry, 'plan', { ...at, y: 1 }).y).toBeLessThan(project(geometry, 'plan', at).y);
    expect(project(geometry, 'section', { ...at, y: 1 }).x).toBeLessThan(project(geometry, 'section', at).x);
    expect(project(geometry, 'profile', { ...at, z: 1 }).y).toBeLessThan(project(geometry, 'profile', at).y);
  });

  it('one x over one another in plan and profile, one z beside one another in profile and section, always', () => {
    fc.assert(
      fc.property(point, metre, metre, (p, dx, dy) => {
        const moved = { windows, camera: panBy(camera, 'profile', { x: dx * 50, y: dy * 50 }) };
        const screen = { x: 300 + dx, y: 400 + dy };
        const zoomed = { windows, camera: zoomAbout(moved, 'section', { screen, factor: 1 + Math.abs(dx) }) };
        for (const g of [geometry, moved, zoomed]) {
          expect(project(g, 'plan', p).x).toBeCloseTo(project(g, 'profile', p).x, 6);
          expect(project(g, 'profile', p).y).toBeCloseTo(project(g, 'section', p).y, 6);
        }
      }),
      { seed: SEED },
    );
  });

  it('goes to the screen and back, keeping the axis that the view looks along', () => {
    fc.assert(
      fc.property(point, fc.constantFrom(...VIEWS), (p, view) => {
        const back = unproject(geometry, view, { screen: project(geometry, view, p), through: p });
        for (const axis of ['x', 'y', 'z'] as const) expect(back[axis]).toBeCloseTo(p[axis], 9);
      }),
      { seed: SEED },
    );
  });
});

describe('looking closer and elsewhere', () => {
  it('leaves the point under the pointer where it is', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...VIEWS),
        fc.double({ min: 0.2, max: 5, noNaN: true }),
        metre,
        metre,
        (view, factor, a, b) => {
          const screen = { x: 350 + a * 40, y: 450 + b * 40 };
          const before = unproject(geometry, view, { screen, through: camera.at });
          const zoomed = { windows, camera: zoomAbout(geometry, view, { screen, factor }) };
          const after = project(zoomed, view, before);
          expect(after.x).toBeCloseTo(screen.x, 6);
          expect(after.y).toBeCloseTo(screen.y, 6);
        },
      ),
      { seed: SEED },
    );
  });

  it('stops at its least and greatest scale without drifting', () => {
    const screen = { x: 100, y: 400 };
    const near = zoomAbout(geometry, 'profile', { screen, factor: 1e6 });
    expect(near.pixelsPerMetre).toBe(GREATEST_SCALE);
    const again = zoomAbout({ windows, camera: near }, 'profile', { screen, factor: 10 });
    expect(again.at.x).toBeCloseTo(near.at.x, 12);
    expect(zoomAbout(geometry, 'plan', { screen, factor: 1e-6 }).pixelsPerMetre).toBe(LEAST_SCALE);
  });

  it('pushes the paper with the hand', () => {
    const p = { x: 0.3, y: -0.2, z: 0.4 };
    for (const view of VIEWS) {
      const pushed = { windows, camera: panBy(camera, view, { x: 31, y: -17 }) };
      expect(project(pushed, view, p).x - project(geometry, view, p).x).toBeCloseTo(31, 9);
      expect(project(pushed, view, p).y - project(geometry, view, p).y).toBeCloseTo(-17, 9);
    }
  });
});

describe('fitting to view', () => {
  it('shows every corner of the box in every window', () => {
    const box = { least: { x: -0.9, y: -0.35, z: -0.4 }, most: { x: 0.9, y: 0.5, z: 1.5 } };
    const fitted = { windows, camera: fitCamera(windows, box) };
    for (const view of VIEWS) {
      for (const corner of [box.least, box.most]) {
        const at = project(fitted, view, corner);
        const { left, top, width, height } = windows[view];
        expect(at.x).toBeGreaterThanOrEqual(left - 1e-9);
        expect(at.x).toBeLessThanOrEqual(left + width + 1e-9);
        expect(at.y).toBeGreaterThanOrEqual(top - 1e-9);
        expect(at.y).toBeLessThanOrEqual(top + height + 1e-9);
      }
    }
    expect(boxSize(box)).toEqual({ x: 1.8, y: 0.85, z: 1.9 });
  });

  it('knows which window a point lies in, and that the gaps belong to none', () => {
    expect(viewAt(windows, { x: 60, y: 110 })).toBe('plan');
    expect(viewAt(windows, { x: 700, y: 500 })).toBe('section');
    expect(viewAt(windows, { x: 660, y: 500 })).toBeNull();
  });

  it('counts nearer to the eye: above, to starboard, and aft', () => {
    const o = { x: 0, y: 0, z: 0 };
    expect(nearness('plan', { ...o, z: 1 })).toBeGreaterThan(nearness('plan', o));
    expect(nearness('profile', { ...o, y: -1 })).toBeGreaterThan(nearness('profile', o));
    expect(nearness('section', { ...o, x: -1 })).toBeGreaterThan(nearness('section', o));
  });
});
