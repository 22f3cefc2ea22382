import { describe, expect, it } from 'vitest';
import { bodyOfAthlete } from '../../../core/body/body-of-athlete.ts';
import { seatFrame, solveSeat } from '../../../core/evaluation/seat-state.ts';
import { figureOf } from '../../../core/figure/figure.ts';
import { figureShapes } from '../../../core/figure/figure-shapes.ts';
import { isInRing, type Line, pointsOf, ringsOf } from '../../../core/graphics/shape.ts';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { axesOf, type Camera, type CameraAim, projectPoint } from '../../../core/photograph/camera.ts';
import { gunwalesIn, pictureShapes } from '../../../core/photograph/picture-shapes.ts';
import { exampleFit } from '../example/example-fit.ts';
import { IMAGE } from './synthetic-picture.ts';

const fit = exampleFit();
const seat = fit.seats[0]!;
const body = bodyOfAthlete(seat.athlete!);
const { points } = solveSeat({ seat, body, frame: seatFrame(fit.boat, seat, 0) }).stances.ready;
const figure = figureOf(
  points,
  { stature: body.stature, sex: seat.athlete!.sex, lengths: body.lengths },
  { paddle: seat.paddle, fineness: 'screen' },
);

/** Looks at a point over the seat from so far off, metres; a lens that fills the picture. */
function lookingAt(aim: CameraAim, distance: number): Camera {
  const axes = axesOf(aim);
  return {
    ...axes,
    position: {
      x: -distance * axes.forward.x,
      y: -distance * axes.forward.y,
      z: 0.7 - distance * axes.forward.z,
    },
    focalPx: 1200 * distance,
    radial: 0,
    centre: { u: 2000, v: 1500 },
    image: IMAGE,
  };
}

const quarter = Math.PI / 2;

describe('the figure in a picture’s perspective', () => {
  it.each([
    ['from starboard', quarter, 'profile'],
    ['from astern', 0, 'section'],
  ] as const)('is the drawing’s own figure %s from very far off', (_, azimuth, view) => {
    const drawn = pictureShapes(lookingAt({ azimuth, pitch: 0, roll: 0 }, 4000), figure)!;
    const flat = figureShapes(figure, view);
    expect(drawn.shapes.map(({ of }) => of)).toEqual(flat.map(({ of }) => of));
    const [rings, own] = [ringsOf(drawn.shapes), ringsOf(flat)];
    expect(rings.length).toBe(own.length);
    // The picture's middle is 0.7 m over the boat's origin.
    const extent = (ring: Line, up: number) =>
      [0, 1].flatMap((axis) => {
        const along = pointsOf(ring).map((point) => point[axis]! + axis * up);
        return [Math.min(...along), Math.max(...along)];
      });
    rings.forEach((ring, i) => {
      const plain = extent(own[i]!, 0);
      extent(ring, 0.7).forEach((end, k) => void expect(Math.abs(end - plain[k]!)).toBeLessThan(3e-4));
    });
  });

  it.each([quarter, -quarter, quarter - 0.6, 0.3])(
    'covers the joints as the camera sees them (%f)',
    (azimuth) => {
      const camera = lookingAt({ azimuth, pitch: -0.2, roll: 0.04 }, 3.5);
      const { shapes, origin, pxPerMetre } = pictureShapes(camera, figure)!;
      const rings = ringsOf(shapes);
      for (const name of ['frontKnee', 'kneelingHip', 'midShoulder', 'headCentre', 'lowerElbow'] as const) {
        const { u, v } = projectPoint(camera, points[name]);
        const at = [(u - origin.u) / pxPerMetre, (origin.v - v) / pxPerMetre] as const;
        expect(
          rings.some((ring) => isInRing(ring, at)),
          name,
        ).toBe(true);
      }
    },
  );

  it('is not drawn behind the camera', () => {
    const away = { ...lookingAt({ azimuth: quarter, pitch: 0, roll: 0 }, 5), position: { x: 0, y: 3, z: 1 } };
    expect(pictureShapes(away, figure)).toBeNull();
  });

  it('has both gunwales with it, from end to end', () => {
    const camera = lookingAt({ azimuth: quarter, pitch: 0, roll: 0 }, 9);
    const [port, starboard] = gunwalesIn(camera, hullOfBoat(fit.boat));
    expect(port!.at(-1)!.u).toBeGreaterThan(port![0]!.u);
    const amidships = (line: typeof port) => line![24]!;
    // The nearer one is seen lower: the camera looks from over the gunwale.
    expect(amidships(starboard).v).toBeGreaterThan(amidships(port).v);
  });
});
