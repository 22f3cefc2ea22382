import { say } from '../../language/messages.ts';
import { DASH, onPixelGrid, type Pen } from '../view/pen.ts';
import { type RulerMark, rulerMarks } from '../view/ruler-marks.ts';
import { datumX, projectorOf, type Scene, type ScenePart } from '../view/scene.ts';
import type { ScreenRect } from '../view/screen-point.ts';
import { seatFloor } from '../view/seat-floor.ts';
import { isShown } from '../view/sheet-layout.ts';

/** Station lines, centre mark, centrelines, rulers: everything that stands still in a drag. */
export const ground: ScenePart = {
  layer: 'ground',
  paint(pen, scene) {
    stationLines(pen, scene);
    datumLines(pen, scene);
    lengthRuler(pen, scene);
    sideRulers(pen, scene);
    if (isShown(scene.layout, 'section')) breadthRuler(pen, scene);
  },
};

const right = ({ left, width }: ScreenRect) => left + width;
const bottom = ({ top, height }: ScreenRect) => top + height;

function stationLines(pen: Pen, scene: Scene): void {
  const { plan, profile } = scene.layout.windows;
  for (const { at, labelled } of lengthMarks(scene)) {
    const x = onPixelGrid(at);
    for (const window of [plan, profile]) {
      pen.line(
        [
          { x, y: window.top },
          { x, y: bottom(window) },
        ],
        { stroke: 'rule-faint', alpha: labelled ? 0.9 : 0.4 },
      );
    }
  }
}

function lengthMarks(scene: Scene) {
  const { plan } = scene.layout.windows;
  const toScreen = projectorOf(scene, 'plan');
  return rulerMarks({
    zero: toScreen({ x: datumX(scene), y: 0, z: 0 }).x,
    pixelsPerMetre: scene.geometry.camera.pixelsPerMetre,
    from: plan.left,
    to: right(plan),
    unit: scene.format.lengthUnit,
  });
}

/** The centre mark (or the seat's own mark) through plan and profile; centrelines of plan and section; other seats' marks. */
function datumLines(pen: Pen, scene: Scene): void {
  const { plan, profile, section } = scene.layout.windows;
  const inPlan = projectorOf(scene, 'plan');
  const inSection = projectorOf(scene, 'section');
  const clear = { stroke: 'ink-faint', dash: DASH.centre } as const;
  scene.picture.fit.boat.seats.forEach(({ stationM }, index) => {
    const x = onPixelGrid(inPlan({ x: stationM, y: 0, z: 0 }).x);
    const mine = index === scene.seat;
    for (const window of [plan, profile]) {
      if (x < window.left || x > right(window)) continue;
      pen.line(
        [
          { x, y: window.top },
          { x, y: bottom(window) },
        ],
        mine ? clear : { ...clear, alpha: 0.45 },
      );
    }
  });
  const y = onPixelGrid(inPlan({ x: 0, y: 0, z: 0 }).y);
  pen.within(plan, () =>
    pen.line(
      [
        { x: plan.left, y },
        { x: right(plan), y },
      ],
      clear,
    ),
  );
  const middle = onPixelGrid(inSection({ x: 0, y: 0, z: 0 }).x);
  pen.within(section, () =>
    pen.line(
      [
        { x: middle, y: section.top + 20 },
        { x: middle, y: bottom(section) },
      ],
      { ...clear, alpha: 0.7 },
    ),
  );
}

/** A word in a ruler's row of numbers: its text, its middle or end, and where it stands. */
interface RulerWord {
  readonly text: string;
  readonly x: number;
  readonly align: 'left' | 'center' | 'right';
  readonly colour: 'ink-faint' | 'ink-soft';
}

/** Free space kept between a ruler's word and a number, pixels. */
const WORD_GAP = 8;

/** A ruler along the foot of a view: its line, its marks, and its words in one row with the numbers. */
function footRuler(
  pen: Pen,
  scene: Scene,
  given: { window: ScreenRect; marks: readonly RulerMark[]; words: readonly RulerWord[] },
): void {
  const { window, marks, words } = given;
  const top = scene.layout.rulerTop + 4;
  const row = top + 10;
  pen.line(
    [
      { x: window.left, y: onPixelGrid(top) },
      { x: right(window), y: onPixelGrid(top) },
    ],
    { stroke: 'rule' },
  );
  const taken = words.map(({ text, x, align, colour }) => {
    pen.text(text, { x, y: row + 1 }, { lettering: 'caption', colour, align, baseline: 'top' });
    const width = pen.widthOf(text, 'caption');
    const left = align === 'left' ? x : align === 'right' ? x - width : x - width / 2;
    return [left - WORD_GAP, left + width + WORD_GAP] as const;
  });
  for (const { at, labelled, text } of marks) {
    const x = onPixelGrid(at);
    pen.line(
      [
        { x, y: top },
        { x, y: top + (labelled ? 7 : 4) },
      ],
      { stroke: 'ink-soft' },
    );
    const half = labelled ? pen.widthOf(text, 'note') / 2 : 0;
    if (!labelled || taken.some(([from, to]) => x + half > from && x - half < to)) continue;
    pen.text(
      text,
      { x, y: row },
      { lettering: 'note', colour: 'ink-soft', align: 'center', baseline: 'top' },
    );
  }
}

/** A ruler's name in capitals, but for the unit at its end: cm is no CM. */
export function rulerName(text: string, unit: string): string {
  const name = text.endsWith(unit) ? text.slice(0, -unit.length) : text;
  return name.toUpperCase() + text.slice(name.length);
}

function lengthRuler(pen: Pen, scene: Scene): void {
  const { layout, picture, seat, format } = scene;
  const { plan } = layout.windows;
  const zero = projectorOf(scene, 'plan')({ x: datumX(scene), y: 0, z: 0 }).x;
  const name = (
    picture.fit.boat.seats.length === 1
      ? say('drawing.centre-mark')
      : say('drawing.seat-mark', { number: seat + 1 })
  ).toUpperCase();
  const half = pen.widthOf(name, 'caption') / 2;
  const hasRoom = zero - half > plan.left + 90 && zero + half < right(plan) - 70;
  const aft = rulerName(say('drawing.ruler.aft', { unit: format.lengthUnit }), format.lengthUnit);
  const forward = say('drawing.ruler.forward').toUpperCase();
  footRuler(pen, scene, {
    window: plan,
    marks: lengthMarks(scene),
    words: [
      { text: aft, x: plan.left, align: 'left', colour: 'ink-faint' },
      { text: forward, x: right(plan), align: 'right', colour: 'ink-faint' },
      ...(hasRoom ? [{ text: name, x: zero, align: 'center', colour: 'ink-soft' } as const] : []),
    ],
  });
}

/** Off the centreline beside the plan; above the floorboard beside the profile. */
function sideRulers(pen: Pen, scene: Scene): void {
  const { plan, profile } = scene.layout.windows;
  const { pixelsPerMetre } = scene.geometry.camera;
  const unit = scene.format.lengthUnit;
  const floor = { x: 0, y: 0, z: seatFloor(scene) };
  upright(pen, plan, { zero: projectorOf(scene, 'plan')(floor).y, pixelsPerMetre, unit, down: true });
  upright(pen, profile, { zero: projectorOf(scene, 'profile')(floor).y, pixelsPerMetre, unit, down: false });
}

function upright(
  pen: Pen,
  window: ScreenRect,
  scale: { zero: number; pixelsPerMetre: number; unit: 'cm' | 'mm' | 'in'; down: boolean },
): void {
  const x = onPixelGrid(window.left - 6);
  pen.line(
    [
      { x, y: window.top },
      { x, y: bottom(window) },
    ],
    { stroke: 'rule' },
  );
  const marks = rulerMarks({ ...scale, from: window.top, to: bottom(window) });
  for (const { at, labelled, text } of marks) {
    const y = onPixelGrid(at);
    pen.line(
      [
        { x: x - (labelled ? 6 : 3), y },
        { x, y },
      ],
      { stroke: 'ink-soft' },
    );
    const roomForText = labelled && y > window.top + 5 && y < bottom(window) - 5;
    if (roomForText && (scale.down || scale.zero - at > -4)) {
      pen.text(
        text,
        { x: x - 9, y: y + 0.5 },
        { lettering: 'note', colour: 'ink-soft', align: 'right', baseline: 'middle' },
      );
    }
  }
}

function breadthRuler(pen: Pen, scene: Scene): void {
  const { section } = scene.layout.windows;
  const marks = rulerMarks({
    zero: projectorOf(scene, 'section')({ x: 0, y: 0, z: 0 }).x,
    pixelsPerMetre: scene.geometry.camera.pixelsPerMetre,
    from: section.left,
    to: right(section),
    unit: scene.format.lengthUnit,
  });
  const word = { colour: 'ink-faint' } as const;
  footRuler(pen, scene, {
    window: section,
    marks,
    words: [
      { ...word, text: say('drawing.ruler.left').toUpperCase(), x: section.left, align: 'left' },
      { ...word, text: say('drawing.ruler.right').toUpperCase(), x: right(section), align: 'right' },
    ],
  });
}
