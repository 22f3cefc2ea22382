import { useCallback, useState } from 'react';
import type { OpenedFit } from '../../../app/contract/records.ts';
import { useFitTrials } from '../../bench/use-fit-trials.ts';
import { useDisplay } from '../../display/use-display.ts';
import { useFitMoment, useOpenedFit } from '../../document/use-fit-states.ts';
import { say, words } from '../../language/messages.ts';
import { go, hrefOf } from '../../route/route.ts';
import { Button } from '../../ui/button.tsx';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { usePageTitle } from '../../ui/use-page-title.ts';
import { takenSeats } from '../set-out/choices.ts';
import { useFullScreen } from './full-screen.ts';
import { firstShowChoices, type ShowChoices } from './show-choices.ts';
import { ShownSeat } from './shown-seat.tsx';
import './show.css';

/** An athlete's own position, over the whole window: a picture and plain words. */
export function ShowPage({ fitId }: { fitId: string }) {
  const { value, error, reload } = useOpenedFit(fitId);
  const leave = useCallback(() => go({ page: 'fit', id: fitId }), [fitId]);
  const screen = useFullScreen(leave);
  usePageTitle(say('show.title', { name: value?.fit.name ?? '' }));
  return (
    <main className="show" id="content" tabIndex={-1}>
      {error && <ErrorMessage error={error} onRetry={reload} />}
      {!value && !error && <p className="soft">{say('sheet.loading')}</p>}
      {value && (
        <OpenShow opened={value}>
          <Button look="bare" aria-pressed={screen.filled} onClick={screen.toggle}>
            {say(screen.filled ? 'show.unfill' : 'show.fill')}
          </Button>
          <a className="button bare" href={hrefOf({ page: 'fit', id: fitId })}>
            {say('trial.leave')}
          </a>
        </OpenShow>
      )}
    </main>
  );
}

function OpenShow({ opened, children }: { opened: OpenedFit; children: React.ReactNode }) {
  const { length } = useDisplay();
  const seats = takenSeats(opened.fit);
  const [choices, setChoices] = useState<ShowChoices>(() =>
    firstShowChoices(opened, {
      seat: seats[0]?.index ?? 0,
      paper: length === 'in' ? 'Letter' : 'A4',
      language: words().language,
    }),
  );
  const now = useFitMoment(opened, choices.now);
  const before = useFitMoment(opened, choices.before);
  const trials = useFitTrials(opened.id);
  const error = now.error ?? before.error ?? trials.error;
  const settled = before.key !== undefined;
  if (seats.length === 0) return <Nothing words={say('show.nobody')}>{children}</Nothing>;
  return (
    <>
      {error && <ErrorMessage error={error} />}
      {now.value && settled && trials.known && (
        <ShownSeat
          moments={{ now: now.value, before: before.value }}
          opened={opened}
          seats={seats}
          choices={choices}
          trials={trials.all}
          onChange={(change) => setChoices((was) => ({ ...was, ...change }))}
        >
          {children}
        </ShownSeat>
      )}
    </>
  );
}

/** A sentence if there is no picture, with the buttons to leave. */
function Nothing({ words, children }: { words: string; children: React.ReactNode }) {
  return (
    <>
      <header className="show-head">
        <p>{words}</p>
        <div className="row">{children}</div>
      </header>
      <div />
    </>
  );
}
