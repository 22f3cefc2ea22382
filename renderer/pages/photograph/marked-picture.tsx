import { useEffect, useMemo, useRef, useState } from 'react';
import type { PhotoRecord } from '../../../app/contract/photos.ts';
import type { OpenedFit } from '../../../app/contract/records.ts';
import type { CallError } from '../../../app/contract/result.ts';
import type { Pixel } from '../../../core/photograph/camera.ts';
import { type PhotoStudy, SEEN_MOMENTS } from '../../../core/photograph/photo-study-schema.ts';
import { call } from '../../client/client.ts';
import { useCall } from '../../client/use-call.ts';
import { say } from '../../language/messages.ts';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';
import { Tick } from '../../ui/fields/tick.tsx';
import { GuidePicture } from './mark-guide.tsx';
import { MarkList } from './mark-list.tsx';
import { MARK_ORDER, type MarkName } from './mark-order.ts';
import { confirmed, markOf, nextMark, withMark } from './marked-study.ts';
import { PictureStage } from './picture-stage.tsx';
import { ProposeJoints } from './propose-joints.tsx';
import { ReadResult } from './read-result.tsx';
import { badMarks, type PictureReading, useReading } from './use-reading.ts';

const NONE: readonly PhotoStudy[] = [];

/** One picture: its moment, its marks, what they say. Every change is kept at once. */
export function MarkedPicture(props: {
  opened: OpenedFit;
  photo: PhotoRecord;
  others: readonly PhotoRecord[];
  onKept: () => void;
  onApplied: () => void;
  onRemove: () => void;
}) {
  const { opened, photo } = props;
  const { study, change, keep, refusal } = useStudy(photo);
  const [inHand, setInHand] = useState<MarkName>(
    () => MARK_ORDER.find((name) => !markOf(photo.study!, name)) ?? MARK_ORDER[0]!,
  );
  const [joined, setJoined] = useState(true);
  const [opacity, setOpacity] = useState(0.7);
  const picture = useCall('photos.open', { id: photo.id }).value;
  const same = useMemo(
    () => props.others.flatMap(({ study: other }) => (other && isSameMoment(other, study) ? [other] : [])),
    [props.others, study],
  );
  const reading = useLastReading(useReading(opened.fit, study, joined ? same : NONE));
  const bad = badMarks(reading);
  const source = picture ? `data:${picture.mime};base64,${picture.data}` : null;

  const mark = (name: MarkName, at: Pixel | null, done: boolean) => {
    const next = withMark(study, name, at);
    change(next);
    if (done && at) setInHand(nextMark(next, name));
  };

  return (
    <div className="photograph-columns">
      <div className="stack">
        <ChoiceField
          label={say('photograph.moment')}
          value={study.moment}
          options={SEEN_MOMENTS.map((value) => ({ value, name: say(`photograph.moment.${value}`) }))}
          onChange={(moment) => change({ ...study, moment })}
        />
        {source ? (
          <PictureStage
            source={source}
            study={study}
            reading={reading}
            inHand={inHand}
            opacity={opacity}
            bad={bad}
            onMark={mark}
            onTake={setInHand}
            onNext={() => {
              change(confirmed(study, inHand));
              setInHand(nextMark(study, inHand));
            }}
          />
        ) : (
          <p className="soft">{say('sheet.loading')}</p>
        )}
        <label className="row photograph-opacity">
          {say('photograph.opacity')}
          <input
            type="range"
            min={0}
            max={1}
            step={0.05}
            value={opacity}
            onChange={(event) => setOpacity(Number(event.target.value))}
          />
        </label>
        <Tick
          name={say('photograph.show')}
          isOn={study.shown}
          onChange={(shown) => change({ ...study, shown })}
        />
        {study.shown && (
          <>
            <Tick
              name={say('photograph.show.face')}
              isOn={study.faceSeen}
              onChange={(faceSeen) => change({ ...study, faceSeen })}
            />
            <p className="soft">{say('photograph.show.others')}</p>
          </>
        )}
        {same.length > 0 && <Tick name={say('photograph.joined')} isOn={joined} onChange={setJoined} />}
        <p className="row">
          {source && (
            <ProposeJoints
              source={source}
              study={study}
              seat={opened.fit.seats[study.seat]!}
              reading={reading}
              onProposed={change}
            />
          )}
          <button type="button" className="button words" onClick={props.onRemove}>
            {say('photograph.remove-picture')}
          </button>
        </p>
        {refusal && <ErrorMessage error={refusal} />}
        <ReadResult
          opened={opened}
          study={study}
          reading={reading}
          onTaken={async (taken) => {
            change(taken);
            await keep(taken);
            props.onKept();
            props.onApplied();
          }}
        />
      </div>
      <div className="photograph-side">
        <GuidePicture fit={opened.fit} seat={study.seat} inHand={inHand} onTake={setInHand} />
        <MarkList
          study={study}
          reading={reading}
          inHand={inHand}
          bad={bad}
          onTake={setInHand}
          onRemove={(name) => mark(name, null, true)}
          onConfirm={(name) => change(confirmed(study, name))}
        />
      </div>
    </div>
  );
}

function isSameMoment(a: PhotoStudy, b: PhotoStudy): boolean {
  return a.seat === b.seat && a.moment === b.moment && a.takenOn === b.takenOn;
}

/** Marks are kept after so long without another change, milliseconds. */
const KEEP_AFTER_MS = 400;

/** The study of a photograph: changed at once here, kept in the store a moment later. */
function useStudy(photo: PhotoRecord) {
  const [study, setStudy] = useState<PhotoStudy>(photo.study!);
  const [refusal, setRefusal] = useState<CallError | null>(null);
  const waiting = useRef<{ timer: number; study: PhotoStudy } | null>(null);

  async function keep(next: PhotoStudy): Promise<void> {
    if (waiting.current) window.clearTimeout(waiting.current.timer);
    waiting.current = null;
    const result = await call('photos.study', { id: photo.id, study: next });
    setRefusal(result.ok ? null : result.error);
  }
  const latest = useRef(keep);
  latest.current = keep;
  useEffect(() => () => void (waiting.current && latest.current(waiting.current.study)), []);

  function change(next: PhotoStudy): void {
    setStudy(next);
    if (waiting.current) window.clearTimeout(waiting.current.timer);
    const timer = window.setTimeout(() => void keep(next), KEEP_AFTER_MS);
    waiting.current = { timer, study: next };
  }
  return { study, change, keep, refusal };
}

/** The newest reading there is: while marks move, the one before stays in sight. */
function useLastReading(reading: PictureReading): PictureReading {
  const last = useRef<PictureReading>(reading);
  if (reading.kind === 'read') last.current = reading;
  return last.current;
}
