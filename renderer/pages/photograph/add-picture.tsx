import { useEffect, useRef, useState } from 'react';
import { Button, FileTrigger } from 'react-aria-components';
import type { ImageSize } from '../../../core/photograph/camera.ts';
import type { SeenMoment } from '../../../core/photograph/seen-moment.ts';
import type { SeenRate } from '../../../core/photograph/stroke-rate.ts';
import { say, words } from '../../language/messages.ts';
import { pictureSize } from '../../ui/small-picture.ts';
import { Film } from './film.tsx';
import { uprightPicture } from './upright-picture.ts';

type Taken = (data: string, image: ImageSize, moment: SeenMoment) => Promise<void>;

/** Adds pictures: chosen, dropped, pasted, or a frame of a video. A video's catches give the stroke rate. */
export function AddPicture({ onPicture, onRate }: { onPicture: Taken; onRate: (rate: SeenRate) => void }) {
  const [problem, setProblem] = useState<string | null>(null);
  const [film, setFilm] = useState<string | null>(null);
  const [over, setOver] = useState(false);

  async function take(files: Iterable<File> | null, moment: SeenMoment = 'ready'): Promise<void> {
    const problems: string[] = [];
    for (const file of files ?? []) {
      if (file.type.startsWith('video/')) {
        setFilm(URL.createObjectURL(file));
        continue;
      }
      const picture = await uprightPicture(file);
      if ('problem' in picture) problems.push(picture.problem);
      else await onPicture(picture.data, await pictureSize(picture.data), moment);
    }
    setProblem(words().sentences(problems) || null);
  }
  usePaste((files) => void take(files));

  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: dropping is one way of three; the button is the one for keys
    <div
      className={over ? 'photograph-drop over' : 'photograph-drop'}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        event.preventDefault();
        setOver(false);
        void take(event.dataTransfer.files);
      }}
    >
      <FileTrigger
        acceptedFileTypes={['image/jpeg', 'image/png', 'image/webp', 'video/mp4', 'video/webm']}
        allowsMultiple
        onSelect={(files) => void take(files)}
      >
        <Button className="button">{say('photograph.choose')}</Button>
      </FileTrigger>
      <span className="soft">{say('photograph.drop')}</span>
      {problem && (
        <p className="error-box" role="alert">
          {problem}
        </p>
      )}
      {film && (
        <Film
          key={film}
          source={film}
          onFrame={(file, moment) => void take([file], moment)}
          onRate={onRate}
          onProblem={setProblem}
        />
      )}
    </div>
  );
}

/** Pictures pasted anywhere on the page, unless into a text field. */
function usePaste(take: (files: File[]) => void): void {
  const latest = useRef(take);
  latest.current = take;
  useEffect(() => {
    const paste = (event: ClipboardEvent) => {
      const files = [...(event.clipboardData?.files ?? [])];
      if (files.length > 0) latest.current(files);
    };
    window.addEventListener('paste', paste);
    return () => window.removeEventListener('paste', paste);
  }, []);
}
