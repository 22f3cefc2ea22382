import { useEffect, useRef, useState } from 'react';
import { Button, FileTrigger } from 'react-aria-components';
import type { ImageSize } from '../../../core/photograph/camera.ts';
import { say } from '../../language/messages.ts';
import { sizeOf } from '../../ui/small-picture.ts';
import { frameOf, uprightPicture } from './upright-picture.ts';

type Taken = (data: string, image: ImageSize) => Promise<void>;

/** Takes pictures in: chosen, dropped, pasted, or a frame of a video. */
export function AddPicture({ onPicture }: { onPicture: Taken }) {
  const [problem, setProblem] = useState<string | null>(null);
  const [film, setFilm] = useState<string | null>(null);
  const [over, setOver] = useState(false);

  async function take(files: Iterable<File> | null): Promise<void> {
    for (const file of files ?? []) {
      if (file.type.startsWith('video/')) {
        setFilm(URL.createObjectURL(file));
        continue;
      }
      const picture = await uprightPicture(file);
      setProblem('problem' in picture ? picture.problem : null);
      if ('data' in picture) await onPicture(picture.data, await sizeOf(picture.data));
    }
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
        <p className="trouble" role="alert">
          {problem}
        </p>
      )}
      {film && <Film source={film} onFrame={(file) => void take([file])} onProblem={setProblem} />}
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

/** One frame of most telephones' videos, seconds. */
const FRAME_S = 1 / 30;

/** A video of which single frames are picked. */
function Film(props: {
  source: string;
  onFrame: (file: File) => void;
  onProblem: (problem: string) => void;
}) {
  const video = useRef<HTMLVideoElement>(null);
  useEffect(() => () => URL.revokeObjectURL(props.source), [props.source]);
  const step = (frames: number) => {
    if (!video.current) return;
    video.current.pause();
    video.current.currentTime += frames * FRAME_S;
  };
  const use = async () => {
    const frame = video.current && (await frameOf(video.current));
    if (frame) props.onFrame(frame);
  };
  return (
    <div className="photograph-film">
      <video
        ref={video}
        src={props.source}
        controls
        muted
        onError={() => props.onProblem(say('photograph.film.problem'))}
      />
      <p className="row">
        <button type="button" className="button" onClick={() => step(-1)}>
          {say('photograph.film.back')}
        </button>
        <button type="button" className="button" onClick={() => step(1)}>
          {say('photograph.film.on')}
        </button>
        <button type="button" className="button chief" onClick={() => void use()}>
          {say('photograph.film.use')}
        </button>
      </p>
    </div>
  );
}
