import { useCallback, useRef, useState } from 'react';
import type { OpenedFit, RevisionSummary } from '../../../app/contract/records.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { createEvaluator } from '../../../core/evaluation/evaluator.ts';
import { announce } from '../../announce/announce.ts';
import { type Bench, BenchProvider, useFit } from '../../bench/bench-context.tsx';
import { PartCard } from '../../bench/card/part-card.tsx';
import type { FetchedRevision } from '../../bench/fetched-revision.ts';
import { GrowthBanner } from '../../bench/tabs/growth/growth-banner.tsx';
import { useFitTrials } from '../../bench/use-fit-trials.ts';
import { useGrown } from '../../bench/use-grown.ts';
import { draftsSettled } from '../../document/keep-draft.ts';
import { BenchDrawing } from '../../drawing/bench-drawing.tsx';
import { createInteractionStore } from '../../drawing/interaction/interaction-state.ts';
import { say } from '../../language/messages.ts';
import { useOpenInLibrary } from '../../library/library-store.ts';
import { Announcer } from './announcer.tsx';
import { AutosaveError } from './autosave-error.tsx';
import { BenchDivider } from './bench-divider.tsx';
import { BenchTools } from './bench-tools.tsx';
import { ComparedOutline } from './compared-outline.tsx';
import { DrawingMenu } from './drawing-menu.tsx';
import { DuplicateRefused } from './duplicate-refused.tsx';
import { LookBanner } from './look-banner.tsx';
import { Margin } from './margin.tsx';
import { SaveRevision } from './save-revision.tsx';
import { useBenchActions } from './use-bench-actions.ts';
import { useLook, useOpenedBench } from './use-opened-bench.ts';
import './bench.css';

/** A fit on the bench, with the revision that is looked at in its place for a while, if any. */
export function OpenBench({ opened, onReload }: { opened: OpenedFit; onReload: () => void }) {
  const [evaluator] = useState(createEvaluator);
  const bench = useOpenedBench(opened, evaluator);
  const [looked, setLooked] = useState<FetchedRevision | null>(null);
  const look = useLook(looked?.fit ?? null, evaluator);
  if (!bench) return <main className="bench" id="content" tabIndex={-1} />;

  function putBack({ revision, fit }: FetchedRevision): void {
    bench?.document.apply(say('step.to-revision', { number: revision.number }), () => fit);
    setLooked(null);
  }

  return (
    <BenchProvider value={bench}>
      <main className="bench" id="content" tabIndex={-1}>
        <AutosaveError onReload={onReload} />
        <DuplicateRefused />
        {looked && <LookBanner looked={looked} onPutBack={putBack} onEnd={() => setLooked(null)} />}
        <BenchSheet
          opened={opened}
          shown={looked && look ? look : bench}
          looked={looked}
          onLook={setLooked}
        />
        <Announcer />
      </main>
    </BenchProvider>
  );
}

function BenchSheet(props: {
  opened: OpenedFit;
  shown: Bench;
  looked: FetchedRevision | null;
  onLook: (revision: FetchedRevision) => void;
}) {
  const { opened, shown } = props;
  const looking = props.looked !== null;
  const [revisions, setRevisions] = useState<readonly RevisionSummary[]>(opened.revisions);
  const [newest, setNewest] = useState<Fit | null>(opened.draftSavedAt === null ? opened.fit : null);
  const sheet = useRef<HTMLDivElement>(null);
  const trials = useFitTrials(opened.id);
  const grown = useGrown();
  useBenchActions(opened.id);
  useOpenInLibrary(opened.id, draftsSettled);
  const [compared, setCompared] = useState<FetchedRevision | null>(null);
  const [saving, setSaving] = useState(false);
  const openSaving = useCallback(() => setSaving(!looking), [looking]);
  const changedSince = useFit(({ fit }) => fit !== newest);

  function saved(revision: RevisionSummary, fit: Fit): void {
    setRevisions((before) => [revision, ...before]);
    setNewest(fit);
    const { number, name } = revision;
    announce(say('revisions.saved', { number, name }));
  }

  return (
    <>
      {!looking && <GrowthBanner fitId={opened.id} grown={grown} />}
      <BenchTools onSave={openSaving} />
      <SaveRevision
        isOpen={saving}
        trials={trials.all}
        revisions={revisions}
        onClose={() => setSaving(false)}
        onSaved={saved}
      />
      <BenchProvider value={shown}>
        <div className="bench-sheet" ref={sheet}>
          <DrawingWithCard shown={shown} looking={looking} />
          <BenchDivider sheet={sheet} />
          <Margin
            fitId={opened.id}
            trials={trials}
            grown={grown}
            revisions={revisions}
            changedSince={changedSince}
            compared={compared}
            looked={props.looked}
            onCompare={setCompared}
            onLook={props.onLook}
            onSave={looking ? null : openSaving}
          />
        </div>
        {compared && <ComparedOutline older={compared.fit} />}
      </BenchProvider>
    </>
  );
}

/** The drawing with the card of the part in hand; while an earlier revision is looked at, nothing of it can be taken. */
function DrawingWithCard({ shown, looking }: { shown: Bench; looking: boolean }) {
  const [interaction] = useState(createInteractionStore);
  return (
    <div className="bench-drawing" inert={looking}>
      <BenchDrawing document={shown.document} view={shown.view} interaction={interaction} />
      <PartCard interaction={interaction} />
      {!looking && <DrawingMenu interaction={interaction} />}
    </div>
  );
}
