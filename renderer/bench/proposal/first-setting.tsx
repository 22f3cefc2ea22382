import { useRef, useState } from 'react';
import { FITTING_COORDINATES } from '../../../core/document/coordinates.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { coordinateOf } from '../../../core/document/fitting-coordinate.ts';
import { announce } from '../../announce/announce.ts';
import { useFormat } from '../../display/use-display.ts';
import type { FoundProposal } from '../../jobs/least-change.ts';
import { useJob } from '../../jobs/use-job.ts';
import { say } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { ProgressLine } from '../../ui/progress-line.tsx';
import { coordinateText } from '../change-text.ts';
import { coordinateName } from '../coordinate-name.ts';
import { nameInSeat } from '../crew-names.ts';
import { UnclearedList } from './bench-proposal.tsx';
import { withMoves } from './with-moves.ts';

/** A first setting that was proposed, and for which choice of boat and crew. */
export interface ProposedStart {
  readonly choice: string;
  readonly fit: Fit;
}

/**
 * Proposes a first setting from athlete and boat alone and shows it before the fit is begun. `choice` names what has been
 * chosen: a proposal for another choice is forgotten.
 */
export function FirstSetting(props: {
  choice: string;
  make: () => Promise<Fit>;
  onProposed: (start: ProposedStart | null) => void;
}) {
  const { choice, make, onProposed } = props;
  const [asked, setAsked] = useState<string | null>(null);
  const { state, start, cancel } = useJob('leastChange');
  const latest = useRef<string | null>(null);
  const current = asked === choice;

  async function ask(): Promise<void> {
    setAsked(choice);
    latest.current = choice;
    const fit = await make();
    if (latest.current !== choice) return;
    start({ fit, seats: null }, (found) => {
      onProposed({ choice, fit: withMoves(fit, found) });
      announce(say('first.found'));
    });
  }

  function forget(): void {
    latest.current = null;
    cancel();
    setAsked(null);
    onProposed(null);
  }

  if (current && state.kind === 'working') {
    return (
      <ProgressLine
        name={say('proposal.working')}
        text={say('proposal.tried', { count: state.progress.at(-1) ?? 0 })}
        onStop={forget}
      />
    );
  }
  if (current && state.kind === 'done') {
    return <Shown of={state.input.fit} found={state.result} onForget={forget} />;
  }
  return (
    <div className="stack">
      <p>
        <Button onClick={() => void ask()}>{say('first.ask')}</Button>
      </p>
    </div>
  );
}

function Shown({ of, found, onForget }: { of: Fit; found: FoundProposal; onForget: () => void }) {
  const format = useFormat();
  const fit = withMoves(of, found);
  return (
    <section className="first-setting stack" aria-label={say('proposal.title')}>
      <p>{say('first.found')}</p>
      {fit.seats.map(
        (seat, index) =>
          seat.athlete && (
            // biome-ignore lint/suspicious/noArrayIndexKey: a seat is its place in the boat
            <div key={index}>
              {fit.seats.length > 1 && (
                <h2 className="lettering">
                  {say('first.seat', { number: index + 1, name: nameInSeat(fit, index) })}
                </h2>
              )}
              <dl className="first-measures">
                {FITTING_COORDINATES.map((coordinate) => (
                  <div key={coordinate} data-coordinate={coordinate}>
                    <dt>{coordinateName(coordinate)}</dt>
                    <dd>{coordinateText(coordinate, coordinateOf(seat, coordinate), format)}</dd>
                  </div>
                ))}
              </dl>
            </div>
          ),
      )}
      {found.uncleared.length === 0 ? (
        <p>{say('first.good')}</p>
      ) : (
        <UnclearedList uncleared={found.uncleared} />
      )}
      <p>
        <Button look="words" onClick={onForget}>
          {say('first.usual')}
        </Button>
      </p>
    </section>
  );
}
