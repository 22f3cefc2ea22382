import type { LayerLine } from '../../../core/setout/layer-lines.ts';
import type { PaperMark } from '../../../core/setout/paper-marks.ts';
import type { SheetInk } from '../../../core/setout/sheet-inks.ts';

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
};

/** The part of a page that is shown, millimetres from its top left corner. */
export interface PaperPart {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** What is put on paper, drawn on the screen: the same marks as in the PDF, one unit a millimetre. */
export function PaperDrawing(props: { marks: readonly PaperMark[]; part: PaperPart; label: string }) {
  const { left, top, width, height } = props.part;
  return (
    <svg
      className="paper-drawing"
      viewBox={[left, top, width, height].join(' ')}
      style={{ '--paper-wide': `${width}mm` } as React.CSSProperties}
      role="img"
      aria-label={props.label}
    >
      {props.marks.map((mark, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: marks have no names and are drawn anew together
        <Mark key={index} mark={mark} />
      ))}
    </svg>
  );
}

function lined(line: LayerLine | null, fill: SheetInk | null): React.SVGAttributes<SVGElement> {
  return {
    fill: fill ? INKS[fill] : 'none',
    ...(line && {
      stroke: INKS[line.ink],
      strokeWidth: line.width,
      strokeDasharray: line.dash.length > 0 ? line.dash.join(' ') : undefined,
      strokeLinejoin: 'round',
    }),
  };
}

function Mark({ mark }: { mark: PaperMark }) {
  switch (mark.kind) {
    case 'path': {
      const points = mark.points.map((point) => point.map((at) => at.toFixed(3)).join(',')).join(' ');
      const look = lined(mark.line, mark.fill);
      return mark.closed ? <polygon points={points} {...look} /> : <polyline points={points} {...look} />;
    }
    case 'circle':
      return (
        <circle cx={mark.centre[0]} cy={mark.centre[1]} r={mark.radius} {...lined(mark.line, mark.fill)} />
      );
    case 'words': {
      const [x, y] = mark.at;
      return (
        <text
          x={x}
          y={y}
          fontSize={mark.size}
          fontWeight={mark.strong ? 600 : 400}
          textAnchor={mark.anchor}
          fill={INKS[mark.ink]}
          transform={mark.turnDeg === 0 ? undefined : `rotate(${-mark.turnDeg} ${x} ${y})`}
        >
          {mark.text}
        </text>
      );
    }
  }
}
