import { useEffect, useRef } from 'react';
import type { Finding } from '../../../../core/evaluation/finding.ts';
import { isYesOrNo } from '../../../../core/text/sentences.ts';
import { useFormat } from '../../../display/use-display.ts';
import { onLiveFrame } from '../../../document/live-frame.ts';
import { writeText } from '../../../document/write-text.ts';
import { Explained } from '../../../language/explained.tsx';
import { say } from '../../../language/messages.ts';
import { bandText } from '../../../language/sentences.ts';
import { SeverityMark } from '../../../ui/severity-mark.tsx';
import { useDocument, useFit } from '../../bench-context.tsx';
import { NoteChange } from './note-change.tsx';
import { type NoteText, noteText } from './note-text.ts';
import { TrimWorth } from './trim-worth.tsx';

/**
 * One margin note: mark and word, name and number, a sentence, and a change. Its texts change during a drag without React;
 * pointing at it or focusing it lights the part of the drawing it speaks of, and the reverse.
 */
export function Note({ finding }: { finding: Finding }) {
  const document = useDocument();
  const format = useFormat();
  const lit = useFit((state) => state.lit === finding.part);
  const item = useRef<HTMLLIElement>(null);
  const text = noteText(finding, format);
  const { id } = finding;

  useEffect(
    () =>
      onLiveFrame(document, (_, report) => {
        const now = report.findings.find((f) => f.id === id);
        if (now && item.current) showNote(item.current, now.severity, noteText(now, format));
      }),
    [document, id, format],
  );

  // Of a choice (a strap, a braced pad) the sentence is enough: "at least 100 %" would not help.
  const band = isYesOrNo(finding.quantity)
    ? ''
    : bandText(finding.band, finding.unit, format.quantity(finding.quantity));
  const light = () => document.light(finding.part);
  const dim = () => document.light(null);
  return (
    <li
      ref={item}
      className="note"
      data-severity={finding.severity}
      data-finding={id}
      data-part={finding.part}
      data-lit={lit || undefined}
      onPointerEnter={light}
      onPointerLeave={dim}
      onFocus={light}
      onBlur={dim}
    >
      <SeverityMark />
      <span className="note-word" data-text="word">
        {text.word}
      </span>
      <h3 className="note-title" data-text="title">
        {text.title}
      </h3>
      <p className="note-sentence">
        <span data-text="sentence">{text.sentence}</span>
        {band && (
          <span className="note-band">
            {' '}
            <Explained text={say('notes.band', { band })} />
          </span>
        )}
        {isTrim(finding) && finding.severity !== 'good' && <TrimWorth />}
      </p>
      <div className="note-more">{finding.severity !== 'good' && <NoteChange finding={finding} />}</div>
    </li>
  );
}

/** Trim is judged for handling; the tab for resistance computes its cost in speed. */
const isTrim = ({ quantity }: Finding) => quantity === 'trimRest' || quantity === 'trimCatch';

function showNote(item: HTMLElement, severity: string, text: NoteText): void {
  if (item.dataset.severity !== severity) item.dataset.severity = severity;
  for (const place of item.querySelectorAll<HTMLElement>('[data-text]')) {
    writeText(place, text[place.dataset.text as keyof NoteText]);
  }
}
