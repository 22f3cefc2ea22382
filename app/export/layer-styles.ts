import type { TemplateLayer } from '../../core/setout/template-drawing.ts';

/** How a layer is drawn on paper and in a CAD file. Widths and dashes in millimetres on the paper. */
export interface LayerStyle {
  /** Name in SVG and DXF, in the words of the trade. */
  readonly name: string;
  readonly ink: string;
  readonly width: number;
  readonly dash: readonly number[];
  /** AutoCAD Colour Index, as DXF wants it. */
  readonly colourIndex: number;
}

const INK = '#1f2a33';
const BLUE = '#1f5f73';
const RED = '#b3261e';
const WOOD = '#7a5a2c';
const SOFT = '#5c6a72';

const style = (
  name: string,
  ink: string,
  { width, dash = [], colourIndex }: { width: number; dash?: readonly number[]; colourIndex: number },
): LayerStyle => ({ name, ink, width, dash, colourIndex });

/** Line widths after ISO 128: outlines 0.5, hidden edges and dimensions 0.25, chain lines for axes. */
export const LAYER_STYLES: Readonly<Record<TemplateLayer, LayerStyle>> = {
  outline: style('OUTLINE', INK, { width: 0.5, colourIndex: 7 }),
  edge: style('EDGE', INK, { width: 0.3, dash: [3, 1.5], colourIndex: 8 }),
  recess: style('RECESS', BLUE, { width: 0.5, colourIndex: 5 }),
  depthLine: style('DEPTH-LINES', BLUE, { width: 0.18, colourIndex: 4 }),
  foamCut: style('FOAM-CUT', WOOD, { width: 0.35, dash: [2.2, 1.2], colourIndex: 30 }),
  drill: style('DRILL', SOFT, { width: 0.2, colourIndex: 8 }),
  drillNow: style('DRILL-NOW', RED, { width: 0.35, colourIndex: 1 }),
  centreline: style('CENTRELINE', INK, { width: 0.25, dash: [9, 1.5, 1, 1.5], colourIndex: 2 }),
  centreMark: style('CENTRE-MARK', RED, { width: 0.3, colourIndex: 1 }),
  axis: style('AXIS', INK, { width: 0.2, dash: [6, 1.2, 0.8, 1.2], colourIndex: 3 }),
  toeLine: style('TOE-LINE', RED, { width: 0.5, colourIndex: 6 }),
  fitting: style('FITTINGS', WOOD, { width: 0.35, colourIndex: 32 }),
  hull: style('HULL', INK, { width: 0.5, colourIndex: 7 }),
  person: style('KNEE-AND-SHANK', SOFT, { width: 0.2, dash: [4, 1, 0.8, 1, 0.8, 1], colourIndex: 9 }),
  checkBar: style('CHECK-BAR', INK, { width: 0.2, colourIndex: 7 }),
  dimension: style('DIMENSIONS', INK, { width: 0.18, colourIndex: 251 }),
  lettering: style('LETTERING', INK, { width: 0.18, colourIndex: 7 }),
};
