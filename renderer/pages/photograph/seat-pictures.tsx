import { useMemo, useState } from 'react';
import type { PhotoRecord } from '../../../app/contract/photos.ts';
import type { OpenedFit } from '../../../app/contract/records.ts';
import type { CallError, CallResult } from '../../../app/contract/result.ts';
import { type PhotoStudy, photoStudySchema } from '../../../core/photograph/photo-study-schema.ts';
import type { SeenMoment } from '../../../core/photograph/seen-moment.ts';
import { withSeenRate } from '../../../core/photograph/seen-stroke.ts';
import type { SeenRate } from '../../../core/photograph/stroke-rate.ts';
import { announce } from '../../announce/announce.ts';
import { call } from '../../client/client.ts';
import { useCall } from '../../client/use-call.ts';
import { dateText, today } from '../../language/dates.ts';
import { say } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { AddPicture } from './add-picture.tsx';
import { ExamplePictures } from './example-pictures.tsx';
import { MarkedPicture } from './marked-picture.tsx';
import { Remembered } from './remembered.tsx';
import { StrokeSeen } from './seen-stroke.tsx';

interface SeatPicturesProps {
  readonly opened: OpenedFit;
  readonly seat: number;
  readonly athleteId: string;
  readonly boatId: string;
  readonly onApplied: () => void;
}

/** The pictures of one athlete in this fit: chosen, added, removed; the one in hand is marked. */
export function SeatPictures(props: SeatPicturesProps) {
  const { opened, seat, athleteId } = props;
  const { asked, refusal, add, takeRate, remove, setChosen, chosen } = usePictures(props);
  const pictures = useMemo(
    () => (asked.value ?? []).filter(({ fitId, study }) => fitId === opened.id && study),
    [asked.value, opened.id],
  );
  const picture = pictures.find(({ id }) => id === chosen) ?? pictures.at(-1);
  return (
    <>
      {asked.error && <ErrorMessage error={asked.error} onRetry={asked.reload} />}
      {refusal && <ErrorMessage error={refusal} />}
      <AddPicture onPicture={add} onRate={(rate) => void takeRate(rate)} />
      {asked.value && !picture && <ExamplePictures fit={opened.fit} seat={seat} />}
      {picture && (
        <>
          <PictureList pictures={pictures} chosen={picture} onChoose={setChosen} />
          <MarkedPicture
            key={picture.id}
            opened={opened}
            photo={picture}
            others={pictures.filter(({ id }) => id !== picture.id)}
            onKept={asked.reload}
            onApplied={props.onApplied}
            onRemove={() => void remove(picture)}
          />
        </>
      )}
      <StrokeSeen pictures={pictures} seat={seat} />
      <Remembered athleteId={athleteId} pictures={asked.value ?? []} />
    </>
  );
}

/** The athlete's pictures as they are kept, which of them is chosen, and what can be done with them. */
function usePictures({ opened, seat, athleteId, boatId, onApplied }: SeatPicturesProps) {
  const asked = useCall('photos.ofAthlete', { athleteId });
  const [chosen, setChosen] = useState<string | null>(null);
  const [refusal, setRefusal] = useState<CallError | null>(null);
  const tell = (result: CallResult<unknown>) => setRefusal(result.ok ? null : result.error);

  async function add(data: string, image: PhotoStudy['image'], moment: SeenMoment): Promise<void> {
    const study = photoStudySchema.parse({ seat, moment, takenOn: today(), image });
    const picture = { boatId, athleteId, fitId: opened.id, caption: '', data, study };
    const result = await call('photos.add', picture);
    tell(result);
    if (result.ok) setChosen(result.value.id);
    asked.reload();
  }

  async function takeRate(rate: SeenRate): Promise<void> {
    const fit = withSeenRate(opened.fit, rate);
    const saved = await call('drafts.save', { id: opened.id, fit, basedOn: opened.draftSavedAt });
    tell(saved);
    if (!saved.ok) return;
    announce(say('photograph.rate.taken'));
    onApplied();
  }

  async function remove({ id }: PhotoRecord): Promise<void> {
    tell(await call('photos.remove', { id }));
    asked.reload();
  }
  return { asked, chosen, setChosen, refusal, add, takeRate, remove };
}

/** The pictures to choose from, by moment and day. */
function PictureList(props: {
  pictures: readonly PhotoRecord[];
  chosen: PhotoRecord;
  onChoose: (id: string) => void;
}) {
  return (
    <ul className="photograph-list" aria-label={say('photograph.list')}>
      {props.pictures.map(({ id, study, addedAt }, i) => (
        <li key={id}>
          <Button aria-pressed={id === props.chosen.id} onClick={() => props.onChoose(id)}>
            {say('photograph.picture', {
              number: i + 1,
              moment: say(`photograph.moment.${study!.moment}`),
              day: dateText(study!.takenOn ?? addedAt),
            })}
          </Button>
        </li>
      ))}
    </ul>
  );
}
