import type { Boat } from '../../../core/document/boat-schema.ts';
import { boardRoom } from '../../../core/evaluation/board-room.ts';
import { hullLengthOf } from '../../../core/hull/hull-length.ts';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { readForm } from '../../ui/form/form-rules.ts';
import { boatRules } from './boat-rules.ts';
import type { BoatValues } from './boat-values.ts';

/**
 * Where the floorboard as entered has the least room in the hull as entered, and how much; lengths in metres, `fromStern`
 * from the hull's after end. What the form does not show of the boat `before` counts: the board's outline, what a float
 * check corrected. Null while the entries make no boat.
 */
export function roomForBoard(values: BoatValues, before: Boat | null) {
  const made = readForm(boatRules(before), values);
  if (!made.ok) return null;
  const boat = made.document;
  const room = boardRoom(boat.floorboard, hullOfBoat(boat), boat.skinM);
  return { ...room, fromStern: room.x + hullLengthOf(boat.hull) / 2 };
}
