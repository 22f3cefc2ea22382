import { useState } from 'react';
import type { OpenedFit } from '../../../app/contract/records.ts';
import { useCall } from '../../client/use-call.ts';
import { say } from '../../language/messages.ts';
import { libraryStore } from '../../library/library-store.ts';
import { hrefOf } from '../../route/route.ts';
import { ConsentNote } from '../../ui/consent-note.tsx';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { SelectField } from '../../ui/fields/select-field.tsx';
import { Page } from '../../ui/page.tsx';
import { SeatPictures } from './seat-pictures.tsx';
import './photograph.css';

/** How an athlete of a fit kneels, measured from photographs: pictures, marks, what they say, and taking it into the fit. */
export function PhotographPage({ fitId }: { fitId: string }) {
  const opened = useCall('fits.open', { id: fitId });
  const fit = opened.value?.fit;
  return (
    <Page
      title={say('photograph.title', { fit: fit?.name ?? '' })}
      wide
      tools={
        <a className="button" href={hrefOf({ page: 'fit', id: fitId })}>
          {say('trial.leave')}
        </a>
      }
    >
      {opened.error && <ErrorMessage error={opened.error} onRetry={opened.reload} />}
      {!opened.error && !opened.value && <p className="soft">{say('sheet.loading')}</p>}
      {opened.value && <Seats opened={opened.value} onApplied={opened.reload} />}
    </Page>
  );
}

function Seats({ opened, onApplied }: { opened: OpenedFit; onApplied: () => void }) {
  const { fit } = opened;
  const people = fit.seats.flatMap(({ athlete }, index) => (athlete ? [{ athlete, index }] : []));
  const [chosen, setChosen] = useState<number | null>(null);
  const shared = libraryStore(({ state }) => (state?.joined ? 'yes' : 'no'));
  const seat = people.find(({ index }) => index === chosen) ?? people[0];
  if (!seat) return <p>{say('photograph.nobody')}</p>;
  if (!seat.athlete.id || !fit.boat.id) return <p>{say('photograph.not-in-roster')}</p>;
  return (
    <div className="stack">
      <p className="soft">{say('photograph.about', { shared })}</p>
      <ConsentNote athletes={[seat.athlete]} wanted={['photographs']} />
      {people.length > 1 && (
        <SelectField
          label={say('conflicts.kind.athlete')}
          value={String(seat.index)}
          options={people.map(({ athlete, index }) => ({ value: String(index), name: athlete.name }))}
          onChange={(value) => setChosen(Number(value))}
        />
      )}
      <SeatPictures
        key={seat.index}
        opened={opened}
        seat={seat.index}
        athleteId={seat.athlete.id}
        boatId={fit.boat.id}
        onApplied={onApplied}
      />
    </div>
  );
}
