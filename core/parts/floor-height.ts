import type { Boat } from '../document/boat-schema.ts';
import { boardTopAt } from './board.ts';

/**
 * Height of the floorboard's top above the boat frame's origin at `x` (boat frame, both metres), as `boardTopAt` has it.
 */
export function floorHeightAt(board: Pick<Boat['floorboard'], 'heightM' | 'profile'>, x: number): number {
  return boardTopAt(board, x);
}
