import type { SheetInk } from './sheet-inks.ts';
import type { TemplateLayer } from './template-drawing.ts';

/** How a layer's lines are drawn: ink by name, width and dashes in millimetres on the paper. */
export interface LayerLine {
  readonly ink: SheetInk;
  /** Millimetres on the paper. */
  readonly width: number;
  /** Lengths of dash and gap in turn; empty for a whole line. */
  readonly dash: readonly number[];
}

/** One line of the table. */
const line = (ink: SheetInk, width: number, ...dash: readonly number[]): LayerLine => ({ ink, width, dash });

/** Line widths after ISO 128: outlines 0.5, hidden edges and dimensions about 0.25, chain lines for axes. Millimetres. */
export const LAYER_LINES: Readonly<Record<TemplateLayer, LayerLine>> = {
  outline: line('ink', 0.5),
  edge: line('ink', 0.3, 3, 1.5),
  recess: line('measure', 0.5),
  depthLine: line('measure', 0.18),
  foamCut: line('woodLine', 0.35, 2.2, 1.2),
  woodLine: line('woodLine', 0.2, 2.2, 1.2),
  drill: line('soft', 0.2),
  drillNow: line('mark', 0.35),
  centreline: line('ink', 0.25, 9, 1.5, 1, 1.5),
  centreMark: line('mark', 0.3),
  axis: line('ink', 0.2, 6, 1.2, 0.8, 1.2),
  toeLine: line('mark', 0.5),
  fitting: line('woodLine', 0.35),
  hull: line('ink', 0.5),
  person: line('soft', 0.2, 4, 1, 0.8, 1, 0.8, 1),
  paddlerA: line('paddlerA', 0.5),
  paddlerB: line('paddlerB', 0.5),
  paddlerC: line('paddlerC', 0.5),
  paddlerD: line('paddlerD', 0.5),
  paddlerE: line('paddlerE', 0.5),
  paddlerF: line('paddlerF', 0.5),
  checkBar: line('ink', 0.2),
  dimension: line('ink', 0.18),
  lettering: line('ink', 0.18),
};

/** What a sheet shows besides a template's layers: fills, ties between views, the small plan of the whole boat, inks of words. */
const SHEET_ONLY = {
  woodFill: line('wood', 0),
  boardFill: line('board', 0),
  hullFill: line('hull', 0),
  tie: line('rule', 0.1),
  smallHull: line('ink', 0.2),
  seatHere: line('mark', 0.3),
  seatElsewhere: line('soft', 0.15),
  ink: line('ink', 0.2),
  soft: line('soft', 0.2),
  measure: line('measure', 0.2),
  mark: line('mark', 0.2),
} as const;

/** The role of a shape on a sheet. */
export type SheetRole = TemplateLayer | keyof typeof SHEET_ONLY;

/** How each role of a sheet is drawn. */
export const SHEET_LINES: Readonly<Record<SheetRole, LayerLine>> = { ...LAYER_LINES, ...SHEET_ONLY };
