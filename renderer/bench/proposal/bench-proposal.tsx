import { useState } from 'react';
import type { Fit } from '../../../core/document/fit-schema.ts';
import type { ProposedMove } from '../../../core/optimise/propose.ts';
import { announce } from '../../announce/announce.ts';
import { useFormat } from '../../display/use-display.ts';
import type { FindingCounts, FoundProposal } from '../../jobs/least-change.ts';
import { useJob } from '../../jobs/use-job.ts';
import { say, sayCount, words } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';
import { ProgressLine } from '../../ui/progress-line.tsx';
import { useDocument, useFit } from '../bench-context.tsx';
import { nameInSeat } from '../crew-names.ts';
import { moveText } from './offer-text.ts';
import { Offers } from './offers.tsx';
import { whyText } from './why-text.ts';
import { withMoves } from './with-moves.ts';
import './proposal.css';

/** The least change that clears the findings: asked for, drawn as an outline, applied in one step or left. */
export function BenchProposal() {
  const document = useDocument();
  const fit = useFit((state) => state.fit);
  const seat = useFit((state) => state.seat);
  const [whom, setWhom] = useState<'seat' | 'crew'>('crew');
  const { state, start, cancel } = useJob('leastChange');
  const isCrew = fit.seats.length > 1;
  const found = state.kind === 'done' && state.input.fit === fit ? state.result : null;

  function ask(): void {
    start({ fit, seats: isCrew && whom === 'seat' ? [seat] : null }, (result) => {
      if (result.moves.length > 0 && document.getState().fit === fit)
        document.showGhost(withMoves(fit, result));
      const changes = sayCount('proposal.changes', result.moves.length);
      announce(result.moves.length > 0 ? say('proposal.ready', { changes }) : noMovesText(fit, result));
    });
  }

  function leave(): void {
    document.showGhost(null);
    cancel();
  }

  if (state.kind === 'working') return <Working tried={state.progress.at(-1) ?? 0} onStop={cancel} />;
  if (found) {
    return (
      <section className="proposal" aria-label={say('proposal.title')}>
        <Found fit={fit} found={found} onTaken={cancel} onLeave={leave} />
      </section>
    );
  }
  return (
    <div className="proposal">
      {isCrew && (
        <ChoiceField
          label={say('proposal.whom')}
          value={whom}
          onChange={setWhom}
          options={(['crew', 'seat'] as const).map((value) => ({
            value,
            name: say(`proposal.whom.${value}`),
          }))}
        />
      )}
      <Button look="words" title={say('proposal.ask.about')} onClick={ask}>
        {say('proposal.ask')}
      </Button>
    </div>
  );
}

function Working({ tried, onStop }: { tried: number; onStop: () => void }) {
  return (
    <div className="proposal">
      <ProgressLine
        name={say('proposal.working')}
        text={say('proposal.tried', { count: tried })}
        onStop={() => {
          onStop();
          announce(say('problem.cancelled'));
        }}
      />
    </div>
  );
}

interface FoundProps {
  readonly fit: Fit;
  readonly found: FoundProposal;
  readonly onTaken: () => void;
  readonly onLeave: () => void;
}

function Found(props: FoundProps) {
  const { fit, found, onTaken } = props;
  const { moves, before, after, uncleared } = found;
  return (
    <>
      <p>
        {moves.length === 0
          ? noMovesText(fit, found)
          : say('proposal.counts', { before: findingCountsText(before), after: findingCountsText(after) })}
      </p>
      {moves.length > 0 && !isFewer(before, after) && <p>{say('proposal.no-fewer')}</p>}
      <ProposalButtons {...props} />
      {fit.seats.map((_, seat) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a seat is its place in the boat
        <SeatMoves key={seat} fit={fit} seat={seat} moves={moves.filter((move) => move.seat === seat)} />
      ))}
      {(moves.length > 0 || uncleared.length > 0) && <UnclearedList uncleared={uncleared} />}
      <Offers fit={fit} found={found} onTaken={onTaken} />
    </>
  );
}

/** Why a proposal moves nothing: nothing has to, or nothing that may be moved helps. */
export function noMovesText(fit: Fit, { uncleared }: Pick<FoundProposal, 'uncleared'>): string {
  if (uncleared.length === 0) return say('proposal.cleared');
  const locked = fit.seats.some(({ locks }) => locks.length > 0);
  return say(locked ? 'proposal.nothing.locked' : 'proposal.nothing');
}

/** Whether fewer findings need action: compared by the most severe first, then by the next. */
export function isFewer(before: FindingCounts, after: FindingCounts): boolean {
  const worst = (['stop', 'change', 'check'] as const).find(
    (severity) => before[severity] !== after[severity],
  );
  return worst !== undefined && after[worst] < before[worst];
}

/** "2 change, 1 check", the most severe first; "nothing". */
export function findingCountsText(wanting: FindingCounts): string {
  const told = (['stop', 'change', 'check'] as const)
    .filter((severity) => wanting[severity] > 0)
    .map((severity) =>
      say('proposal.count', { count: wanting[severity], severity: say(`severity.${severity}`) }),
    );
  return words().row(told) || say('proposal.counts.nothing');
}

function SeatMoves({ fit, seat, moves }: { fit: Fit; seat: number; moves: readonly ProposedMove[] }) {
  const format = useFormat();
  if (moves.length === 0) return null;
  return (
    <>
      {fit.seats.length > 1 && <h3 className="lettering">{nameInSeat(fit, seat)}</h3>}
      <ul className="proposal-moves">
        {moves.map((move) => (
          <li key={move.coordinate}>{moveText(move, format)}</li>
        ))}
      </ul>
    </>
  );
}

function ProposalButtons({ fit, found, onTaken, onLeave }: FoundProps) {
  const document = useDocument();
  const shown = useFit(({ ghost }) => ghost !== null);

  function take(): void {
    document.apply(say('proposal.step'), (now) => withMoves(now, found));
    onTaken();
    announce(say('proposal.taken'));
  }

  return (
    <p className="row">
      {found.moves.length > 0 && (
        <>
          <Button look="words" onClick={() => document.showGhost(shown ? null : withMoves(fit, found))}>
            {say(shown ? 'notes.hide' : 'notes.show')}
          </Button>
          <Button look="words" aria-label={say('proposal.take.of')} onClick={take}>
            {say('notes.take')}
          </Button>
        </>
      )}
      <Button look="words" aria-label={say('proposal.leave.of')} onClick={onLeave}>
        {say('proposal.leave')}
      </Button>
    </p>
  );
}

/** What could not be cleared, and why. */
export function UnclearedList({ uncleared }: Pick<FoundProposal, 'uncleared'>) {
  const format = useFormat();
  if (uncleared.length === 0) return <p className="soft">{say('proposal.cleared')}</p>;
  return (
    <>
      <h3 className="lettering">{say('proposal.left')}</h3>
      <ul className="proposal-left">
        {uncleared.map((left) => (
          <li key={left.finding.id}>{whyText(left, format)}</li>
        ))}
      </ul>
    </>
  );
}
