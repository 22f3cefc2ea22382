import type { DatedValue } from '../../../core/growth/body-change.ts';
import { daysBetween } from '../../../core/growth/calendar-days.ts';
import { dateText } from '../../language/dates.ts';
import { say } from '../../language/messages.ts';
import { plotScale } from '../../ui/plot-scale.ts';

const WIDTH = 420;
const HEIGHT = 190;
/** Room for the figures at the left and the days below. */
const INSET = { left: 64, right: 14, top: 14, bottom: 30 };

/** One dated value as a line over time; the same values stand in the page's table. */
export function HistoryPlot(props: {
  name: string;
  values: readonly DatedValue[];
  write: (value: number) => string;
}) {
  const { name, values, write } = props;
  const [first, last] = [values[0], values.at(-1)];
  if (!first || !last || values.length < 2) return null;
  const days = Math.max(1, daysBetween(first.takenOn, last.takenOn));
  const figures = values.map(({ value }) => value);
  const leastRange = new Set(figures).size > 1 ? 0 : Math.abs(last.value) * 0.02;
  const scale = plotScale(figures, { spaces: 4, steps: [1, 2, 2.5, 5], leastRange });
  const x = (day: string) =>
    INSET.left + (daysBetween(first.takenOn, day) / days) * (WIDTH - INSET.left - INSET.right);
  const y = (value: number) =>
    HEIGHT -
    INSET.bottom -
    ((value - scale.low) / (scale.high - scale.low)) * (HEIGHT - INSET.top - INSET.bottom);
  const spoken = say('history.plot', {
    what: name,
    count: values.length,
    from: write(first.value),
    first: dateText(first.takenOn),
    to: write(last.value),
    last: dateText(last.takenOn),
  });
  const line = values
    .map(({ takenOn, value }) => `${x(takenOn).toFixed(1)} ${y(value).toFixed(1)}`)
    .join('L');
  return (
    <figure className="history-plot">
      <figcaption>{name}</figcaption>
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={spoken}>
        {scale.ticks.map((tick) => (
          <g key={tick}>
            <path d={`M${INSET.left} ${y(tick)}H${WIDTH - INSET.right}`} className="plot-rule" />
            <text x={INSET.left - 8} y={y(tick) + 4} textAnchor="end">
              {write(tick)}
            </text>
          </g>
        ))}
        <path d={`M${line}`} className="plot-line" />
        {values.map(({ takenOn, value }) => (
          <circle key={takenOn} cx={x(takenOn)} cy={y(value)} r="4" className="plot-point" />
        ))}
        <text x={INSET.left} y={HEIGHT - 8}>
          {dateText(first.takenOn)}
        </text>
        <text x={WIDTH - INSET.right} y={HEIGHT - 8} textAnchor="end">
          {dateText(last.takenOn)}
        </text>
      </svg>
    </figure>
  );
}
