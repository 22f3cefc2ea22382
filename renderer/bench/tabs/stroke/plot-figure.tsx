import type { Format } from '../../../../app/language/format.ts';
import { useFormat } from '../../../display/use-display.ts';
import { Explained } from '../../../language/explained.tsx';
import { say, words } from '../../../language/messages.ts';
import { type PlotScale, plotScale } from '../../../ui/plot-scale.ts';
import { type Plot, spreadLabels } from './stroke-plots.ts';

/** Height of a plot's field, and of one line of its lettering, pixels. */
const HEIGHT = 84;
const LETTERING = 14;
/** Instants ruled through every plot, as shares of its width: catch and exit; ready is at both ends. */
const RULED = [1 / 3, 2 / 3];
/** A line that hardly moves still gets a range of a thousandth of its unit. */
const SCALE = { spaces: 3, steps: [1, 2, 5], leastRange: 1e-3 };

interface PlotFigureProps {
  readonly plot: Plot;
  /** Places ruled through the plot, as shares of its width: catch and exit unless given. */
  readonly ruled?: readonly number[];
  /** Whether the stroke's slider moves a line over it. */
  readonly cursor?: boolean;
}

/** Room right of a plot for the names of its lines, rem: a line's dash, and so much for a letter; never less than this. */
const LEGEND = { dash: 1.6, letter: 0.42, least: 5.1 };

/** The style of what holds plots, by the longest name of their lines: all of them, and the slider over them, end at one place. */
export function legendRoom(plots: readonly Plot[]): React.CSSProperties {
  const longest = Math.max(0, ...plots.flatMap(({ lines }) => lines.map(({ name }) => name.length)));
  const room = Math.max(LEGEND.least, LEGEND.dash + LEGEND.letter * longest);
  return { '--plot-right': `${room}rem` } as React.CSSProperties;
}

/**
 * One plot, over the stroke unless said otherwise: lines distinguished by their dashes and named at their ends. The field is
 * stretched, its letters are not: they stand in the page beside it.
 */
export function PlotFigure({ plot, ruled = RULED, cursor = true }: PlotFigureProps) {
  const format = useFormat();
  const scale = plotScale(
    plot.lines.flatMap(({ values }) => values),
    SCALE,
  );
  const up = (value: number) => (1 - (value - scale.low) / (scale.high - scale.low)) * HEIGHT;
  const names = spreadLabels(
    plot.lines.map(({ values }) => up(values.at(-1)!)),
    { apart: LETTERING, most: HEIGHT },
  );
  return (
    <figure className="plot" style={cursor ? undefined : legendRoom([plot])}>
      <figcaption>
        <Explained text={plot.title} />
      </figcaption>
      <div className="plot-field" style={{ height: HEIGHT }}>
        {scale.ticks.map((tick) => (
          <span key={tick} className="plot-tick" style={{ top: up(tick) }} aria-hidden="true">
            {format.number(tick, { decimals: decimalsOf(scale) })}
          </span>
        ))}
        <svg
          viewBox={`0 0 1 ${HEIGHT}`}
          preserveAspectRatio="none"
          role="img"
          aria-label={spokenPlot(plot, format)}
        >
          {scale.ticks.map((tick) => (
            <path key={tick} className={tick === 0 ? 'plot-zero' : 'plot-rule'} d={`M0 ${up(tick)}H1`} />
          ))}
          {ruled.map((x) => (
            <path key={x} className="plot-instant" d={`M${x} 0V${HEIGHT}`} />
          ))}
          {plot.lines.map(({ id, values }, index) => (
            <path key={id} className="plot-line" data-line={index} d={pathOf(values, up)} />
          ))}
        </svg>
        {cursor && <span className="plot-cursor" aria-hidden="true" />}
        {plot.lines.map(({ id, name }, index) => (
          <span key={id} className="plot-name" style={{ top: names[index] }} aria-hidden="true">
            <svg viewBox="0 0 16 4" width="16" height="4" aria-hidden="true">
              <path className="plot-line" data-line={index} d="M0 2H16" />
            </svg>
            {name}
          </span>
        ))}
      </div>
    </figure>
  );
}

function pathOf(values: readonly number[], up: (value: number) => number): string {
  return values
    .map(
      (value, i) => `${i === 0 ? 'M' : 'L'}${(i / (values.length - 1)).toFixed(4)} ${up(value).toFixed(2)}`,
    )
    .join('');
}

/** Places after the decimal mark that tell one mark from the next. */
function decimalsOf({ ticks }: PlotScale): number {
  const step = ticks[1]! - ticks[0]!;
  return Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
}

function spokenPlot({ title, lines, decimals }: Plot, format: Format): string {
  const told = lines.map(({ name, values }) =>
    say('stroke.plot.line-spoken', {
      line: name,
      least: format.number(Math.min(...values), { decimals }),
      most: format.number(Math.max(...values), { decimals }),
    }),
  );
  return say('stroke.plot.spoken', { title, lines: words().row(told) });
}
