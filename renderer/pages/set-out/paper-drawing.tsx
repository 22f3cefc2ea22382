import type { PathScale } from '../../../core/graphics/svg.ts';
import { SHEET_LINES, type SheetRole } from '../../../core/setout/layer-lines.ts';
import type { PaperShape } from '../../../core/setout/paper-marks.ts';
import { PADDLER_INK, type SheetInk } from '../../../core/setout/sheet-inks.ts';
import { PaintedShapes, type SvgStyle } from '../../drawing/shapes-svg.tsx';
import './set-out.css';

/** Inks of paper in the colours of the page. */
const INKS: Readonly<Record<SheetInk, string>> = {
  ink: 'var(--ink)',
  soft: 'var(--ink-soft)',
  rule: 'var(--rule)',
  measure: 'var(--measure)',
  mark: 'var(--accent)',
  wood: 'var(--sheet-wood)',
  woodLine: 'var(--wood-line)',
  hull: 'var(--hull)',
  board: 'var(--paper-laid)',
  ...PADDLER_INK,
};

const PAPER_LOOK: SvgStyle<SheetRole> = {
  colour: (role) => INKS[SHEET_LINES[role].ink],
  line: (role) => {
    const { width, dash } = SHEET_LINES[role];
    return { strokeWidth: width, strokeDasharray: dash.join(' ') || undefined, strokeLinejoin: 'round' };
  },
};

/** A page's own millimetres, y down already. */
const MILLIMETRES: PathScale = { perUnit: 1, flip: false, decimals: 3 };

/** The part of a page that is shown, millimetres from its top left corner. */
export interface PaperPart {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** What is put on paper, drawn on the screen: the same shapes as in the PDF, one unit a millimetre. */
export function PaperDrawing(props: { shapes: readonly PaperShape[]; part: PaperPart; label: string }) {
  const { left, top, width, height } = props.part;
  return (
    <svg
      className="paper-drawing"
      viewBox={[left, top, width, height].join(' ')}
      style={{ '--paper-wide': `${width}mm` } as React.CSSProperties}
      role="img"
      aria-label={props.label}
    >
      <PaintedShapes shapes={props.shapes} look={PAPER_LOOK} scale={MILLIMETRES} />
    </svg>
  );
}
