import { useMemo, useState } from 'react';
import type { PhotoRecord } from '../../../app/contract/photos.ts';
import type { OpenedFit } from '../../../app/contract/records.ts';
import type { CallError } from '../../../app/contract/result.ts';
import { type PhotoStudy, photoStudySchema } from '../../../core/photograph/photo-study-schema.ts';
import type { SeenMoment } from '../../../core/photograph/seen-moment.ts';
import { withSeenRate } from '../../../core/photograph/seen-stroke.ts';
import type { SeenRate } from '../../../core/photograph/stroke-rate.ts';
import { announce } from '../../announce/announce.ts';
import { call } from '../../client/client.ts';
import { useCall } from '../../client/use-call.ts';
import { dateText, today } from '../../language/dates.ts';
import { say } from '../../language/messages.ts';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { AddPicture } from './add-picture.tsx';
import { MarkedPicture } from './marked-picture.tsx';
import { Remembered } from './remembered.tsx';
import { StrokeSeen } from './seen-stroke.tsx';

/** The pictures of one athlete in this fit: chosen, added, removed; the one in hand is marked. */
export function SeatPictures(props: {
  opened: OpenedFit;
  seat: number;
  athleteId: string;
  boatId: string;
  onApplied: () => void;
}) {
  const { opened, seat, athleteId, boatId } = props;
  const asked = useCall('photos.ofAthlete', { athleteId });
  const [chosen, setChosen] = useState<string | null>(null);
  const [refusal, setRefusal] = useState<CallError | null>(null);
  const pictures = useMemo(
    () => (asked.value ?? []).filter(({ fitId, study }) => fitId === opened.id && study),
    [asked.value, opened.id],
  );
  const picture = pictures.find(({ id }) => id === chosen) ?? pictures.at(-1);

  async function add(data: string, image: PhotoStudy['image'], moment: SeenMoment): Promise<void> {
    const study = photoStudySchema.parse({ seat, moment, takenOn: today(), image });
    const result = await call('photos.add', {
      boatId,
      athleteId,
      fitId: opened.id,
      caption: '',
      data,
      study,
    });
    setRefusal(result.ok ? null : result.error);
    if (result.ok) setChosen(result.value.id);
    asked.reload();
  }

  async function takeRate(rate: SeenRate): Promise<void> {
    const fit = withSeenRate(opened.fit, rate);
    const saved = await call('drafts.save', { id: opened.id, fit, basedOn: opened.draftSavedAt });
    setRefusal(saved.ok ? null : saved.error);
    if (!saved.ok) return;
    announce(say('photograph.rate.taken'));
    props.onApplied();
  }

  async function remove(photo: PhotoRecord): Promise<void> {
    const result = await call('photos.remove', { id: photo.id });
    setRefusal(result.ok ? null : result.error);
    asked.reload();
  }

  return (
    <>
      {asked.error && <ErrorMessage error={asked.error} onRetry={asked.reload} />}
      {refusal && <ErrorMessage error={refusal} />}
      <AddPicture onPicture={add} onRate={(rate) => void takeRate(rate)} />
      {pictures.length > 0 && (
        <ul className="photograph-list" aria-label={say('photograph.list')}>
          {pictures.map((one, i) => (
            <li key={one.id}>
              <button
                type="button"
                className="button"
                aria-pressed={one.id === picture?.id}
                onClick={() => setChosen(one.id)}
              >
                {say('photograph.picture', {
                  number: i + 1,
                  moment: say(`photograph.moment.${one.study!.moment}`),
                  day: dateText(one.study!.takenOn ?? one.addedAt),
                })}
              </button>
            </li>
          ))}
        </ul>
      )}
      {picture && (
        <MarkedPicture
          key={picture.id}
          opened={opened}
          photo={picture}
          others={pictures.filter(({ id }) => id !== picture.id)}
          onKept={asked.reload}
          onApplied={props.onApplied}
          onRemove={() => void remove(picture)}
        />
      )}
      <StrokeSeen pictures={pictures} seat={seat} />
      <Remembered athleteId={athleteId} pictures={asked.value ?? []} />
    </>
  );
}
