import { useId, useRef, useState } from 'react';
import type { Pixel } from '../../../core/photograph/camera.ts';
import type { PhotoStudy } from '../../../core/photograph/photo-study-schema.ts';
import { say } from '../../language/messages.ts';
import { FigureLines } from './figure-lines.tsx';
import { Magnifier } from './magnifier.tsx';
import { MARK_ORDER, type MarkName } from './mark-order.ts';
import { markName } from './mark-words.ts';
import { markBeside, markOf, proposedShare } from './marked-study.ts';
import type { PictureReading } from './use-reading.ts';

/** Arrow keys move a mark by so many pixels of the picture; with Shift by ten times that. */
const STEP_PX = 1;
const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** What a key does: on to the next mark, take it away, take another in hand (so many on), or move it (pixels). */
function keyAct({
  key,
  shiftKey,
}: React.KeyboardEvent): 'next' | 'remove' | number | readonly [number, number] | null {
  const way = ARROWS[key];
  const by = STEP_PX * (shiftKey ? 10 : 1);
  if (way) return [by * way[0], by * way[1]];
  if (key === 'Enter') return 'next';
  if (key === 'Delete' || key === 'Backspace') return 'remove';
  if (key === 'PageDown') return 1;
  return key === 'PageUp' ? -1 : null;
}

/** Where keys begin with a mark that is not set: where the plan has the joint, or in the middle. */
function firstPlace({
  reading,
  inHand,
  study: { image },
}: Pick<StageProps, 'reading' | 'inHand' | 'study'>): Pixel {
  const plan = reading.kind === 'read' ? reading.answer.plan?.points : undefined;
  const own = inHand.slice('joint.'.length) as keyof NonNullable<typeof plan>;
  const at = inHand.startsWith('joint.') ? plan?.[own] : undefined;
  const isIn = at && at.u >= 0 && at.v >= 0 && at.u <= image.width && at.v <= image.height;
  return isIn ? at : { u: image.width / 2, v: image.height / 2 };
}

interface StageProps {
  source: string;
  study: PhotoStudy;
  reading: PictureReading;
  inHand: MarkName;
  opacity: number;
  bad: ReadonlySet<string>;
  onMark: (name: MarkName, at: Pixel | null, done: boolean) => void;
  onTake: (name: MarkName) => void;
  /** The mark in hand is right; on to the next. */
  onNext: () => void;
}

/** The picture with its marks, the plan's figure and the seen one; the mark in hand is set by pointer or keys. */
export function PictureStage(props: StageProps) {
  const { source, study, inHand, onMark } = props;
  const stage = useRef<SVGSVGElement>(null);
  const keys = useId();
  const [pointer, setPointer] = useState<Pixel | null>(null);
  const [held, setHeld] = useState<MarkName | null>(null);
  const { width, height } = study.image;
  const at = markOf(study, inHand);
  const place = (event: React.PointerEvent): Pixel => {
    const box = stage.current!.getBoundingClientRect();
    return {
      u: ((event.clientX - box.left) / box.width) * width,
      v: ((event.clientY - box.top) / box.height) * height,
    };
  };
  const onKeyDown = (event: React.KeyboardEvent) => {
    const act = keyAct(event);
    if (!act) return;
    event.preventDefault();
    if (act === 'next') props.onNext();
    else if (act === 'remove') onMark(inHand, null, false);
    else if (typeof act === 'number') props.onTake(markBeside(inHand, act));
    else {
      const from = at ?? firstPlace(props);
      onMark(inHand, { u: from.u + act[0], v: from.v + act[1] }, false);
    }
  };
  return (
    <div className="photograph-stage">
      <svg
        ref={stage}
        viewBox={`0 0 ${width} ${height}`}
        role="application"
        aria-label={say('photograph.stage', { mark: markName(inHand) })}
        aria-describedby={keys}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the keys move the mark in hand
        tabIndex={0}
        onKeyDown={onKeyDown}
        onPointerDown={(event) => {
          event.currentTarget.setPointerCapture(event.pointerId);
          const taken = (event.target as Element).getAttribute('data-mark') as MarkName | null;
          if (taken) props.onTake(taken);
          else onMark(inHand, place(event), false);
          setHeld(taken ?? inHand);
        }}
        onPointerMove={(event) => {
          setPointer(place(event));
          if (held) onMark(held, place(event), false);
        }}
        onPointerUp={(event) => {
          if (held) onMark(held, place(event), true);
          setHeld(null);
        }}
        onPointerLeave={() => setPointer(null)}
      >
        <image href={source} width={width} height={height} />
        <FigureLines reading={props.reading} opacity={props.opacity} width={width} />
        {MARK_ORDER.map((name) => {
          const mark = markOf(study, name);
          return mark ? (
            <Mark
              key={name}
              name={name}
              at={mark}
              width={width}
              inHand={name === inHand}
              bad={props.bad.has(name)}
              proposed={proposedShare(study, name) !== undefined}
            />
          ) : null;
        })}
      </svg>
      <p id={keys} className="soft photograph-keys">
        {say('photograph.keys')}
      </p>
      <Magnifier
        source={source}
        image={study.image}
        at={held ? (markOf(study, held) ?? pointer) : (pointer ?? at)}
      />
    </div>
  );
}

function Mark(props: {
  name: MarkName;
  at: Pixel;
  width: number;
  inHand: boolean;
  bad: boolean;
  proposed: boolean;
}) {
  const { name, at, width, inHand, bad, proposed } = props;
  const size = width / 120;
  const kind = name.startsWith('joint.') ? 'of-joint' : 'of-boat';
  const state = [inHand && 'in-hand', bad && 'bad', proposed && 'proposed'].filter(Boolean).join(' ');
  return (
    <g className={`photograph-mark ${kind} ${state}`}>
      <path
        d={`M${at.u - size} ${at.v}h${2 * size}M${at.u} ${at.v - size}v${2 * size}`}
        strokeWidth={width / 700}
      />
      {proposed && <circle cx={at.u} cy={at.v} r={size} fill="none" strokeWidth={width / 900} />}
      {bad && <circle cx={at.u} cy={at.v} r={1.5 * size} fill="none" strokeWidth={width / 500} />}
      <circle cx={at.u} cy={at.v} r={1.6 * size} fill="transparent" stroke="none" data-mark={name} />
    </g>
  );
}
