import { useMemo } from 'react';
import { boundsOf } from '../../../core/setout/drawing-bounds.ts';
import { onPaper } from '../../../core/setout/paper-marks.ts';
import type { TemplateDrawing } from '../../../core/setout/template-drawing.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';
import { PaperDrawing } from '../set-out/paper-drawing.tsx';

/** Margin around the drawing, millimetres. */
const AROUND_MM = 8;
/** The check bar, millimetres: ten centimetres, or four inches. */
const BAR_MM = { metric: 100, inch: 4 * 25.4 };

/** A template's drawing at full size, with a bar beneath to lay a ruler on. */
export function FullSizeTemplate(props: {
  drawing: TemplateDrawing;
  pixelsPerMm: number;
  measured: boolean;
}) {
  const { drawing, pixelsPerMm, measured } = props;
  const { drawn, part } = useMemo(() => pictureOf(drawing), [drawing]);
  return (
    <figure className="full-size-figure" data-measured={measured || undefined}>
      <CheckBar pixelsPerMm={pixelsPerMm} measured={measured} />
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by the keyboard */}
      <section className="full-size-scroll" tabIndex={0} aria-label={drawing.title}>
        <div
          className="full-size-drawing"
          style={{ width: part.width * pixelsPerMm, height: part.height * pixelsPerMm }}
        >
          <PaperDrawing
            shapes={drawn}
            part={part}
            label={say('fullsize.drawing', { title: drawing.title, seen: drawing.seen })}
          />
        </div>
      </section>
      <figcaption className="soft">{say('fullsize.caution')}</figcaption>
    </figure>
  );
}

function pictureOf({ shapes }: TemplateDrawing) {
  const { minX, minY, maxX, maxY } = boundsOf(shapes);
  return {
    drawn: onPaper(shapes, { scale: 1, origin: [AROUND_MM - minX, AROUND_MM + maxY] }),
    part: { left: 0, top: 0, width: maxX - minX + 2 * AROUND_MM, height: maxY - minY + 2 * AROUND_MM },
  };
}

function CheckBar({ pixelsPerMm, measured }: { pixelsPerMm: number; measured: boolean }) {
  const inch = useFormat().lengthUnit === 'in';
  const mm = inch ? BAR_MM.inch : BAR_MM.metric;
  const ticks = inch ? 4 : 10;
  const width = mm * pixelsPerMm;
  const length = inch ? '4 in' : '100 mm';
  return (
    <p className="check-bar">
      <svg width={width + 2} height={14} role="img" aria-label={say('fullsize.bar.spoken', { length })}>
        <path
          d={[
            `M1 7H${width + 1}`,
            ...Array.from({ length: ticks + 1 }, (_, k) => `M${1 + (k * width) / ticks} 2V12`),
          ].join('')}
        />
      </svg>
      <span>{say(measured ? 'fullsize.bar' : 'fullsize.bar.unmeasured', { length })}</span>
    </p>
  );
}
