import type { FloatResult } from '../../../core/hydrostatics/afloat.ts';
import { bowText } from '../../language/bow-text.ts';
import { say } from '../../language/messages.ts';
import type { HullDrawing } from '../view/hull-drawing.ts';
import { DASH, onPixelGrid, type Pen } from '../view/pen.ts';
import { afloatReady, type Scene, type ScenePart } from '../view/scene.ts';
import { unproject } from '../view/view-geometry.ts';

/** How many times the tilt is drawn larger than it is; less only where the boat would leave the strip. */
export const TILT_DRAWN = [10, 5, 2, 1] as const;
/** Share of the strip's height that bow and stern may rise and fall. */
const ROOM_FOR_TILT = 0.3;
/** Where the water lies in the strip, and how much of its height a level hull may stand over the water, from the top. */
const WATER_AT = 0.6;
const ROOM_OVER_WATER = 0.5;
/** How high the higher end of a tilted hull may stand over the water, as a share of the strip's height. */
const TOP_OF_TILTED = 0.56;
const END_WORDS = 54;
/** From one line of the words beside the strip to the next, at most, pixels. */
const MOST_LINE_STEP = 20;
/** Closer than this, letters of one line touch those of the next, pixels. */
const LEAST_LINE_STEP = 14;

/**
 * The whole boat afloat: level water, the hull tilted ten times as much as it is, and what that means in millimetres. It is drawn
 * with its words, twenty times a second during a drag: it needs the catch too, which costs as much as all the rest of a step.
 */
export const strip: ScenePart = {
  layer: 'labels',
  paint(pen, scene) {
    const place = stripPlace(scene);
    pen.within(scene.layout.strip, () => {
      wateredHull(pen, scene, place);
      marks(pen, scene, place);
    });
    names(pen, scene, place);
    words(pen, scene, place.times);
  },
};

export interface StripPlace {
  readonly pixelsPerMetre: number;
  readonly times: number;
  readonly waterY: number;
  /** x on the screen of a place of the boat. */
  along(x: number): number;
}

/** Scale and place of the boat in the strip, and how many times its tilt is drawn. */
export function stripPlace({ layout, lines, picture }: Scene): StripPlace {
  const { strip: room } = layout;
  const { hull } = lines;
  const afloat = afloatReady(picture);
  const overWater = lines.sheerTop - (afloat?.draft ?? 0);
  const rise = Math.abs(Math.tan(afloat?.trim ?? 0)) * (hull.length / 2);
  // Level it stands this high at most; tilted, its higher end stays within the strip.
  const scaleOf = (times: number) =>
    Math.min(
      (room.width - 2 * END_WORDS) / hull.length,
      (ROOM_OVER_WATER * room.height) / Math.max(overWater, 0.05),
      (TOP_OF_TILTED * room.height) / Math.max(overWater + times * rise, 0.05),
    );
  const times =
    TILT_DRAWN.find((t) => t * rise * scaleOf(t) <= room.height * ROOM_FOR_TILT) ?? TILT_DRAWN.at(-1)!;
  const pixelsPerMetre = scaleOf(times);
  const middle = (hull.aftX + hull.foreX) / 2;
  return {
    pixelsPerMetre,
    times,
    waterY: onPixelGrid(room.top + room.height * WATER_AT),
    along: (x) => room.left + room.width / 2 + (x - middle) * pixelsPerMetre,
  };
}

/** Sheer and keel as a closed path, and the sheer alone, from the side in metres; made once for a hull. */
interface SidePaths {
  readonly outline: Path2D;
  readonly sheer: Path2D;
}
const sides = new WeakMap<HullDrawing, SidePaths>();

function sideOf(lines: HullDrawing): SidePaths {
  const known = sides.get(lines);
  if (known) return known;
  const sheer = new Path2D();
  for (const { x, z } of lines.sheer) sheer.lineTo(x, z);
  const outline = new Path2D(sheer);
  for (const { x, z } of lines.keel.toReversed()) outline.lineTo(x, z);
  outline.closePath();
  sides.set(lines, { outline, sheer });
  return { outline, sheer };
}

/** A path of the boat's side in the strip: heights are above the water, with the part that comes of the tilt drawn larger. */
function floated(
  path: Path2D,
  { along, waterY, pixelsPerMetre, times }: StripPlace,
  { draft, trim }: { draft: number; trim: number },
): Path2D {
  const tilt = -times * Math.tan(trim) * pixelsPerMetre;
  const placed = new Path2D();
  const sunk = waterY + draft * pixelsPerMetre;
  placed.addPath(path, new DOMMatrix([pixelsPerMetre, tilt, 0, -pixelsPerMetre, along(0), sunk]));
  return placed;
}

function wateredHull(pen: Pen, scene: Scene, place: StripPlace): void {
  const { strip: room } = scene.layout;
  const afloat = afloatReady(scene.picture);
  const side = sideOf(scene.lines);
  const outline = floated(side.outline, place, afloat ?? { draft: 0, trim: 0 });
  pen.path(outline, { fill: 'hull' });
  if (afloat) {
    const low = room.top + room.height;
    pen.rect(
      { left: room.left, top: place.waterY, width: room.width, height: low - place.waterY },
      { fill: 'water' },
    );
    pen.line(
      [
        { x: room.left, y: place.waterY },
        { x: room.left + room.width, y: place.waterY },
      ],
      { stroke: 'water-line', width: 1.2 },
    );
    const atCatch = scene.picture.report.afloat.catch;
    if (atCatch.kind === 'afloat') {
      pen.path(floated(side.sheer, place, atCatch), { stroke: 'ink-faint', width: 1, dash: DASH.hidden });
    }
  }
  pen.path(outline, {
    stroke: scene.lit === 'hull' ? 'accent' : 'hull-line',
    width: scene.lit === 'hull' ? 2 : 1.4,
  });
}

/** Names of the ends. */
function names(pen: Pen, { lines: { hull } }: Scene, { along, waterY }: StripPlace): void {
  const caption = { lettering: 'caption', colour: 'ink-soft', baseline: 'middle' } as const;
  const y = waterY - 14;
  pen.text(
    say('stroke.line.stern').toUpperCase(),
    { x: along(hull.aftX) - 5, y },
    { ...caption, align: 'right' },
  );
  pen.text(say('stroke.line.bow').toUpperCase(), { x: along(hull.foreX) + 8, y }, caption);
}

/** The seats' stations, and which stretch is seen below. */
function marks(pen: Pen, scene: Scene, place: StripPlace): void {
  const { strip: room, windows } = scene.layout;
  const { boat } = scene.picture.fit;
  boat.seats.forEach(({ stationM }, index) => {
    const x = onPixelGrid(place.along(stationM));
    const mine = index === scene.seat;
    const top = room.top + (boat.seats.length > 1 ? 15 : 4);
    pen.line(
      [
        { x, y: top },
        { x, y: room.top + room.height },
      ],
      {
        stroke: mine ? 'ink-faint' : 'rule',
        dash: DASH.centre,
      },
    );
    if (boat.seats.length > 1) {
      const ink = { lettering: mine ? 'strong' : 'note', colour: mine ? 'ink' : 'ink-faint' } as const;
      pen.text(
        String(index + 1),
        { x, y: room.top + 7 },
        // A tilted hull may rise behind the number.
        { ...ink, align: 'center', baseline: 'middle', rim: 'paper' },
      );
    }
  });
  const ends = [windows.plan.left, windows.plan.left + windows.plan.width].map((x) => {
    const at = unproject(scene.geometry, 'plan', { screen: { x, y: 0 }, through: { x: 0, y: 0, z: 0 } });
    return Math.min(room.left + room.width - 1, Math.max(room.left + 1, place.along(at.x)));
  });
  bracket(pen, ends as [number, number], room.top + room.height - 1);
}

/** A bracket open upward: the stretch of the boat that is seen below. */
function bracket(pen: Pen, [from, to]: [number, number], y: number): void {
  pen.line(
    [
      { x: from, y: y - 6 },
      { x: from, y },
      { x: to, y },
      { x: to, y: y - 6 },
    ],
    { stroke: 'ink-faint', width: 1 },
  );
}

function words(pen: Pen, scene: Scene, times: number): void {
  const { left, top, height } = scene.layout.stripWords;
  const { ready, catch: atCatch } = scene.picture.report.afloat;
  const lines: readonly (readonly [string, 'label' | 'note'])[] =
    ready.kind === 'afloat'
      ? [
          [bowWords(scene, ready), 'label'],
          [say('drawing.strip.catch', { what: heightWords(scene, atCatch) }), 'note'],
          [say('drawing.strip.tilt', { times }), 'note'],
        ]
      : [[say('drawing.strip.not-afloat'), 'label']];
  // A low strip sets its lines closer, so that the first one stays clear of the window's head.
  const step = Math.max(LEAST_LINE_STEP, Math.min(MOST_LINE_STEP, height / lines.length));
  let y = top + height / 2 - ((lines.length - 1) * step) / 2;
  for (const [text, lettering] of lines) {
    pen.text(
      text,
      { x: left, y },
      { lettering, colour: lettering === 'label' ? 'ink' : 'ink-soft', baseline: 'middle' },
    );
    y += step;
  }
}

function bowWords(scene: Scene, afloat: FloatResult): string {
  return say('drawing.strip.bow', { what: heightWords(scene, afloat) });
}

function heightWords({ format }: Scene, afloat: FloatResult): string {
  return afloat.kind === 'afloat' ? bowText(afloat.bowOverStern, format) : '–';
}
