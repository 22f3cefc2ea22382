import { useState } from 'react';
import type { OpenedFit } from '../../../app/contract/records.ts';
import { useDisplay } from '../../display/use-display.ts';
import { PRESENT, useFitMoment, useOpenedFit } from '../../document/use-fit-states.ts';
import { say } from '../../language/messages.ts';
import { hrefOf } from '../../route/route.ts';
import { Button } from '../../ui/button.tsx';
import { ConsentNote } from '../../ui/consent-note.tsx';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { Page } from '../../ui/page.tsx';
import { ChoicePanel } from './choice-panel.tsx';
import { type Choices, firstChoices, takenSeats } from './choices.ts';
import { SeatSheet } from './seat-sheet.tsx';

/** The boatbuilder's page: a fit as a sheet and as full-size templates. */
export function SetOutPage({ fitId }: { fitId: string }) {
  const { value, error, reload } = useOpenedFit(fitId);
  return (
    <Page
      title={say('setout.title', { name: value?.fit.name ?? '' })}
      wide
      tools={
        <>
          <a className="button" href={hrefOf({ page: 'fit', id: fitId })}>
            {say('trial.leave')}
          </a>
          <Button onClick={() => window.print()}>{say('do.print')}</Button>
        </>
      }
    >
      {error && <ErrorMessage error={error} onRetry={reload} />}
      {!value && !error && <p className="soft">{say('sheet.loading')}</p>}
      {value && <OpenSetOut opened={value} />}
    </Page>
  );
}

function OpenSetOut({ opened }: { opened: OpenedFit }) {
  const { length } = useDisplay();
  const seats = takenSeats(opened.fit);
  const [choices, setChoices] = useState<Choices>(() => ({
    ...firstChoices(seats[0]?.index ?? 0, length),
    state: PRESENT,
  }));
  const moment = useFitMoment(opened, choices.state);
  const change = (changed: Partial<Choices>) => setChoices((before) => ({ ...before, ...changed }));
  if (seats.length === 0) return <p>{say('show.nobody')}</p>;
  return (
    <div className="set-out">
      <div className="set-out-choices entries">
        <ConsentNote athletes={[opened.fit.seats[choices.seat]?.athlete]} wanted={['bodyData']} />
        <ChoicePanel
          opened={opened}
          fit={moment.value?.fit ?? opened.fit}
          seats={seats}
          choices={choices}
          onChange={change}
        />
      </div>
      <div className="set-out-paper">
        {moment.error && <ErrorMessage error={moment.error} />}
        {moment.value && <SeatSheet moment={moment.value} choices={choices} onChange={change} />}
      </div>
    </div>
  );
}
