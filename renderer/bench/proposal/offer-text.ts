import type { Format } from '../../../app/language/format.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import type { SideEffect } from '../../../core/evaluation/finding.ts';
import type { Offer } from '../../../core/optimise/offers.ts';
import type { ProposedMove } from '../../../core/optimise/proposed-move.ts';
import { say, words } from '../../language/messages.ts';
import { findingTitle } from '../../language/sentences.ts';
import { changeText, sideEffectText } from '../change-text.ts';
import { nameInSeat } from '../crew-names.ts';

/** Side effects of an offer worth a line. */
const MOST_EFFECTS = 4;

/** A move of a proposal in words. */
export function moveText(move: ProposedMove, format: Format): string {
  return changeText({ ...move, kind: 'move', clean: true, sideEffects: [] }, format);
}

/** An offer in words: which check it clears, its moves, and what it changes besides. */
export interface OfferText {
  readonly finding: string;
  readonly moves: readonly string[];
  readonly price: string;
}

/** An offer for a fit in words; in a crew each line names its paddler. */
export function offerText({ finding, moves, sideEffects }: Offer, fit: Fit, format: Format): OfferText {
  const named = (seat: number | null, text: string) =>
    seat === null || fit.seats.length === 1
      ? text
      : say('proposal.offers.of-seat', { name: nameInSeat(fit, seat), text });
  const effects = turnedFirst(sideEffects)
    .slice(0, MOST_EFFECTS)
    .map((effect) => named(effect.seat, sideEffectText(effect, format)));
  return {
    finding: named(finding.seat, findingTitle(finding, format.quantity(finding.quantity))),
    moves: moves.map((move) => named(move.seat, moveText(move, format))),
    price:
      effects.length === 0
        ? say('proposal.offers.alone')
        : say('notes.side-effects', { effects: words().row(effects) }),
  };
}

/** Side effects whose severity turns come first. */
function turnedFirst(effects: readonly SideEffect[]): SideEffect[] {
  const turns = ({ severityFrom, severityTo }: SideEffect) => Number(severityFrom !== severityTo);
  return [...effects].sort((a, b) => turns(b) - turns(a));
}
