import { useEffect, useRef } from 'react';
import type { Fit } from '../../../../core/document/fit-schema.ts';
import type { Report } from '../../../../core/evaluation/report.ts';
import { onLiveFrame } from '../../../document/live-frame.ts';
import { writeText } from '../../../document/write-text.ts';
import { useDocument, useFit } from '../../bench-context.tsx';

/**
 * A text made from the fit and its report that follows the hand: during a gesture only this text node changes, and
 * React hears nothing. `write` must give the same text for the same fit and report.
 */
export function LiveText({
  write,
  className,
}: {
  write: (fit: Fit, report: Report) => string;
  className?: string;
}) {
  const document = useDocument();
  const text = useFit(({ fit, report }) => write(fit, report));
  const span = useRef<HTMLSpanElement>(null);
  const latest = useRef(write);
  latest.current = write;
  useEffect(
    () =>
      onLiveFrame(document, (fit, report) => {
        const now = latest.current(fit, report);
        if (span.current) writeText(span.current, now);
      }),
    [document],
  );
  return (
    <span ref={span} className={className}>
      {text}
    </span>
  );
}
