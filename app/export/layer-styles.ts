import { LAYER_LINES } from '../../core/setout/layer-lines.ts';
import { TEMPLATE_LAYERS, type TemplateLayer } from '../../core/setout/template-drawing.ts';
import { recordOf } from '../../core/units/entries.ts';
import { SHEET_INK } from './pdf/sheet-inks.ts';

/** How a layer is drawn in a file for saw and drill. Widths and dashes in millimetres on the paper. */
interface LayerStyle {
  /** Name in SVG and DXF, in the words of the trade. */
  readonly name: string;
  readonly ink: string;
  readonly width: number;
  readonly dash: readonly number[];
  /** Colour number of the DXF reference (group code 62). */
  readonly colourIndex: number;
}

const NAMES: Readonly<Record<TemplateLayer, readonly [name: string, colourIndex: number]>> = {
  outline: ['OUTLINE', 7],
  edge: ['EDGE', 8],
  recess: ['RECESS', 5],
  depthLine: ['DEPTH-LINES', 4],
  foamCut: ['FOAM-CUT', 30],
  woodLine: ['WOOD-LINES', 32],
  drill: ['DRILL', 8],
  drillNow: ['DRILL-NOW', 1],
  centreline: ['CENTRELINE', 2],
  centreMark: ['CENTRE-MARK', 1],
  axis: ['AXIS', 3],
  toeLine: ['TOE-LINE', 6],
  fitting: ['FITTINGS', 32],
  hull: ['HULL', 7],
  person: ['KNEE-AND-SHANK', 9],
  paddlerA: ['PADDLER-A', 5],
  paddlerB: ['PADDLER-B', 30],
  paddlerC: ['PADDLER-C', 3],
  paddlerD: ['PADDLER-D', 6],
  paddlerE: ['PADDLER-E', 40],
  paddlerF: ['PADDLER-F', 4],
  checkBar: ['CHECK-BAR', 7],
  dimension: ['DIMENSIONS', 251],
  lettering: ['LETTERING', 7],
};

/** Every layer's name, line and colour. */
export const LAYER_STYLES = recordOf(TEMPLATE_LAYERS, (layer): LayerStyle => {
  const { ink, width, dash } = LAYER_LINES[layer];
  const [name, colourIndex] = NAMES[layer];
  return { name, ink: SHEET_INK[ink], width, dash, colourIndex };
});
