import { useCallback } from 'react';
import { type FittingCoordinate, isAngle } from '../../../core/document/coordinates.ts';
import { coordinateOf, withCoordinate } from '../../../core/document/fitting-coordinate.ts';
import { useDocument, useFit, useSlow } from '../../bench/bench-context.tsx';
import { coordinateName } from '../../bench/coordinates.ts';
import { useFormat } from '../../display/use-display.ts';
import { onLiveFrame } from '../../document/live-frame.ts';
import { dragLimits } from '../../drawing/view/limits.ts';
import { say } from '../../language/messages.ts';
import { MeasureField } from '../../ui/fields/measure-field.tsx';
import { effectsText } from './effects.ts';

/** One measure of a fitting as a number, with what one centimetre more of it does. It follows the hand. */
export function MeasureRow({ coordinate }: { coordinate: FittingCoordinate }) {
  const document = useDocument();
  const format = useFormat();
  const seat = useFit((state) => state.seat);
  const value = useFit(({ fit }) => coordinateOf(fit.seats[seat]!, coordinate));
  const least = useFit(({ fit, report }) => dragLimits(coordinate, { fit, report, seat }).least);
  const most = useFit(({ fit, report }) => dragLimits(coordinate, { fit, report, seat }).most);
  const derivatives = useSlow((answers) =>
    answers.seat === seat ? answers.derivatives[coordinate] : undefined,
  );
  const follow = useCallback(
    (show: (value: number) => void) =>
      onLiveFrame(document, (fit) => {
        const at = fit.seats[seat];
        if (at) show(coordinateOf(at, coordinate));
      }),
    [document, seat, coordinate],
  );
  const name = coordinateName(coordinate);
  const set = (to: number) => (fit: Parameters<typeof withCoordinate>[0]) =>
    withCoordinate(fit, { seat, coordinate }, to);
  return (
    <div className="measure-row" data-coordinate={coordinate}>
      <span className="measure-name" aria-hidden="true" title={name}>
        {say(`measure.${coordinate}`)}
      </span>
      <MeasureField
        label={name}
        labelHidden
        stepped
        kind={isAngle(coordinate) ? 'angle' : 'length'}
        value={value}
        min={Math.min(least, value)}
        max={Math.max(most, value)}
        onEnter={(to) => document.apply(say('step.set', { what: name }), set(to))}
        onNudge={(to) => document.nudge(say('step.set', { what: name }), set(to))}
        follow={follow}
      />
      <p className="measure-effects" title={say('measures.effects.about')}>
        {derivatives ? effectsText(coordinate, derivatives, format) : '\u{00a0}'}
      </p>
    </div>
  );
}
