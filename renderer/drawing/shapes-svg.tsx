import type { Line, Role, Shape, Weight } from '../../core/graphics/shape.ts';
import { svgPath } from '../../core/graphics/svg.ts';
import { ROLE_COLOURS } from './view/palette.ts';

/** Widths of lines, pixels of the screen whatever the picture's scale. */
const WIDTHS: Readonly<Record<Weight, number>> = { contour: 1.2, detail: 0.9 };

const colour = (role: Role) => `var(--${ROLE_COLOURS[role]})`;

/** Shapes of a view as SVG, from the far to the near, `perMetre` units of the picture to the metre. */
export function ShapesSvg({ shapes, perMetre }: { shapes: readonly Shape[]; perMetre: number }) {
  return shapes.map((shape, index) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: shapes have no names and are drawn anew together
    <ShapeSvg key={index} shape={shape} perMetre={perMetre} />
  ));
}

/** An area's outline is stroked first and filled over, so that it runs round the union of its rings. */
function ShapeSvg({ shape, perMetre }: { shape: Shape; perMetre: number }) {
  const path = (lines: readonly Line[], closed: boolean) => svgPath(lines, { perMetre, closed });
  const stroke = {
    strokeLinejoin: 'round',
    strokeLinecap: 'round',
    vectorEffect: 'non-scaling-stroke',
  } as const;
  if (shape.kind === 'line') {
    const style = { ...stroke, fill: 'none', stroke: colour(shape.role), strokeWidth: WIDTHS[shape.weight] };
    return <path d={path(shape.lines, false)} style={style} />;
  }
  const { fills, outline } = shape;
  return (
    <>
      {outline && (
        <path
          d={path(
            fills.flatMap(({ rings }) => rings),
            true,
          )}
          style={{
            ...stroke,
            fill: colour(outline.role),
            stroke: colour(outline.role),
            strokeWidth: 2 * WIDTHS[outline.weight],
          }}
        />
      )}
      {fills.map(({ role, rings }, k) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: fills have no names and are drawn anew together
        <path key={k} d={path(rings, true)} data-role={role} style={{ fill: colour(role) }} />
      ))}
    </>
  );
}
