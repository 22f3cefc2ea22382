import { useEffect, useMemo } from 'react';
import type { GrowthChanges } from '../../../../core/growth/growth-changes.ts';
import { announce } from '../../../announce/announce.ts';
import { useFormat } from '../../../display/use-display.ts';
import { say, sayCount } from '../../../language/messages.ts';
import { hrefOf } from '../../../route/route.ts';
import { Button } from '../../../ui/button.tsx';
import { useDocument, useFit, useIsLooking } from '../../bench-context.tsx';
import { BenchProposal } from '../../proposal/bench-proposal.tsx';
import type { Grown } from '../../use-grown.ts';
import { ChangeList } from './change-list.tsx';
import { differenceLines, dueValues } from './difference-text.ts';
import { useGrownFits } from './use-grown-fits.ts';
import './growth.css';

/** What a grown body does to the fit on the bench, finding by finding; shown, applied in one step, and then fitted again. */
export function GrowthTab({ grown }: { grown: readonly Grown[] }) {
  const document = useDocument();
  useEffect(() => () => document.showGhost(null), [document]);
  if (grown.length === 0) {
    return (
      <div className="growth stack">
        <p>{say('growth.done')}</p>
        <BenchProposal />
      </div>
    );
  }
  return (
    <div className="growth stack">
      {grown.map((one) => (
        <GrownSeat key={one.seat} grown={one} />
      ))}
    </div>
  );
}

function GrownSeat({ grown }: { grown: Grown }) {
  const { seat, athleteId, name, newest, due } = grown;
  const document = useDocument();
  const fit = useFit((state) => state.fit);
  const ghost = useFit((state) => state.ghost);
  const looking = useIsLooking();
  const questions = useMemo(() => [{ key: name, fit, seat, newest }], [name, fit, seat, newest]);
  const found = useGrownFits(questions).get(name);
  const shown = ghost !== null && ghost === found?.fit;

  function take(): void {
    if (!found) return;
    const { athlete } = found.fit.seats[seat]!;
    document.apply(say('growth.step', { name }), (now) => ({
      ...now,
      seats: now.seats.map((s, i) => (i === seat ? { ...s, athlete } : s)),
    }));
    announce(say('growth.taken', { name }));
  }

  return (
    <section className="stack">
      <h2>{name}</h2>
      <WhatGrew grown={grown} />
      <p className="row">
        {due ? (
          <a className="button chief" href={hrefOf({ page: 'measure', id: athleteId })}>
            {say('do.measure', { name })}
          </a>
        ) : (
          <Button
            look="chief"
            disabled={!found || looking}
            aria-label={say('growth.take.of', { name })}
            onClick={take}
          >
            {say('growth.take')}
          </Button>
        )}
        <Button
          look="words"
          disabled={!found}
          onClick={() => document.showGhost(shown || !found ? null : found.fit)}
        >
          {say(shown ? 'notes.hide' : 'notes.show')}
        </Button>
      </p>
      <h3 className="lettering">{say(due ? 'growth.likely' : 'growth.predicted')}</h3>
      <Predicted found={found ?? null} />
      <p className="soft">{say(due ? 'growth.guess' : 'growth.scaled')}</p>
    </section>
  );
}

/** Why the body should be measured again, or in what it differs from the fit's copy. */
function WhatGrew({ grown: { due, difference, newest } }: { grown: Grown }) {
  const format = useFormat();
  if (due) return <p>{say('growth.due', dueValues(due, format))}</p>;
  return (
    <ul className="growth-body">
      {differenceLines(difference, newest, format).map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
}

function Predicted({ found }: { found: GrowthChanges | null }) {
  if (!found) return <p className="note-looking">{say('proposal.working')}</p>;
  if (found.changes.length === 0) return <p>{say('growth.nothing')}</p>;
  return (
    <>
      <ChangeList changes={found.changes} />
      <p className="soft">{sayCount('growth.unmoved', found.unmoved)}</p>
    </>
  );
}
