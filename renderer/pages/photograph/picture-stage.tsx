import { useRef, useState } from 'react';
import type { Pixel } from '../../../core/photograph/camera.ts';
import type { PhotoStudy } from '../../../core/photograph/photo-study-schema.ts';
import { say } from '../../language/messages.ts';
import { FigureLines } from './figure-lines.tsx';
import { Magnifier } from './magnifier.tsx';
import { MARK_ORDER, type MarkName } from './mark-order.ts';
import { markName } from './mark-words.ts';
import { markOf } from './marked-study.ts';
import type { PictureReading } from './use-reading.ts';

/** Arrow keys move a mark by so many pixels of the picture; with Shift by ten times that. */
const STEP_PX = 1;
const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** The picture with its marks, the plan's figure and the seen one; the mark in hand is set by pointer or keys. */
export function PictureStage(props: {
  source: string;
  study: PhotoStudy;
  reading: PictureReading;
  inHand: MarkName;
  opacity: number;
  bad: ReadonlySet<string>;
  onMark: (name: MarkName, at: Pixel, done: boolean) => void;
  onTake: (name: MarkName) => void;
}) {
  const { source, study, inHand, onMark } = props;
  const stage = useRef<SVGSVGElement>(null);
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
    const way = ARROWS[event.key];
    if (!way) return;
    event.preventDefault();
    const from = at ?? { u: width / 2, v: height / 2 };
    const by = STEP_PX * (event.shiftKey ? 10 : 1);
    onMark(inHand, { u: from.u + by * way[0], v: from.v + by * way[1] }, false);
  };
  return (
    <div className="photograph-stage">
      <svg
        ref={stage}
        viewBox={`0 0 ${width} ${height}`}
        role="application"
        aria-label={say('photograph.stage', { mark: markName(inHand) })}
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
            />
          ) : null;
        })}
      </svg>
      <Magnifier
        source={source}
        image={study.image}
        at={held ? (markOf(study, held) ?? pointer) : (pointer ?? at)}
      />
    </div>
  );
}

function Mark(props: { name: MarkName; at: Pixel; width: number; inHand: boolean; bad: boolean }) {
  const { name, at, width, inHand, bad } = props;
  const size = width / 120;
  const kind = name.startsWith('boat.') ? 'of-boat' : 'of-joint';
  return (
    <g className={`photograph-mark ${kind}${inHand ? ' in-hand' : ''}${bad ? ' bad' : ''}`}>
      <path
        d={`M${at.u - size} ${at.v}h${2 * size}M${at.u} ${at.v - size}v${2 * size}`}
        strokeWidth={width / 700}
      />
      {bad && <circle cx={at.u} cy={at.v} r={1.5 * size} fill="none" strokeWidth={width / 500} />}
      <circle cx={at.u} cy={at.v} r={1.6 * size} fill="transparent" stroke="none" data-mark={name} />
    </g>
  );
}
