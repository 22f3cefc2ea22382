import { useRef } from 'react';
import type { Finding } from '../../../../core/evaluation/finding.ts';
import { useFormat } from '../../../display/use-display.ts';
import { say } from '../../../language/messages.ts';
import { notAfloatSentence } from '../../../language/sentences.ts';
import { SeverityMark } from '../../../ui/severity-mark.tsx';
import { useFit } from '../../bench-context.tsx';
import { BenchProposal } from '../../proposal/bench-proposal.tsx';
import { type FindingGroups, findingGroups } from './finding-groups.ts';
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
  const [first, ...others] = nobody ? [] : groupsOf({ act, check });
  return (
    <div className="notes" ref={list}>
      {nobody && <p className="soft">{say('drawing.nobody')}</p>}
      <NotAfloat />
      {!nobody && (
        <div className="notes-top">
          {first ? <GroupTitle {...first} /> : <p className="soft notes-live">{say('notes.nothing')}</p>}
          <BenchProposal />
        </div>
      )}
      {first && <NoteList findings={first.findings} />}
      {(nobody ? groupsOf({ act, check }) : others).map((group) => (
        <Group key={group.title} {...group} />
      ))}
      <WorthALook seat={seat} />
      <Group title={say('notes.good')} findings={good} />
    </div>
  );
}

interface NoteGroup {
  readonly title: string;
  readonly findings: readonly Finding[];
}

/** The groups that ask for something, without those that are empty. */
function groupsOf({ act, check }: Pick<FindingGroups, 'act' | 'check'>): NoteGroup[] {
  const groups = [
    { title: say('notes.to-act'), findings: act },
    { title: say('notes.to-check'), findings: check },
  ];
  return groups.filter(({ findings }) => findings.length > 0);
}

function Group(group: NoteGroup) {
  if (group.findings.length === 0) return null;
  return (
    <>
      <GroupTitle {...group} />
      <NoteList findings={group.findings} />
    </>
  );
}

function GroupTitle({ title, findings }: NoteGroup) {
  return (
    <h2 className="lettering notes-group">
      <span className="notes-live">
        {title} <span className="group-count">{findings.length}</span>
      </span>
    </h2>
  );
}

function NoteList({ findings }: Pick<NoteGroup, 'findings'>) {
  return (
    <ul>
      {findings.map((finding) => (
        <Note key={finding.id} finding={finding} />
      ))}
    </ul>
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
