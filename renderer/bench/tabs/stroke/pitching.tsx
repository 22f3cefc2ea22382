import { DEFAULT_RATE_PER_MIN } from '../../../../core/document/stroke-defaults.ts';
import { massesAboard } from '../../../../core/evaluation/boat-state.ts';
import { type PitchResponse, pitchResponse } from '../../../../core/stroke/pitch-response.ts';
import { strokeSummary } from '../../../../core/stroke/stroke-summary.ts';
import { useFormat } from '../../../display/use-display.ts';
import type { Format } from '../../../language/format.ts';
import { say } from '../../../language/messages.ts';
import { useFit } from '../../bench-context.tsx';
import type { StrokeOfBench } from './use-stroke.ts';

/** How a bench's boat answers pitching at a stroke rate; null where it does not float or is not stiff in pitch. */
export function pitchingOf({ crew, rows }: StrokeOfBench, ratePerMin: number): PitchResponse | null {
  const { boat, seats } = crew;
  const ready = rows[0]?.afloat;
  if (ready?.kind !== 'afloat') return null;
  return pitchResponse({
    hull: boat.hull,
    afloat: ready,
    masses: massesAboard(boat, seats, 'ready'),
    hullMassKg: boat.boat.massKg,
    waterDensity: boat.density,
    ratePerMin,
  });
}

/** Two figures are enough for an order of magnitude. */
function roughly(value: number, format: Format): string {
  const decimals = value >= 10 ? 0 : 1;
  return format.number(value, { decimals });
}

/** How the boat may answer the stroke's rhythm: a range, called an order of magnitude. */
export function Pitching({ stroke }: { stroke: StrokeOfBench }) {
  const format = useFormat();
  const ratePerMin = useFit(({ fit, seat }) => fit.seats[seat]?.stroke.ratePerMin ?? DEFAULT_RATE_PER_MIN);
  const answer = pitchingOf(stroke, ratePerMin);
  const still = strokeSummary(stroke.rows)?.trim.by;
  if (!answer || still === undefined) return <p className="soft">{say('stroke.pitch.none')}</p>;
  const { naturalPeriods, strokePeriod, amplification, dampingRatios } = answer;
  const seconds = (value: number) => format.number(value, { decimals: 2 });
  const swing = (value: number) => format.quantity('trimRest')(value, 'm');
  return (
    <div className="pitching">
      <p>
        <strong>{say('stroke.pitch.order')}</strong>{' '}
        {say('stroke.pitch.periods', {
          least: seconds(naturalPeriods.least),
          most: seconds(naturalPeriods.most),
          stroke: seconds(strokePeriod),
          low: roughly(amplification.least, format),
          high: roughly(amplification.most, format),
        })}{' '}
        {say('stroke.pitch.means', {
          least: swing(still * amplification.least),
          most: swing(still * amplification.most),
          still: swing(still),
        })}
      </p>
      <p className="soft">
        {say('stroke.pitch.how', {
          rigid: format.number(answer.rigidInertia, { decimals: 0 }),
          added: format.number(answer.addedInertia, { decimals: 0 }),
          damping: `${format.number(dampingRatios.least * 100, { decimals: 0 })}–${format.number(dampingRatios.most * 100, { decimals: 0 })}\u{202f}%`,
        })}
      </p>
    </div>
  );
}
