import { SIGMAS_95 } from '../../../../core/evaluation/probability.ts';
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
  const quantities = useFit((state) => state.report.quantities);
  const unit = format.lengthUnit === 'in' ? 'in' : 'mm';
  const shown = (values: readonly number[]) =>
    [...values, values[0]!].map((each) => each / LENGTH_UNITS[unit]);
  const edge = (sign: 1 | -1) => shown(bow.bow.map((each, i) => each + sign * bow.sd[i]!));
  const seconds = (value: number, half?: number) => format.number(value, { decimals: 2, half });
  const period = ({ value, sd }: { readonly value: number; readonly sd: number }) =>
    say('under-way.with-doubt', {
      value: seconds(value, SIGMAS_95 * sd),
      doubt: seconds(SIGMAS_95 * sd, SIGMAS_95 * sd),
    });
  const half = SIGMAS_95 * bow.swing.sd;
  const length = (value: number) => format.quantity('trimRest')(value, 'm', { half });
  const over = (id: 'trimRest' | 'trimCatch', value: number) => {
    const sure = SIGMAS_95 * (quantities.find((quantity) => quantity.id === id)?.sd ?? 0);
    const write = (size: number) => format.quantity(id)(size, 'm', { half: sure });
    return say('under-way.with-doubt', {
      value: signedText({ id, value, unit: 'm' }, write),
      doubt: write(sure),
    });
  };
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
          pitch: period(bow.naturalPeriods.pitch),
          heave: period(bow.naturalPeriods.heave),
          stroke: seconds(bow.strokePeriod),
        })}{' '}
        {ready.kind === 'afloat' &&
          atCatch.kind === 'afloat' &&
          say('under-way.bow.limits', {
            ready: over('trimRest', ready.bowOverStern),
            catch: over('trimCatch', atCatch.bowOverStern),
          })}
      </p>
    </>
  );
}
