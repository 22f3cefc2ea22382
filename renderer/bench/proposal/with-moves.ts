import type { Fit } from '../../../core/document/fit-schema.ts';
import { withCoordinate } from '../../../core/document/fitting-coordinate.ts';
import type { FoundProposal } from '../../jobs/least-change.ts';

/** A fit with a proposal's moves made; what they do not touch stays the same object. */
export function withMoves(fit: Fit, { moves }: Pick<FoundProposal, 'moves'>): Fit {
  return moves.reduce((now, move) => withCoordinate(now, move, move.to), fit);
}
