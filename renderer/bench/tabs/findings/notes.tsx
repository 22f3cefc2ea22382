import { useRef } from 'react';
import type { Finding } from '../../../../core/evaluation/finding.ts';
import { useFormat } from '../../../display/use-display.ts';
import { say } from '../../../language/messages.ts';
import { notAfloatSentence } from '../../../language/sentences.ts';
import { SeverityMark } from '../../../ui/severity-mark.tsx';
import { useFit } from '../../bench-context.tsx';
import { BenchProposal } from '../../proposal/bench-proposal.tsx';
import { findingGroups } from './finding-groups.ts';
import { Note } from './note.tsx';
import { useNotePlaces } from './use-note-places.ts';
import { WorthALook } from './worth-a-look.tsx';
import './findings.css';

/** The findings of this seat and of the boat: what to act on, what to check, what a look would tell, what is in its band. */
export function Notes() {
  const seat = useFit((state) => state.seat);
  const report = useFit((state) => state.report);
  const nobody = useFit(({ fit }) => !fit.seats[seat]?.athlete);
  const list = useRef<HTMLDivElement>(null);
  useNotePlaces(list, report);
  const { act, check, good } = findingGroups(report.findings, seat);
  return (
    <div className="notes" ref={list}>
      {nobody && <p className="soft">{say('drawing.nobody')}</p>}
      <NotAfloat />
      {!nobody && <BenchProposal />}
      {act.length === 0 && !nobody && (
        <p className="soft">{say(check.length === 0 ? 'notes.nothing' : 'notes.nothing-to-act')}</p>
      )}
      <Group title={say('notes.to-act')} findings={act} />
      <Group title={say('notes.to-check')} findings={check} />
      <WorthALook seat={seat} />
      <Group title={say('notes.good')} findings={good} />
    </div>
  );
}

function Group({ title, findings }: { title: string; findings: readonly Finding[] }) {
  if (findings.length === 0) return null;
  return (
    <>
      <h2 className="lettering notes-group">
        {title} <span className="count">{findings.length}</span>
      </h2>
      <ul>
        {findings.map((finding) => (
          <Note key={finding.id} finding={finding} />
        ))}
      </ul>
    </>
  );
}

/** A boat that does not float comes before every finding. */
function NotAfloat() {
  const format = useFormat();
  const afloat = useFit(({ report }) => report.afloat.ready);
  if (afloat.kind === 'afloat') return null;
  return (
    <div className="note" data-severity="stop">
      <SeverityMark />
      <span className="note-word">{say('severity.stop')}</span>
      <h3 className="note-title">{say('drawing.strip.not-afloat')}</h3>
      <p className="note-sentence">{notAfloatSentence(afloat, format.value)}</p>
    </div>
  );
}
