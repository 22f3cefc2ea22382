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
  const { asked, refusal, add, takeRate, remove, removed, bringBack, setChosen, chosen } = usePictures(props);
  const [left, setLeft] = useState<ReadonlyMap<string, PhotoStudy>>(new Map());
  const pictures = useMemo(
    () =>
      (asked.value ?? [])
        .filter(({ fitId, study }) => fitId === opened.id && study)
        .map((photo) => ({ ...photo, study: left.get(photo.id) ?? photo.study })),
    [asked.value, opened.id, left],
  );
  const picture = pictures.find(({ id }) => id === chosen) ?? pictures.at(-1);
  return (
    <>
      {asked.error && <ErrorMessage error={asked.error} onRetry={asked.reload} />}
      {refusal && <ErrorMessage error={refusal} />}
      <AddPicture onPicture={add} onRate={(rate) => void takeRate(rate)} />
      {removed && (
        <p className="row" role="status" ref={intoView}>
          {say('photos.removed')}
          <Button look="words" onClick={() => void bringBack(removed)}>
            {say('archive.back.replace')}
          </Button>
        </p>
      )}
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
            onLeave={(study) => setLeft((now) => new Map(now).set(picture.id, study))}
            onRemove={(study) => void remove(picture.id, study)}
          />
        </>
      )}
      <StrokeSeen pictures={pictures} seat={seat} />
      <Remembered athleteId={athleteId} pictures={asked.value ?? []} />
    </>
  );
}

/** What is said of a change lies above the picture, whose end may be in sight. */
function intoView(element: HTMLElement | null): void {
  element?.scrollIntoView({ block: 'nearest' });
}

/** A picture that was removed, with its marks: it can be put back. */
interface Removed {
  readonly data: string;
  readonly study: PhotoStudy;
}

/** The athlete's pictures as they are kept, which of them is chosen, and what can be done with them. */
function usePictures({ opened, seat, athleteId, boatId, onApplied }: SeatPicturesProps) {
  const asked = useCall('photos.ofAthlete', { athleteId });
  const [chosen, setChosen] = useState<string | null>(null);
  const [refusal, setRefusal] = useState<CallError | null>(null);
  const [removed, setRemoved] = useState<Removed | null>(null);
  const tell = (result: CallResult<unknown>) => setRefusal(result.ok ? null : result.error);

  async function add(data: string, image: PhotoStudy['image'], moment: SeenMoment): Promise<void> {
    await put({ data, study: photoStudySchema.parse({ seat, moment, takenOn: today(), image }) });
  }

  async function put(picture: { data: string; study: PhotoStudy }): Promise<boolean> {
    const place = { boatId, athleteId, fitId: opened.id, caption: '' };
    const result = await call('photos.add', { ...place, ...picture });
    tell(result);
    if (result.ok) setChosen(result.value.id);
    asked.reload();
    return result.ok;
  }

  async function bringBack(picture: Removed): Promise<void> {
    if (await put(picture)) setRemoved(null);
  }

  async function takeRate(rate: SeenRate): Promise<void> {
    const fit = withSeenRate(opened.fit, rate);
    const saved = await call('drafts.save', { id: opened.id, fit, basedOn: opened.draftSavedAt });
    tell(saved);
    if (!saved.ok) return;
    announce(say('photograph.taken'));
    onApplied();
  }

  async function remove(id: string, study: PhotoStudy): Promise<void> {
    const opened = await call('photos.open', { id });
    const result = await call('photos.remove', { id });
    tell(result);
    setRemoved(result.ok && opened.ok ? { data: opened.value.data, study } : null);
    asked.reload();
  }
  return { asked, chosen, setChosen, refusal, add, takeRate, remove, removed, bringBack };
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
