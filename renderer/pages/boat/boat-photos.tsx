import { useState } from 'react';
import { Button as AriaButton, FileTrigger } from 'react-aria-components';
import type { PhotoRecord } from '../../../app/contract/photos.ts';
import type { CallError } from '../../../app/contract/result.ts';
import { call } from '../../client/client.ts';
import { useCall } from '../../client/use-call.ts';
import { useFormat } from '../../display/use-display.ts';
import { dateText } from '../../language/dates.ts';
import { say, words } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { TextField } from '../../ui/fields/text-field.tsx';
import { smallPicture } from '../../ui/small-picture.ts';

/** A photograph just removed, for bringing it back. */
interface Removed {
  readonly caption: string;
  readonly data: string;
}

/** A boat's photographs, and what is done with them. */
function usePhotos(boatId: string) {
  const asked = useCall('photos.list', { boatId });
  const [refusal, setRefusal] = useState<CallError | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const [removed, setRemoved] = useState<Removed | null>(null);

  async function add(caption: string, data: string): Promise<boolean> {
    const result = await call('photos.add', { boatId, caption, data });
    setRefusal(result.ok ? null : result.error);
    asked.reload();
    return result.ok;
  }

  async function choose(files: FileList | null): Promise<void> {
    const problems: string[] = [];
    for (const file of files ?? []) {
      const picture = await smallPicture(file);
      if ('problem' in picture) problems.push(picture.problem);
      else if (!(await add('', picture.data))) break;
    }
    setProblem(words().sentences(problems) || null);
  }

  async function describe({ id }: PhotoRecord, caption: string): Promise<void> {
    const result = await call('photos.describe', { id, caption });
    setRefusal(result.ok ? null : result.error);
    asked.reload();
  }

  async function remove(photo: PhotoRecord): Promise<void> {
    const opened = await call('photos.open', { id: photo.id });
    const result = await call('photos.remove', { id: photo.id });
    setRefusal(result.ok ? null : result.error);
    setRemoved(opened.ok && result.ok ? { caption: photo.caption, data: opened.value.data } : null);
    asked.reload();
  }

  async function bringBack({ caption, data }: Removed): Promise<void> {
    if (await add(caption, data)) setRemoved(null);
  }

  return { asked, refusal, problem, removed, choose, describe, remove, bringBack };
}

/** A boat's photographs: added, described, removed, brought back. */
export function BoatPhotos({ boatId }: { boatId: string }) {
  const { asked, refusal, problem, removed, choose, describe, remove, bringBack } = usePhotos(boatId);
  const photos = asked.value;
  return (
    <section>
      <h2>{say('archive.counts.photos')}</h2>
      <p className="soft">{say('photos.about')}</p>
      {asked.error && <ErrorMessage error={asked.error} onRetry={asked.reload} />}
      {photos?.length === 0 && <p className="soft">{say('photos.none')}</p>}
      <ul className="photos">
        {photos?.map((photo, i) => (
          <Photo
            key={photo.id}
            photo={photo}
            number={i + 1}
            onRemove={() => remove(photo)}
            onDescribe={(caption) => void describe(photo, caption)}
          />
        ))}
      </ul>
      {removed && (
        <p className="row" role="status">
          {say('photos.removed')}
          <Button look="words" onClick={() => bringBack(removed)}>
            {say('archive.back.replace')}
          </Button>
        </p>
      )}
      {problem && (
        <p className="error-box" role="alert">
          {problem}
        </p>
      )}
      {refusal && <ErrorMessage error={refusal} />}
      <p>
        <FileTrigger
          acceptedFileTypes={['image/jpeg', 'image/png', 'image/webp']}
          allowsMultiple
          onSelect={choose}
        >
          <AriaButton className="button">{say('photos.add')}</AriaButton>
        </FileTrigger>
      </p>
    </section>
  );
}

const MEGABYTE = 1024 * 1024;

function Photo(props: {
  photo: PhotoRecord;
  number: number;
  onRemove: () => void;
  onDescribe: (caption: string) => void;
}) {
  const { photo, number, onRemove, onDescribe } = props;
  const { value: picture } = useCall('photos.open', { id: photo.id });
  const [caption, setCaption] = useState(photo.caption);
  const [large, setLarge] = useState(false);
  const format = useFormat();
  const name = caption ? say('photos.picture.named', { number, caption }) : say('photos.picture', { number });
  const keep = () => {
    if (caption !== photo.caption) onDescribe(caption);
  };
  return (
    <li className={large ? 'photo large' : 'photo'}>
      {picture ? (
        <button
          type="button"
          className="photo-size"
          aria-expanded={large}
          aria-label={say(large ? 'photos.small' : 'photos.large', { number })}
          onClick={() => setLarge(!large)}
        >
          <img src={`data:${picture.mime};base64,${picture.data}`} alt={name} />
        </button>
      ) : (
        <span className="soft">{say('sheet.loading')}</span>
      )}
      {/* biome-ignore lint/a11y/noStaticElementInteractions: leaving the entry inside keeps what was typed */}
      <div onBlur={keep}>
        <TextField
          label={say('photos.caption', { number })}
          value={caption}
          onChange={setCaption}
          maxLength={200}
        />
      </div>
      <p className="row soft">
        {say('photos.size', {
          size: format.number(photo.bytes / MEGABYTE, { decimals: 1 }),
          day: dateText(photo.addedAt),
        })}
        <Button look="words" aria-label={say('photos.remove', { number })} onClick={onRemove}>
          {say('photos.remove', { number })}
        </Button>
      </p>
    </li>
  );
}
