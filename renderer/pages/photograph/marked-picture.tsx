import { useMemo, useRef, useState } from 'react';
import type { PhotoRecord } from '../../../app/contract/photos.ts';
import type { OpenedFit } from '../../../app/contract/records.ts';
import type { Pixel } from '../../../core/photograph/camera.ts';
import { type PhotoStudy, SEEN_MOMENTS } from '../../../core/photograph/photo-study-schema.ts';
import { useCall } from '../../client/use-call.ts';
import { say } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';
import { RangeField } from '../../ui/fields/range-field.tsx';
import { Tick } from '../../ui/fields/tick.tsx';
import { UndoRedo } from '../../ui/undo-redo.tsx';
import { GuidePicture } from './mark-guide.tsx';
import { MarkList } from './mark-list.tsx';
import { MARK_ORDER, type PhotoMarkName } from './mark-order.ts';
import { markName } from './mark-words.ts';
import { confirmed, markOf, nextMark, proposedShare, withMark, withMoment } from './marked-study.ts';
import { PictureStage, type StageProps } from './picture-stage.tsx';
import { ProposeJoints } from './propose-joints.tsx';
import { ReadResult } from './read-result.tsx';
import { disagreeingMarks, isReadingOf, type PictureReading, useReading } from './use-reading.ts';
import { useStudy } from './use-study.ts';

const NONE: readonly PhotoStudy[] = [];

interface MarkedProps {
  readonly opened: OpenedFit;
  readonly photo: PhotoRecord;
  readonly others: readonly PhotoRecord[];
  readonly onKept: () => void;
  readonly onApplied: () => void;
  /** Another picture is chosen: the study as it was last. */
  readonly onLeave: (study: PhotoStudy) => void;
  readonly onRemove: (study: PhotoStudy) => void;
}

/** One picture: its moment, its marks, what they say. Every change is kept at once. */
export function MarkedPicture(props: MarkedProps) {
  const { opened, photo } = props;
  const { study, change, keep, refusal, history } = useStudy(photo, props.onLeave);
  const { inHand, setInHand, mark, confirm, next } = useMarks(study, change);
  const [joined, setJoined] = useState(true);
  const same = useMemo(
    () => props.others.flatMap(({ study: other }) => (other && isSameMoment(other, study) ? [other] : [])),
    [props.others, study],
  );
  const others = joined ? same : NONE;
  const reading = useLastReading(useReading(opened.fit, study, others));
  const disagreeing = disagreeingMarks(reading);
  const bad = new Set(disagreeing.flatMap(({ name, isHere }) => (isHere ? [name] : [])));
  const marking = { study, reading, inHand, bad, onTake: setInHand };

  const take = async (taken: PhotoStudy) => {
    change(taken);
    await keep(taken);
    props.onKept();
    props.onApplied();
  };

  const columns = useRef<HTMLDivElement>(null);
  const takeFromList = (name: PhotoMarkName) => {
    setInHand(name);
    bringIntoSight(columns.current?.querySelector('.photograph-stage'));
  };

  return (
    <div className="photograph-columns" ref={columns}>
      <div className="stack">
        <UndoRedo {...history} />
        <Picture {...props} marking={marking} onChange={change} onMark={mark} onNext={next}>
          <Visibility study={study} onChange={change} />
          {same.length > 0 && <Tick name={say('photograph.joined')} isOn={joined} onChange={setJoined} />}
        </Picture>
        {refusal && <ErrorMessage error={refusal} />}
        <ReadResult
          opened={opened}
          study={study}
          reading={reading}
          isCurrent={isReadingOf(reading, study, others)}
          disagreeing={disagreeing}
          onLeaveOut={() => change(without(study, bad), say('photograph.apply.leave-out'))}
          onTaken={take}
        />
      </div>
      <div className="photograph-side">
        <GuidePicture fit={opened.fit} seat={study.seat} inHand={inHand} onTake={setInHand} />
        <MarkList
          {...marking}
          onTake={takeFromList}
          onRemove={(name) => mark(name, null, true)}
          onConfirm={confirm}
        />
      </div>
    </div>
  );
}

/** The mark in hand of a picture, and what is done with marks: each change is one step of undo. */
function useMarks(study: PhotoStudy, change: (study: PhotoStudy, step?: string) => void) {
  const [inHand, setInHand] = useState<PhotoMarkName>(
    () => MARK_ORDER.find((name) => !markOf(study, name)) ?? MARK_ORDER[0]!,
  );
  const mark = (name: PhotoMarkName, at: Pixel | null, done: boolean) => {
    const marked = withMark(study, name, at);
    change(marked, markName(name));
    if (done && at) setInHand(nextMark(marked, name));
  };
  const confirm = (name?: PhotoMarkName) =>
    change(confirmed(study, name), name ? markName(name) : say('photograph.points.joints'));
  const next = () => {
    if (proposedShare(study, inHand) !== undefined) confirm(inHand);
    setInHand(nextMark(study, inHand));
  };
  return { inHand, setInHand, mark, confirm, next };
}

/** A study without some of its marks. */
function without(study: PhotoStudy, names: ReadonlySet<PhotoMarkName>): PhotoStudy {
  return [...names].reduce((left, name) => withMark(left, name, null), study);
}

/** Brings a picture of which less than half is in sight back into it: in a narrow window the list of marks lies below. */
function bringIntoSight(picture: Element | null | undefined): void {
  if (!picture) return;
  const { top, bottom } = picture.getBoundingClientRect();
  const seen = Math.min(bottom, window.innerHeight) - Math.max(top, 0);
  if (seen < (bottom - top) / 2) picture.scrollIntoView({ block: 'nearest' });
}

/** The picture itself with its moment and its tools. */
function Picture(
  props: MarkedProps & {
    marking: Omit<StageProps, 'source' | 'opacity' | 'onMark' | 'onNext'>;
    onChange: (study: PhotoStudy, step?: string) => void;
    onMark: StageProps['onMark'];
    onNext: StageProps['onNext'];
    children: React.ReactNode;
  },
) {
  const { marking, onChange } = props;
  const { study, reading } = marking;
  const [opacity, setOpacity] = useState(0.7);
  const picture = useCall('photos.open', { id: props.photo.id }).value;
  const source = picture ? `data:${picture.mime};base64,${picture.data}` : null;
  return (
    <>
      <ChoiceField
        label={say('photograph.moment')}
        value={study.moment}
        options={SEEN_MOMENTS.map((value) => ({ value, name: say(`photograph.moment.${value}`) }))}
        onChange={(moment) => onChange(withMoment(study, moment), say('photograph.moment'))}
      />
      {source ? (
        <PictureStage
          {...marking}
          source={source}
          opacity={opacity}
          onMark={props.onMark}
          onNext={props.onNext}
        />
      ) : (
        <p className="soft">{say('sheet.loading')}</p>
      )}
      <RangeField
        label={say('photograph.opacity')}
        className="row photograph-opacity"
        min={0}
        max={1}
        step={0.05}
        value={opacity}
        onChange={setOpacity}
      />
      {props.children}
      <p className="row">
        {source && (
          <ProposeJoints
            source={source}
            study={study}
            seat={props.opened.fit.seats[study.seat]!}
            reading={reading}
            onProposed={(proposed) => onChange(proposed, say('photograph.propose'))}
          />
        )}
        <Button look="words" onClick={() => props.onRemove(study)}>
          {say('photograph.remove-picture')}
        </Button>
      </p>
    </>
  );
}

/** Whether the athlete is shown the picture, and with the face. */
function Visibility({ study, onChange }: { study: PhotoStudy; onChange: (study: PhotoStudy) => void }) {
  return (
    <>
      <Tick
        name={say('photograph.show')}
        isOn={study.shown}
        onChange={(shown) => onChange({ ...study, shown })}
      />
      {study.shown && (
        <>
          <Tick
            name={say('photograph.show.face')}
            isOn={study.faceSeen}
            onChange={(faceSeen) => onChange({ ...study, faceSeen })}
          />
          <p className="soft">{say('photograph.show.others')}</p>
        </>
      )}
    </>
  );
}

function isSameMoment(a: PhotoStudy, b: PhotoStudy): boolean {
  return a.seat === b.seat && a.moment === b.moment && a.takenOn === b.takenOn;
}

/** The newest reading there is: while marks move, the one before stays in sight. */
function useLastReading(reading: PictureReading): PictureReading {
  const last = useRef<PictureReading>(reading);
  if (reading.kind === 'read') last.current = reading;
  return last.current;
}
