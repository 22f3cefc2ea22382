import { useCallback } from 'react';
import { type FittingCoordinate, isAngle } from '../../../core/document/coordinates.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { coordinateOf, withCoordinate } from '../../../core/document/fitting-coordinate.ts';
import { onLiveFrame } from '../../document/live-frame.ts';
import { dragLimits } from '../../drawing/view/limits.ts';
import { say } from '../../language/messages.ts';
import { MeasureField } from '../../ui/fields/measure-field.tsx';
import { useDocument, useFit } from '../bench-context.tsx';
import { coordinateName } from '../coordinate-name.ts';

/** One coordinate of the part in hand as an entry with steppers. It follows the hand while that drags. */
export function CoordinateField({ coordinate }: { coordinate: FittingCoordinate }) {
  const document = useDocument();
  const seat = useFit((state) => state.seat);
  const value = useFit(({ fit }) => coordinateOf(fit.seats[seat]!, coordinate));
  const least = useFit(({ fit, report }) => dragLimits(coordinate, { fit, report, seat }).least);
  const most = useFit(({ fit, report }) => dragLimits(coordinate, { fit, report, seat }).most);
  const follow = useCallback(
    (show: (value: number) => void) =>
      onLiveFrame(document, (fit) => {
        const at = fit.seats[seat];
        if (at) show(coordinateOf(at, coordinate));
      }),
    [document, seat, coordinate],
  );
  const name = coordinateName(coordinate);
  const step = say('step.set', { what: name });
  const set = (to: number) => (fit: Fit) => withCoordinate(fit, { seat, coordinate }, to);
  return (
    <MeasureField
      label={name}
      labelHidden
      stepped
      kind={isAngle(coordinate) ? 'angle' : 'length'}
      value={value}
      min={Math.min(least, value)}
      max={Math.max(most, value)}
      onEnter={(to) => document.apply(step, set(to))}
      onNudge={(to) => document.nudge(step, set(to))}
      follow={follow}
    />
  );
}
