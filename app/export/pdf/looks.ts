import type { Role, Weight } from '../../../core/graphics/shape.ts';
import { SHEET_LINES, type SheetRole } from '../../../core/setout/layer-lines.ts';
import { SHEET_INK } from './sheet-inks.ts';

/** How a page shows the roles of a list of shapes: colours, and lines in millimetres on the paper. */
export interface PaperLook<R extends string> {
  colour(role: R): string;
  line(role: R, weight: Weight): { readonly width: number; readonly dash?: readonly number[] };
}

/** Colours on white paper: soft graphite for the paddler, the farther paler; distinguished in grey too. */
const COLOURS: Readonly<Record<Role, string>> = {
  skin: '#dcd6ca',
  skinFar: '#ebe7df',
  top: '#b6bbba',
  topFar: '#d5d8d4',
  shorts: '#8f989c',
  shortsFar: '#bbc1bf',
  hair: '#727372',
  figureLine: '#3f464a',
  shaft: '#b98b4f',
  blade: '#c99a5b',
  paddleLine: '#5d421f',
  water: '#dde9e7',
  waterLine: '#7fa6a4',
  hull: '#f3e8cf',
  hullLine: '#1f2a33',
  board: '#e4d2a8',
  wood: '#d0a56a',
  recess: '#b98b52',
  woodLine: '#5d421f',
  strap: '#6e5b3f',
};

/** Widths of lines on paper, millimetres. */
const WIDTHS: Readonly<Record<Weight, number>> = { contour: 0.2, detail: 0.14 };

/** Figure, boat and fittings. */
export const FIGURE_LOOK: PaperLook<Role> = {
  colour: (role) => COLOURS[role],
  line: (_, weight) => ({ width: WIDTHS[weight] }),
};

/** Sheets and templates. */
export const SHEET_LOOK: PaperLook<SheetRole> = {
  colour: (role) => SHEET_INK[SHEET_LINES[role].ink],
  line: (role) => SHEET_LINES[role],
};
