import type { Format } from '../../../app/language/format.ts';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { nameInSeat } from '../../bench/crew-names.ts';
import { READY_ALONE } from '../../document/bench-view.ts';
import { boat } from '../../drawing/layers/boat.ts';
import { figures } from '../../drawing/layers/figure.ts';
import { fittings } from '../../drawing/layers/fittings.ts';
import { hullLines } from '../../drawing/view/hull-lines.ts';
import { referredPalette } from '../../drawing/view/palette.ts';
import { crisp, DASH, Pen } from '../../drawing/view/pen.ts';
import { boatBox } from '../../drawing/view/picture.ts';
import { onto, type Picture, type Scene } from '../../drawing/view/scene.ts';
import { VectorSurface } from '../../drawing/view/vector-surface.ts';
import { boxSize } from '../../drawing/view/view-geometry.ts';
import { say } from '../../language/messages.ts';

/** Width of the sheet's drawing, CSS pixels; print scales it to the paper. */
const WIDTH = 1000;
/** Room above each view for the names of the marks, and beside the boat for the names of its ends. */
const HEAD = 34;
const SIDE = 62;
/** A boat's outline and a figure still read at this size; a short boat is drawn no larger. Pixels per metre. */
const GREATEST_SCALE = 150;

/** The whole boat with everybody in it, from above and from the side, as vectors. */
export interface CrewDrawing {
  readonly surface: VectorSurface;
  readonly width: number;
  readonly height: number;
}

/** Draws the sheet's overview with the same parts as the bench. */
export function crewDrawing(picture: Picture, format: Format): CrewDrawing {
  const scene = crewScene(picture, format);
  const surface = new VectorSurface();
  const pen = new Pen(surface, referredPalette());
  for (const part of [boat, fittings, figures]) part.paint(pen, scene);
  marks(pen, scene);
  return { surface, width: WIDTH, height: scene.layout.height };
}

function crewScene(picture: Picture, format: Format): Scene {
  const lines = hullLines(hullOfBoat(picture.fit.boat));
  const box = boatBox(picture, lines);
  const size = boxSize(box);
  const pixelsPerMetre = Math.min(GREATEST_SCALE, (WIDTH - 2 * SIDE) / size.x);
  const planHeight = Math.ceil(size.y * pixelsPerMetre);
  const profileHeight = Math.ceil(size.z * pixelsPerMetre);
  const plan = { left: 0, top: HEAD, width: WIDTH, height: planHeight };
  const profile = { left: 0, top: HEAD + planHeight + HEAD, width: WIDTH, height: profileHeight };
  const nowhere = { left: 0, top: 0, width: 0, height: 0 };
  const height = profile.top + profileHeight;
  const { least, most } = box;
  return {
    picture,
    ghost: null,
    seat: 0,
    notes: [],
    stroke: READY_ALONE,
    alike: true,
    layout: {
      width: WIDTH,
      height,
      strip: nowhere,
      stripWords: nowhere,
      windows: { plan, profile, section: nowhere },
      cardPlace: 'after',
      look: { right: 0, top: 0 },
      card: nowhere,
      lanes: { upper: 0, middle: 0 },
      rulerTop: height,
    },
    geometry: {
      windows: { plan, profile, section: nowhere },
      camera: {
        pixelsPerMetre,
        at: { x: (least.x + most.x) / 2, y: (least.y + most.y) / 2, z: (least.z + most.z) / 2 },
      },
    },
    lines,
    format,
    lit: null,
    held: null,
    pointed: null,
    focused: false,
    touch: false,
  };
}

/** Seats of a four stand close: the first name is enough, the table has the whole. */
const firstOf = (name: string) => name.split(' ')[0]!;

/** The seats' marks and the centre mark through both views, with their names between; bow and stern named. */
function marks(pen: Pen, scene: Scene): void {
  const { plan, profile } = scene.layout.windows;
  const { seats } = scene.picture.fit.boat;
  const to = onto(scene, 'plan');
  const line = (stationM: number, name: string, strong: boolean) => {
    const x = crisp(to({ x: stationM, y: 0, z: 0 }).x);
    for (const window of [plan, profile]) {
      pen.line(
        [
          { x, y: window.top - 4 },
          { x, y: window.top + window.height },
        ],
        { stroke: 'ink-faint', width: 0.8, dash: DASH.centre },
      );
      const ink = { lettering: strong ? 'strong' : 'note', colour: strong ? 'ink' : 'ink-soft' } as const;
      pen.text(name, { x, y: window.top - 14 }, { ...ink, align: 'center', baseline: 'middle' });
    }
  };
  seats.forEach(({ stationM }, index) => {
    const name = nameInSeat(scene.picture.fit, index);
    line(stationM, say('bench.seat.of', { number: index + 1, name: firstOf(name) }), true);
  });
  // A seat's mark within a hand's breadth of the middle would hide the centre mark's name.
  if (seats.every(({ stationM }) => Math.abs(stationM) * scene.geometry.camera.pixelsPerMetre > 90))
    line(0, say('drawing.centre-mark'), false);
  const { hull } = scene.lines;
  const caption = { lettering: 'caption', colour: 'ink-soft', baseline: 'middle' } as const;
  const y = to({ x: 0, y: 0, z: 0 }).y;
  const stern = to({ x: hull.aftX, y: 0, z: 0 }).x;
  const bow = to({ x: hull.foreX, y: 0, z: 0 }).x;
  pen.text(say('drawing.stern').toUpperCase(), { x: stern - 6, y }, { ...caption, align: 'right' });
  pen.text(say('drawing.bow').toUpperCase(), { x: bow + 6, y }, caption);
}
