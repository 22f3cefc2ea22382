import { type GripMark, gripMarks } from '../view/grip-marks.ts';
import { HANDLES, sameGrip } from '../view/handle.ts';
import type { Pen } from '../view/pen.ts';
import type { Scene, ScenePart } from '../view/scene.ts';
import type { ScreenPoint } from '../view/screen-point.ts';

/** The handles: rings where a fitting can be dragged. Only what is being dragged is in the accent colour. */
export const grips: ScenePart = {
  layer: 'overlay',
  paint(pen, scene) {
    for (const mark of gripMarks(scene)) gripMark(pen, scene, mark);
  },
};

function gripMark(pen: Pen, scene: Scene, mark: GripMark): void {
  const { grip, at, stalk, radius, locked } = mark;
  const held = sameGrip(scene.held?.grip ?? null, grip);
  const pointed = sameGrip(scene.pointed, grip);
  const kin = scene.held?.grip.handle === grip.handle || scene.pointed?.handle === grip.handle;
  const colour = held || pointed ? 'accent' : kin ? 'ink' : 'ink-soft';
  if (stalk) {
    const away = Math.hypot(at.x - stalk.x, at.y - stalk.y) || 1;
    const end = {
      x: at.x + ((stalk.x - at.x) * radius) / away,
      y: at.y + ((stalk.y - at.y) * radius) / away,
    };
    pen.line([stalk, end], { stroke: colour, width: 1 });
  }
  if (scene.focused && pointed) pen.disc(at, radius + 6, { stroke: 'focus', width: 2.5 });
  if (locked) {
    lockedMark(pen, mark, colour);
    return;
  }
  if (held) {
    heldMark(pen, at, radius);
    return;
  }
  pen.disc(at, radius, { fill: 'paper', stroke: colour, width: 1.8 });
  signOf(pen, mark, colour);
}

/** What is being dragged stays visible: an open ring with the exact point in it. */
function heldMark(pen: Pen, at: ScreenPoint, radius: number): void {
  pen.disc(at, radius + 5, { fill: 'paper', alpha: 0.45 });
  pen.disc(at, radius + 5, { stroke: 'paper', width: 5, alpha: 0.8 });
  pen.disc(at, radius + 5, { stroke: 'accent', width: 2.4 });
  pen.disc(at, 2.4, { fill: 'accent' });
}

/** What can be done with it: a dot to place, a curved arrow's head to turn, two bars to slide. */
function signOf(pen: Pen, { grip, at, radius }: GripMark, colour: 'accent' | 'ink' | 'ink-soft'): void {
  const { motion } = HANDLES[grip.handle];
  if (motion === 'place') pen.disc(at, radius * 0.36, { fill: colour });
  if (motion === 'shaft') {
    for (const dy of [-0.28, 0.28]) {
      const y = at.y + dy * radius;
      pen.line(
        [
          { x: at.x - radius * 0.45, y },
          { x: at.x + radius * 0.45, y },
        ],
        { stroke: colour, width: 1.4 },
      );
    }
  }
}

/** The mark of a locked fitting: a square nail head. */
function lockedMark(pen: Pen, { at, radius }: GripMark, colour: 'accent' | 'ink' | 'ink-soft'): void {
  const r = radius * 0.85;
  pen.rect(
    { left: at.x - r, top: at.y - r, width: 2 * r, height: 2 * r },
    { fill: 'paper', stroke: colour, width: 1.6 },
  );
  const c = r * 0.5;
  pen.line(
    [
      { x: at.x - c, y: at.y - c },
      { x: at.x + c, y: at.y + c },
    ],
    { stroke: colour, width: 1.4 },
  );
  pen.line(
    [
      { x: at.x - c, y: at.y + c },
      { x: at.x + c, y: at.y - c },
    ],
    { stroke: colour, width: 1.4 },
  );
}
