import type { Severity } from '../../core/evaluation/finding.ts';
import { SEVERITIES } from '../../core/evaluation/finding.ts';

/** Outlines in a box of 16: a tick, a broken ring, an open triangle, a filled square, a filled eight-cornered sign with a bar. */
const MARKS: Readonly<Record<Severity, React.ReactNode>> = {
  good: <path d="M2.5 8.5 6.4 12.5 13.5 3.5" fill="none" stroke="currentColor" strokeWidth="2" />,
  unknown: (
    <circle
      cx="8"
      cy="8"
      r="5.6"
      fill="none"
      stroke="currentColor"
      strokeWidth="1.8"
      strokeDasharray="2.4 2"
    />
  ),
  check: (
    <path
      d="M8 2.2 14.6 13.6H1.4Z"
      fill="none"
      stroke="currentColor"
      strokeWidth="1.8"
      strokeLinejoin="miter"
    />
  ),
  change: <path d="M2.5 2.5h11v11h-11Z" fill="currentColor" />,
  stop: (
    <>
      <path d="M5 1h6l4 4v6l-4 4H5L1 11V5Z" fill="currentColor" />
      <path d="M4.5 8h7" stroke="var(--paper)" strokeWidth="2.4" />
    </>
  ),
};

/**
 * The mark of a severity, distinguished by shape. All five are there and the nearest `data-severity` shows one, so that a
 * mark can change during a drag without a render of React. The word stands beside it; a screen reader skips the mark.
 */
export function SeverityMark() {
  return (
    <span className="severity-mark" aria-hidden="true">
      {SEVERITIES.map((severity) => (
        <svg
          key={severity}
          data-mark={severity}
          viewBox="0 0 16 16"
          width="15"
          height="15"
          role="presentation"
        >
          {MARKS[severity]}
        </svg>
      ))}
    </span>
  );
}
