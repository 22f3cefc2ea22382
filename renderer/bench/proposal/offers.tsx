import type { Fit } from '../../../core/document/fit-schema.ts';
import type { Offer } from '../../../core/optimise/offers.ts';
import { announce } from '../../announce/announce.ts';
import { useFormat } from '../../display/use-display.ts';
import type { FoundProposal } from '../../jobs/least-change.ts';
import { say } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { useDocument, useFit, useIsLooking } from '../bench-context.tsx';
import { offerText } from './offer-text.ts';
import { withMoves } from './with-moves.ts';

interface OffersProps {
  readonly fit: Fit;
  readonly found: FoundProposal;
  readonly onTaken: () => void;
}

/** The checks that are left after the least change and could be cleared too, each with its price. */
export function Offers(props: OffersProps) {
  const { moves, offers } = props.found;
  if (offers.length === 0) return null;
  return (
    <>
      <h3 className="lettering">{say('proposal.offers')}</h3>
      <p className="soft">
        {say(moves.length > 0 ? 'proposal.offers.about.with-moves' : 'proposal.offers.about')}
      </p>
      <ul className="proposal-offers">
        {offers.map((offer) => (
          <OfferOf key={offer.finding.id} offer={offer} {...props} />
        ))}
      </ul>
    </>
  );
}

function OfferOf({ offer, fit, found, onTaken }: OffersProps & { offer: Offer }) {
  const document = useDocument();
  const format = useFormat();
  const ghost = useFit((state) => state.ghost);
  const looking = useIsLooking();
  const { finding, moves, price } = offerText(offer, fit, format);
  const changed = (now: Fit) => withMoves(withMoves(now, found), offer);
  const isShown = ghost !== null && JSON.stringify(ghost) === JSON.stringify(changed(fit));

  function apply(): void {
    document.apply(say('proposal.offers.step', { finding }), changed);
    onTaken();
    announce(say('proposal.taken'));
  }

  return (
    <li>
      <h4>{finding}</h4>
      <ul>
        {moves.map((move) => (
          <li key={move}>{move}</li>
        ))}
      </ul>
      <p className="note-effects">{price}</p>
      <p className="row">
        <Button
          look="words"
          aria-label={say(isShown ? 'notes.hide.of' : 'notes.show.of', { change: finding })}
          onClick={() => document.showGhost(isShown ? null : changed(fit))}
        >
          {say(isShown ? 'notes.hide' : 'notes.show')}
        </Button>
        <Button
          look="words"
          disabled={looking}
          aria-label={say('notes.take.of', { change: finding })}
          onClick={apply}
        >
          {say('notes.take')}
        </Button>
      </p>
    </li>
  );
}
