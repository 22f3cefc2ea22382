import { useId, useState } from 'react';
import type { Pixel } from '../../../core/photograph/camera.ts';
import type { PhotoStudy } from '../../../core/photograph/photo-study-schema.ts';
import { say } from '../../language/messages.ts';
import { FigureLines } from './figure-lines.tsx';
import { Magnifier } from './magnifier.tsx';
import { MARK_ORDER, type PhotoMarkName } from './mark-order.ts';
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
  const arrow = ARROWS[key];
  const by = STEP_PX * (shiftKey ? 10 : 1);
  if (arrow) return [by * arrow[0], by * arrow[1]];
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

/** What the picture and its marks are given. */
export interface StageProps {
  source: string;
  study: PhotoStudy;
  reading: PictureReading;
  inHand: PhotoMarkName;
  opacity: number;
  bad: ReadonlySet<string>;
  onMark: (name: PhotoMarkName, at: Pixel | null, done: boolean) => void;
  onTake: (name: PhotoMarkName) => void;
  /** The mark in hand is right; on to the next. */
  onNext: () => void;
}

/** The picture with its marks, the plan's figure and the seen one; the mark in hand is set by pointer or keys. */
export function PictureStage(props: StageProps) {
  const { source, study, inHand } = props;
  const keys = useId();
  const { held, pointer, ...hand } = useMarkingHand(props);
  const { width, height } = study.image;
  const seen = markOf(study, held ?? inHand);
  return (
    <div className="photograph-stage">
      <svg
        {...hand}
        viewBox={`0 0 ${width} ${height}`}
        role="application"
        aria-label={say('photograph.stage', { mark: markName(inHand) })}
        aria-describedby={keys}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the keys move the mark in hand
        tabIndex={0}
      >
        <image href={source} width={width} height={height} />
        <FigureLines reading={props.reading} opacity={props.opacity} width={width} />
        <Marks {...props} />
      </svg>
      <p id={keys} className="soft photograph-keys">
        {say('photograph.keys')}
      </p>
      <Magnifier source={source} image={study.image} at={held ? (seen ?? pointer) : (pointer ?? seen)} />
    </div>
  );
}

/** A press moved less than this is a click, pixels of the screen. */
const DRAG_PX = 4;

/**
 * The mark that the pointer holds. A press on a mark while another waits to be set: `pressed` is where, as long as it may be a click,
 * which sets that other one there, for two joints may lie on one place.
 */
interface Held {
  readonly name: PhotoMarkName;
  readonly pressed: readonly [number, number] | null;
}

/** What the picture hears of pointer and keys; which mark the pointer holds, and where it is, in pixels of the picture. */
function useMarkingHand(props: StageProps) {
  const { study, inHand, onMark } = props;
  const [pointer, setPointer] = useState<Pixel | null>(null);
  const [held, setHeld] = useState<Held | null>(null);
  const place = ({ currentTarget, clientX, clientY }: React.PointerEvent): Pixel => {
    const box = currentTarget.getBoundingClientRect();
    return {
      u: ((clientX - box.left) / box.width) * study.image.width,
      v: ((clientY - box.top) / box.height) * study.image.height,
    };
  };
  return {
    held: held?.name ?? null,
    pointer,
    onKeyDown(event: React.KeyboardEvent) {
      const act = keyAct(event);
      if (!act) return;
      event.preventDefault();
      if (act === 'next') props.onNext();
      else if (act === 'remove') onMark(inHand, null, false);
      else if (typeof act === 'number') props.onTake(markBeside(inHand, act));
      else {
        const from = markOf(study, inHand) ?? firstPlace(props);
        onMark(inHand, { u: from.u + act[0], v: from.v + act[1] }, false);
      }
    },
    onPointerDown(event: React.PointerEvent) {
      event.currentTarget.setPointerCapture(event.pointerId);
      const taken = (event.target as Element).getAttribute('data-mark') as PhotoMarkName | null;
      const isSet = markOf(study, inHand) !== undefined;
      if (taken && !isSet && event.pointerType !== 'touch') {
        setHeld({ name: taken, pressed: [event.clientX, event.clientY] });
        return;
      }
      const name = taken && isSet ? taken : inHand;
      if (name === inHand) onMark(name, place(event), false);
      else props.onTake(name);
      setHeld({ name, pressed: null });
    },
    onPointerMove(event: React.PointerEvent) {
      setPointer(place(event));
      if (!held) return;
      const { name, pressed } = held;
      if (pressed) {
        if (Math.hypot(event.clientX - pressed[0], event.clientY - pressed[1]) < DRAG_PX) return;
        props.onTake(name);
        setHeld({ name, pressed: null });
      }
      onMark(name, place(event), false);
    },
    onPointerUp(event: React.PointerEvent) {
      if (held) onMark(held.pressed ? inHand : held.name, place(event), true);
      setHeld(null);
    },
    onPointerCancel: () => setHeld(null),
    onPointerLeave: () => setPointer(null),
  };
}

/** Every mark that is set; the one in hand lies on top. */
function Marks({ study, inHand, bad }: StageProps) {
  return [...MARK_ORDER.filter((name) => name !== inHand), inHand].map((name) => {
    const at = markOf(study, name);
    return (
      at && (
        <Mark
          key={name}
          name={name}
          at={at}
          width={study.image.width}
          inHand={name === inHand}
          bad={bad.has(name)}
          proposed={proposedShare(study, name) !== undefined}
        />
      )
    );
  });
}

function Mark(props: {
  name: PhotoMarkName;
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
