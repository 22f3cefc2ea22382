import { useMemo } from 'react';
import type { Boat } from '../../../core/document/boat-schema.ts';
import { PART_LIMITS } from '../../../core/parts/limits.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';
import type { BoatValues } from './boat-values.ts';
import { roomForBoard } from './room-for-board.ts';

/** Says where and by how much the entered floorboard does not fit the entered hull; nothing while it fits. */
export function BoardFit({ values, boat }: { values: BoatValues; boat: Boat | null }) {
  const format = useFormat();
  const found = useMemo(() => roomForBoard(values, boat), [values, boat]);
  if (!found || found.least >= -PART_LIMITS.boardBevel) return null;
  return (
    <p className="field-problem" role="status">
      {say('boat.floorboard.no-room', {
        by: format.length(-found.least),
        place: format.length(found.fromStern),
        fits: format.length(found.fits),
      })}
    </p>
  );
}
