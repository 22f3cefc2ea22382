import { Tab, TabList, TabPanel, Tabs } from 'react-aria-components';
import type { RevisionSummary } from '../../../app/contract/records.ts';
import { say } from '../../language/messages.ts';
import { CrewLeaf } from '../crew/crew-leaf.tsx';
import { GrowthLeaf } from '../growth/growth-leaf.tsx';
import type { Grown } from '../growth/use-grown.ts';
import { PaddleLeaf } from '../paddle/paddle-leaf.tsx';
import { StrokeLeaf } from '../stroke/stroke-leaf.tsx';
import { TrialsLeaf } from '../trial/trials-leaf.tsx';
import type { FitTrials } from '../trial/use-fit-trials.ts';
import { useFit } from './bench-context.tsx';
import { Measures } from './measures.tsx';
import { Notes } from './notes.tsx';
import { type FetchedRevision, Revisions } from './revisions.tsx';
import { SeatChooser } from './seat-chooser.tsx';
import { TitleBlock } from './title-block.tsx';
import { useMarginLeaf } from './use-margin-leaf.ts';
import { Values } from './values.tsx';

/** The sheet's right margin: notes, values or revisions above; measures; the title block in the corner. */
export function Margin(props: {
  fitId: string;
  trials: FitTrials;
  grown: readonly Grown[];
  revisions: readonly RevisionSummary[];
  changedSince: boolean;
  compared: FetchedRevision | null;
  looking: boolean;
  onCompare: (revision: FetchedRevision | null) => void;
  onLook: (revision: FetchedRevision) => void;
  onSave: () => void;
}) {
  const toDo = useFit(
    ({ report, seat }) =>
      report.findings.filter((f) => f.severity !== 'good' && (f.seat === null || f.seat === seat)).length,
  );
  const isCrew = useFit(({ fit }) => fit.seats.length > 1);
  const [leaf, setLeaf] = useMarginLeaf();
  const held = useFit(({ gestureName }) => gestureName !== null);
  return (
    <aside className="margin" aria-label={say('bench.margin')} data-held={held || undefined} data-leaf={leaf}>
      <SeatChooser />
      <Tabs className="margin-leaves" selectedKey={leaf} onSelectionChange={setLeaf}>
        <TabList className="tabs" aria-label={say('bench.margin')}>
          <Tab id="notes" className="tab">
            {say('notes.title')}
            {toDo > 0 && <span className="count">{toDo}</span>}
          </Tab>
          <Tab id="values" className="tab">
            {say('values.title')}
          </Tab>
          <Tab id="paddle" className="tab">
            {say('paddle.title')}
          </Tab>
          <Tab id="stroke" className="tab">
            {say('stroke.title')}
          </Tab>
          {isCrew && (
            <Tab id="crew" className="tab">
              {say('crew.title')}
            </Tab>
          )}
          {(props.grown.length > 0 || leaf === 'growth') && (
            <Tab id="growth" className="tab">
              {say('growth.title')}
            </Tab>
          )}
          <Tab id="trials" className="tab">
            {say('trials.title')}
          </Tab>
          <Tab id="revisions" className="tab">
            {say('revisions.title')}
          </Tab>
        </TabList>
        <TabPanel id="notes" className="leaf-scroll">
          <Notes />
        </TabPanel>
        <TabPanel id="values" className="leaf-scroll">
          <Values />
        </TabPanel>
        <TabPanel id="paddle" className="leaf-scroll">
          <PaddleLeaf />
        </TabPanel>
        <TabPanel id="stroke" className="leaf-scroll">
          <StrokeLeaf />
        </TabPanel>
        {isCrew && (
          <TabPanel id="crew" className="leaf-scroll">
            <CrewLeaf />
          </TabPanel>
        )}
        {(props.grown.length > 0 || leaf === 'growth') && (
          <TabPanel id="growth" className="leaf-scroll">
            <GrowthLeaf grown={props.grown} />
          </TabPanel>
        )}
        <TabPanel id="trials" className="leaf-scroll">
          <TrialsLeaf fitId={props.fitId} trials={props.trials} revisions={props.revisions} />
        </TabPanel>
        <TabPanel id="revisions" className="leaf-scroll">
          <Revisions {...props} />
        </TabPanel>
      </Tabs>
      <div inert={props.looking}>
        <Measures />
      </div>
      <TitleBlock revisions={props.revisions} changedSince={props.changedSince} onSave={props.onSave} />
    </aside>
  );
}
