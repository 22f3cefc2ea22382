import type { Fit } from '../../core/document/fit-schema.ts';
import { evaluateFit } from '../../core/evaluation/evaluator.ts';
import type { Line, Role, Shape, Weight } from '../../core/graphics/shape.ts';
import { hullOfBoat } from '../../core/hull/hull-of-boat.ts';
import { type ShowView, showPicture } from '../../core/show/show-picture.ts';
import { showWindow } from '../../core/show/show-window.ts';
import { strokeScenes } from '../../core/show/stroke-scenes.ts';
import type { Translator } from '../language/translator.ts';
import { FIGURE_LOOK } from './pdf/looks.ts';
import { xmlText } from './xml-text.ts';

/** How many pictures one stroke has. */
const FRAMES = 24;
/** The picture's units to the metre: whole ones, two millimetres of the boat each. */
const PER_METRE = 500;
/** Widths of lines, pixels of the screen. */
const WIDTHS: Readonly<Record<Weight, number>> = { contour: 1.2, detail: 0.9 };

/**
 * One stroke of the paddler in seat `index` as an SVG that moves by itself, at the athlete's rate, without a script. A reader
 * that asks for less motion, and a printer, get the ready hold alone. Null when nobody kneels there.
 */
export function movingPicture(
  fit: Fit,
  { index, view, words }: { index: number; view: ShowView; words: Translator },
): string | null {
  const stroke = strokeScenes({ fit, report: evaluateFit(fit) }, index, FRAMES);
  if (!stroke) return null;
  const hull = hullOfBoat(fit.boat);
  const { from, width, height } = showWindow(stroke.scenes, view);
  const box = [from[0], -from[1] - height, width, height].map((metres) => Math.round(metres * PER_METRE));
  const pictures = stroke.scenes.map((scene) => showPicture(scene, hull, view));
  const frames = pictures.map(({ person }, k) => {
    const delay = ((stroke.period * k) / FRAMES).toFixed(3);
    return `<g class="f" style="animation-delay:${delay}s">${painted(person)}</g>`;
  });
  const title = words.row([fit.seats[index]!.athlete!.name, words.say(`show.picture.${view}`)]);
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${box.join(' ')}" role="img">`,
    `<title>${xmlText(title)}</title>`,
    `<style>${style(stroke.period)}</style>`,
    `<rect x="${box[0]}" y="${box[1]}" width="${box[2]}" height="${box[3]}" fill="#fff"/>`,
    painted(pictures[0]!.ground),
    ...frames,
    '</svg>',
    '',
  ].join('\n');
}

/** Each picture is seen for its share of the period, one after another. Without animation the first stands. */
function style(period: number): string {
  const share = (100 / FRAMES).toFixed(4);
  return [
    'path{stroke-linejoin:round;stroke-linecap:round;vector-effect:non-scaling-stroke}',
    `.f{visibility:hidden;animation:f ${period.toFixed(3)}s step-end infinite}`,
    '.f:first-of-type{visibility:visible}',
    `@keyframes f{0%{visibility:visible}${share}%{visibility:hidden}}`,
    '@media (prefers-reduced-motion:reduce),print{.f{animation:none}}',
  ].join('');
}

const colour = (role: Role) => FIGURE_LOOK.colour(role);

function painted(shapes: readonly Shape[]): string {
  return shapes.map(paintedShape).join('');
}

/** An area's outline is stroked under its fills, so that it runs round the union of its rings. */
function paintedShape(shape: Shape): string {
  if (shape.kind === 'line') {
    const data = pathOf(shape.lines, shape.closed ? 'z' : '');
    return `<path d="${data}" fill="none" ${stroke(shape.role, WIDTHS[shape.weight])}/>`;
  }
  if (shape.kind !== 'area') return '';
  const { fills, outline } = shape;
  const under = outline && stroke(outline.role, 2 * WIDTHS[outline.weight]);
  if (under && fills.length === 1) {
    const [{ role, rings }] = fills as [(typeof fills)[number]];
    const data = pathOf(rings, 'z');
    return `<path d="${data}" fill="${colour(role)}" ${under} paint-order="stroke"/>`;
  }
  const all = pathOf(
    fills.flatMap(({ rings }) => rings),
    'z',
  );
  const over = fills.map(({ role, rings }) => {
    return `<path d="${pathOf(rings, 'z')}" fill="${colour(role)}"/>`;
  });
  return [under ? `<path d="${all}" fill="none" ${under}/>` : '', ...over].join('');
}

/** Lines as path data, each point as its way from the one before: a third as long as places are. */
function pathOf(lines: readonly Line[], end: 'z' | ''): string {
  let path = '';
  for (const line of lines) {
    let [x, y] = [0, 0];
    for (let k = 0; k < line.length; k += 2) {
      const [right, down] = [Math.round(line[k]! * PER_METRE), Math.round(-line[k + 1]! * PER_METRE)];
      if (k > 0 && right === x && down === y) continue;
      const by = k === 0 ? [right, down] : [right - x, down - y];
      path += `${k === 0 ? 'M' : 'l'}${by[0]}${by[1]! < 0 ? '' : ' '}${by[1]}`;
      [x, y] = [right, down];
    }
    path += end;
  }
  return path;
}

const stroke = (role: Role, width: number) => `stroke="${colour(role)}" stroke-width="${width}"`;
