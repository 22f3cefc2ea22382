import { useMemo } from 'react';
import { boardRoom } from '../../../core/evaluation/board-room.ts';
import { hullLengthOf } from '../../../core/hull/hull-length.ts';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { PART_LIMITS } from '../../../core/parts/limits.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';
import { readForm } from '../../ui/form/form-rules.ts';
import { boatRules } from './boat-rules.ts';
import type { BoatValues } from './boat-values.ts';

/** Says that the floorboard as entered does not fit the hull as entered, where and by how much; nothing while it fits. */
export function BoardFit({ values }: { values: BoatValues }) {
  const format = useFormat();
  const found = useMemo(() => {
    const made = readForm(boatRules(null), values);
    if (!made.ok) return null;
    const boat = made.document;
    const room = boardRoom(boat.floorboard, hullOfBoat(boat), boat.skinM);
    return { ...room, fromStern: room.x + hullLengthOf(boat.hull) / 2 };
  }, [values]);
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
