import { lettersWidth } from './letter-widths.ts';
import { type Dimension, line, type MillimetrePoint, type PlainShape, textAt } from './template-drawing.ts';

/** Sizes on the paper, millimetres, after ISO 129-1: gap at the object, overshoot, arrowhead, lettering. */
const GAP = 1.5;
/** How far a witness line runs past the dimension line. */
const OVERSHOOT = 2;
/** Length of an arrowhead. */
const ARROW = 2.5;
/** Half the breadth of an arrowhead. */
const ARROW_HALF = 0.45;
/** Height of capitals. */
const LETTERING = 3;
/** On drawings to scale lettering is smaller: ISO 3098's next size down. */
const SMALL_LETTERING = 2.5;
/** Dimension lines shorter than this on the paper carry their arrows outside, and the figure beyond them. */
const ROOM_FOR_ARROWS = 9;
/** Length of the tail of an outside arrow, and white beside its figure. */
const TAIL = 5;
/** White left and right of the figure, millimetres. */
const BESIDE_FIGURE = 1;

/** Unit vector square to from→to, on its left; straight up for two equal points. */
export function leftNormal(from: MillimetrePoint, to: MillimetrePoint): MillimetrePoint {
  const dx = to[0] - from[0];
  const dy = to[1] - from[1];
  const length = Math.hypot(dx, dy);
  return length > 0 ? [-dy / length, dx / length] : [0, 1];
}

/**
 * The lines, arrowheads and figure that a dimension is drawn with. `scale` is paper over full size (1 for templates,
 * 0.1 for 1:10); the result is at full size, so that arrows and gaps keep their size **on the paper**. Millimetres.
 */
export function dimensionLines(given: Dimension, scale: number): PlainShape[] {
  const { from, to, offset } = given;
  const paper = (size: number) => size / scale;
  const normal = leftNormal(from, to);
  const ahead: MillimetrePoint = [normal[1], -normal[0]];
  const at = (point: MillimetrePoint, up: number, along = 0): MillimetrePoint => [
    point[0] + normal[0] * up + ahead[0] * along,
    point[1] + normal[1] * up + ahead[1] * along,
  ];
  const side = Math.sign(offset) || 1;
  const level = paper(offset);
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const outside = length * scale < ROOM_FOR_ARROWS;
  const tail = outside ? paper(TAIL) : 0;
  const beyond = outside ? paper(TAIL + BESIDE_FIGURE + figureWidth(given, scale)) : 0;
  const witness = (point: MillimetrePoint) =>
    line('dimension', at(point, side * paper(GAP)), at(point, level + side * paper(OVERSHOOT)));
  const arrow = (tip: MillimetrePoint, sign: 1 | -1) =>
    line(
      'dimension',
      at(tip, level + paper(ARROW_HALF), sign * paper(ARROW)),
      at(tip, level),
      at(tip, level - paper(ARROW_HALF), sign * paper(ARROW)),
    );
  return [
    ...(Math.abs(offset) > GAP ? [witness(from), witness(to)] : []),
    line('dimension', at(from, level, -tail), at(to, level, beyond)),
    arrow(from, outside ? -1 : 1),
    arrow(to, outside ? 1 : -1),
    figure(given, { scale, outside }),
  ];
}

/** Drawings smaller than full size have smaller figures, or they would not find room. */
function letteringHeight(scale: number): number {
  return scale < 1 ? SMALL_LETTERING : LETTERING;
}

/** Width of the figure on the paper, millimetres. */
function figureWidth({ text }: Dimension, scale: number): number {
  return lettersWidth(text) * letteringHeight(scale);
}

/** The figure above its line, or above the line's end past an outside arrow; read from below or the right (ISO 129-1). */
function figure(given: Dimension, { scale, outside }: { scale: number; outside: boolean }): PlainShape {
  const { from, to, offset, text, figureAt = 0.5 } = given;
  const normal = leftNormal(from, to);
  const ahead: MillimetrePoint = [normal[1], -normal[0]];
  const turn = (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI;
  const upright = turn > -89.999 && turn < 90.001;
  const turnDeg = upright ? turn : turn - Math.sign(turn) * 180;
  const lift = (offset + (upright ? 1 : -1)) / scale;
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const along = outside
    ? length / 2 + (TAIL + figureWidth(given, scale) / 2) / scale
    : length * (figureAt - 0.5);
  const at: MillimetrePoint = [
    (from[0] + to[0]) / 2 + normal[0] * lift + ahead[0] * along,
    (from[1] + to[1]) / 2 + normal[1] * lift + ahead[1] * along,
  ];
  const how = { role: 'dimension', height: letteringHeight(scale), anchor: 'middle', turnDeg } as const;
  return textAt(text, at, scale < 1 ? { ...how, clear: true } : how);
}
