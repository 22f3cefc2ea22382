import { type Area, type Role, ringsOf, type Shape, type Weight } from '../../core/graphics/shape.ts';
import { type PathScale, svgPath, viewScale } from '../../core/graphics/svg.ts';
import type { ViewPoint } from '../../core/graphics/view.ts';
import { CAPITALS_OVER_SIZE } from '../../core/setout/sheet-inks.ts';
import { ROLE_COLOURS } from './view/palette.ts';

/** The style of each role of a list of shapes on a page. */
export interface SvgStyle<R extends string> {
  colour(role: R): string;
  line(role: R, weight: Weight): React.CSSProperties;
}

/** Widths of lines, pixels of the screen whatever the picture's scale. */
const WIDTHS: Readonly<Record<Weight, number>> = { contour: 1.2, detail: 0.9 };

/** Figure, boat and fittings in the theme's colours. */
const FIGURE_LOOK: SvgStyle<Role> = {
  colour: (role) => `var(--${ROLE_COLOURS[role]})`,
  line: (_, weight) => ({
    strokeWidth: WIDTHS[weight],
    strokeLinejoin: 'round',
    strokeLinecap: 'round',
    vectorEffect: 'non-scaling-stroke',
  }),
};

/** The page's ground round letters that lines would run through. */
const CLEAR_GROUND = {
  stroke: 'var(--paper)',
  strokeWidth: 1,
  strokeLinejoin: 'round',
  paintOrder: 'stroke',
} as const;

/** Shapes of a view as SVG, from the far to the near, `perMetre` units of the picture to the metre. */
export function ShapesSvg({ shapes, perMetre }: { shapes: readonly Shape[]; perMetre: number }) {
  return <PaintedShapes shapes={shapes} look={FIGURE_LOOK} scale={viewScale(perMetre)} />;
}

/** Any shapes as SVG, in their order. */
export function PaintedShapes<R extends string>(props: {
  shapes: readonly Shape<R>[];
  look: SvgStyle<R>;
  scale: PathScale;
}) {
  return props.shapes.map((shape, index) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: shapes have no names and are drawn again together
    <ShapeSvg key={index} shape={shape} look={props.look} scale={props.scale} />
  ));
}

interface Painted<R extends string> {
  readonly look: SvgStyle<R>;
  readonly scale: PathScale;
}

function ShapeSvg<R extends string>({ shape, look, scale }: Painted<R> & { shape: Shape<R> }) {
  switch (shape.kind) {
    case 'area':
      return <AreaSvg area={shape} look={look} scale={scale} />;
    case 'line': {
      const style = {
        ...look.line(shape.role, shape.weight),
        fill: 'none',
        stroke: look.colour(shape.role),
      };
      return <path d={svgPath(shape.lines, scale, shape.closed ? 'closed' : 'open')} style={style} />;
    }
    case 'disc': {
      const colour = look.colour(shape.role);
      const style = shape.filled
        ? { fill: colour }
        : { ...look.line(shape.role, 'contour'), fill: 'none', stroke: colour };
      const [cx, cy] = placed(shape.at, scale);
      return <circle cx={cx} cy={cy} r={shape.radius * scale.perUnit} style={style} />;
    }
    case 'text': {
      const [x, y] = placed(shape.at, scale);
      return (
        <text
          x={x}
          y={y}
          fontSize={shape.height / CAPITALS_OVER_SIZE}
          fontWeight={shape.strong ? 600 : 400}
          textAnchor={shape.anchor}
          style={{ fill: look.colour(shape.role), ...(shape.clear ? CLEAR_GROUND : {}) }}
          transform={shape.turnDeg === 0 ? undefined : `rotate(${-shape.turnDeg} ${x} ${y})`}
        >
          {shape.text}
        </text>
      );
    }
  }
}

/** An area's outline is stroked first and filled over, so that it runs round the union of its rings. */
function AreaSvg<R extends string>({ area, look, scale }: Painted<R> & { area: Area<R> }) {
  const { fills, outline } = area;
  const edge = outline && look.line(outline.role, outline.weight);
  return (
    <>
      {outline && edge && (
        <path
          d={svgPath(ringsOf([area]), scale, 'closed')}
          style={{
            ...edge,
            fill: look.colour(outline.role),
            stroke: look.colour(outline.role),
            strokeWidth: 2 * Number(edge.strokeWidth),
          }}
        />
      )}
      {fills.map(({ role, rings }, k) => (
        <path
          // biome-ignore lint/suspicious/noArrayIndexKey: fills have no names and are drawn again together
          key={k}
          d={svgPath(rings, scale, 'closed')}
          data-role={role}
          style={{ fill: look.colour(role) }}
        />
      ))}
    </>
  );
}

function placed([x, y]: ViewPoint, { perUnit, flip }: PathScale): ViewPoint {
  return [x * perUnit, (flip ? -y : y) * perUnit];
}
