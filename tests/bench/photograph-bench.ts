import { axesOf, type Camera, projectPoint } from '../../core/photograph/camera.ts';
import { postureFromMarks } from '../../core/photograph/posture-from-marks.ts';
import { exampleFit } from '../core/example/example-fit.ts';
import { drawnStance, IMAGE, JOINTS, type Marks, seeded } from '../core/photograph/synthetic-picture.ts';
import { growthExponent, sideBySide } from './measure.ts';
import { type Found, rowOf } from './row.ts';

/** How many pictures of one moment are read together. */
const COUNTS = [1, 2, 3, 4] as const;
/** Where the cameras stand about the boat: port, astern, starboard, port quarter; radians. */
const AZIMUTHS = [Math.PI / 2, 0, -Math.PI / 2, Math.PI / 4];
/** How far off, metres. */
const DISTANCE = 6;

/** The posture of a paddler from the marks in one to four photographs, and how it grows with their number. */
export function photographBench(): Found {
  const fit = exampleFit();
  const stance = drawnStance(fit, 'ready', seeded(8));
  const pictures = AZIMUTHS.map((azimuth) => {
    const camera = cameraAt(azimuth);
    const marks: Marks = Object.fromEntries(
      JOINTS.map((joint) => [joint, projectPoint(camera, stance.points[joint])]),
    );
    return { camera, marks };
  });
  const named = (count: number) => `posture from marks, photographs: ${count}`;
  const [first, ...others] = pictures;
  const times = sideBySide(
    Object.fromEntries(
      COUNTS.map((count) => [
        named(count),
        () =>
          postureFromMarks({ fit, seat: 0, phase: 'ready', ...first!, others: others.slice(0, count - 1) }),
      ]),
    ),
    { rounds: 15, turnMs: 30, warmUpMs: 300 },
  );
  return {
    rows: COUNTS.map((count) => rowOf('core', named(count), { times: times[named(count)]! })),
    facts: [
      {
        group: 'core',
        name: 'posture from marks grows with photographs, 1 to 4, to the power of',
        value: growthExponent(COUNTS.map((count) => [count, times[named(count)]!.medianUs] as const)),
        unit: '',
      },
    ],
  };
}

function cameraAt(azimuth: number): Camera {
  const axes = axesOf({ azimuth, pitch: -0.05, roll: 0 });
  return {
    ...axes,
    position: { x: -DISTANCE * axes.forward.x, y: -DISTANCE * axes.forward.y, z: 0.9 },
    focalPx: 6000,
    radial: 0,
    centre: { u: IMAGE.width / 2, v: IMAGE.height / 2 },
    image: IMAGE,
  };
}
