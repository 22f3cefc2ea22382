import { useRef } from 'react';
import type { Finding } from '../../../../core/evaluation/finding.ts';
import { useFormat } from '../../../display/use-display.ts';
import { say } from '../../../language/messages.ts';
import { notAfloatSentence } from '../../../language/sentences.ts';
import { SeverityMark } from '../../../ui/severity-mark.tsx';
import { useFit } from '../../bench-context.tsx';
import { BenchProposal } from '../../proposal/bench-proposal.tsx';
import { Note } from './note.tsx';
import { useNotePlaces } from './use-note-places.ts';
import { WorthALook } from './worth-a-look.tsx';
import './findings.css';

/** Whether a finding belongs to what is looked at: this seat, or the boat. */
const concerns = (seat: number) => (finding: Finding) => finding.seat === seat || finding.seat === null;

/** Margin notes: what wants doing first, then what is in its band, each with a line to its part. */
export function Notes() {
  const seat = useFit((state) => state.seat);
  const findings = useFit(({ report }) => report.findings).filter(concerns(seat));
  const afloat = useFit(({ report }) => report.afloat.ready);
  const nobody = useFit(({ fit }) => !fit.seats[seat]?.athlete);
  const format = useFormat();
  const list = useRef<HTMLDivElement>(null);
  useNotePlaces(
    list,
    useFit(({ report }) => report),
  );
  const toDo = findings.filter(({ severity }) => severity !== 'good');
  const good = findings.filter(({ severity }) => severity === 'good');
  return (
    <div className="notes" ref={list}>
      {nobody && <p className="soft">{say('notes.empty-seat')}</p>}
      {afloat.kind !== 'afloat' && (
        <div className="note" data-severity="stop">
          <SeverityMark />
          <span className="note-word">{say('severity.stop')}</span>
          <h3 className="note-title">{say('notes.no-float')}</h3>
          <p className="note-sentence">{notAfloatSentence(afloat, format.value)}</p>
        </div>
      )}
      {!nobody && <BenchProposal />}
      <h2 className="only-spoken">{say('notes.to-do')}</h2>
      {toDo.length === 0 && !nobody ? (
        <p className="soft">{say('notes.nothing')}</p>
      ) : (
        <ul>
          {toDo.map((finding) => (
            <Note key={finding.id} finding={finding} />
          ))}
        </ul>
      )}
      <WorthALook seat={seat} />
      {good.length > 0 && (
        <>
          <h2 className="lettering notes-good">{say('notes.good')}</h2>
          <ul>
            {good.map((finding) => (
              <Note key={finding.id} finding={finding} />
            ))}
          </ul>
        </>
      )}
    </div>
  );
}
