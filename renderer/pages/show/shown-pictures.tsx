import type { PhotoRecord } from '../../../app/contract/photos.ts';
import { saidIn } from '../../../app/language/spoken.ts';
import type { Translator } from '../../../app/language/translator.ts';
import type { Athlete } from '../../../core/document/athlete-schema.ts';
import { call } from '../../client/client.ts';
import { useCall } from '../../client/use-call.ts';
import { dateText } from '../../language/dates.ts';
import { say } from '../../language/messages.ts';
import { useShownWords } from '../../language/shown-words.tsx';
import { ConsentNote } from '../../ui/consent-note.tsx';
import { blurredPicture, useBlurredPicture } from './blurred-picture.ts';

/** So many pictures go onto the page to take home. */
const MOST_PRINTED = 2;

const isShown = (photo: PhotoRecord, fitId: string) => photo.fitId === fitId && photo.study?.shown === true;

const captionOf = ({ study, addedAt }: PhotoRecord, words: Translator) =>
  saidIn(words, () =>
    say('photograph.shown.picture', {
      moment: say(`photograph.moment.${study!.moment}`),
      day: dateText(study!.takenOn ?? addedAt),
    }),
  );

/** The photographs of the athlete in this fit that the coach chose to show, the face blurred unless chosen otherwise. */
export function ShownPictures({ athlete, fitId }: { athlete: Athlete & { id: string }; fitId: string }) {
  const athleteId = athlete.id;
  const { value } = useCall('photos.ofAthlete', { athleteId });
  const shown = (value ?? []).filter((photo) => isShown(photo, fitId));
  if (shown.length === 0) return null;
  return (
    <section className="show-photographs" aria-label={say('archive.counts.photos')}>
      <ConsentNote athletes={[athlete]} wanted={['photographs']} />
      {shown.map((photo) => (
        <ShownPicture key={photo.id} photo={photo} />
      ))}
    </section>
  );
}

function ShownPicture({ photo }: { photo: PhotoRecord }) {
  const words = useShownWords();
  const made = useBlurredPicture(photo);
  if (!made) return null;
  if (made.kind === 'no-head') return <p className="soft">{words.say('photograph.shown.no-head')}</p>;
  return (
    <img
      src={`data:image/jpeg;base64,${made.data}`}
      width={made.width}
      height={made.height}
      alt={captionOf(photo, words)}
      data-face={photo.study?.faceSeen ? 'seen' : 'blurred'}
    />
  );
}

/** The same pictures for the page to take home, the newest first: JPEG as Base64 with a caption. */
export async function picturesToPrint(athleteId: string, fitId: string, words: Translator) {
  const asked = await call('photos.ofAthlete', { athleteId });
  const photos = asked.ok ? asked.value.filter((photo) => isShown(photo, fitId)) : [];
  const made = await Promise.all(
    photos.map(async (photo) => {
      const picture = await blurredPicture(photo);
      return picture?.kind === 'picture' ? [{ data: picture.data, caption: captionOf(photo, words) }] : [];
    }),
  );
  return made.flat().slice(-MOST_PRINTED).toReversed();
}
