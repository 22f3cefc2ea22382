import { expect, it } from 'vitest';
import { boatValues } from '../../../../renderer/pages/boat/boat-values.ts';
import { roomForBoard } from '../../../../renderer/pages/boat/room-for-board.ts';
import { exampleBoat } from '../../../core/example/example-fit.ts';

it('a board whose stored outline tapers fits, though its greatest width would not at the ends', () => {
  const boat = exampleBoat();
  expect(roomForBoard(boatValues(boat), boat)!.least).toBeGreaterThan(0);
  const { outline: _, ...plank } = boat.floorboard;
  const straight = { ...boat, floorboard: plank };
  const room = roomForBoard(boatValues(straight), straight)!;
  expect(room.least).toBeLessThan(-0.02);
  expect(room.fits).toBeLessThan(plank.widthM);
});
