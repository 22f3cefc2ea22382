import type { BowMotion } from '../../../../core/under-way/bow-motion.ts';
import { LENGTH_UNITS } from '../../../../core/units/length-text.ts';
import { useFormat } from '../../../display/use-display.ts';
import { say } from '../../../language/messages.ts';
import { signedText } from '../../../language/sentences.ts';
import { useFit } from '../../bench-context.tsx';
import { PlotFigure } from '../stroke/plot-figure.tsx';

/** The bow's height through one stroke as a range, and the periods beside it. */
export function BowThroughStroke({ bow }: { bow: BowMotion }) {
  const format = useFormat();
  const { ready, catch: atCatch } = useFit((state) => state.report.afloat);
  const unit = format.lengthUnit === 'in' ? 'in' : 'mm';
  const shown = (values: readonly number[]) =>
    [...values, values[0]!].map((each) => each / LENGTH_UNITS[unit]);
  const edge = (sign: 1 | -1) => shown(bow.bow.map((each, i) => each + sign * bow.sd[i]!));
  const seconds = (value: number) => format.number(value, { decimals: 2 });
  const half = 2 * bow.swing.sd;
  const length = (value: number) => format.quantity('trimRest')(value, 'm', { half });
  const over = (value: number) => signedText({ id: 'trimRest', value, unit: 'm' }, length);
  return (
    <>
      <PlotFigure
        plot={{
          id: 'bow',
          title: say('under-way.bow.plot', { unit }),
          unit,
          decimals: unit === 'in' ? 2 : 0,
          lines: [
            { id: 'bow', name: say('under-way.bow.likely'), values: shown(bow.bow) },
            { id: 'high', name: say('under-way.bow.most'), values: edge(1) },
            { id: 'low', name: say('under-way.bow.least'), values: edge(-1) },
          ],
        }}
        ruled={[bow.exitAt]}
        cursor={false}
      />
      <p>
        {say('under-way.bow.swings', { swing: length(bow.swing.value), doubt: length(half) })}{' '}
        {say('under-way.bow.periods', {
          pitch: seconds(bow.naturalPeriods.pitch),
          heave: seconds(bow.naturalPeriods.heave),
          stroke: seconds(bow.strokePeriod),
        })}{' '}
        {ready.kind === 'afloat' &&
          atCatch.kind === 'afloat' &&
          say('under-way.bow.limits', {
            ready: over(ready.bowOverStern),
            catch: over(atCatch.bowOverStern),
          })}
      </p>
      <p className="soft">{say('under-way.bow.how')}</p>
    </>
  );
}
