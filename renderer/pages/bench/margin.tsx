import { useEffect, useState } from 'react';
import { Tab, TabList, TabPanel, Tabs } from 'react-aria-components';
import { useFit } from '../../bench/bench-context.tsx';
import type { BenchTabProps } from '../../bench/bench-tab.ts';
import type { FetchedRevision } from '../../bench/fetched-revision.ts';
import { say } from '../../language/messages.ts';
import { BENCH_TABS } from './bench-tabs.ts';
import { SeatChooser } from './seat-chooser.tsx';
import { BenchTitleBlock } from './title-block.tsx';
import { useMarginTab } from './use-margin-tab.ts';

/** The sheet's right margin: the tabs above; measures; the title block in the corner. */
export function Margin(props: BenchTabProps & { changedSince: boolean; looked: FetchedRevision | null }) {
  const { grown, revisions, changedSince, onSave } = props;
  const fit = useFit((state) => state.fit);
  const [open, setOpen] = useMarginTab();
  const held = useFit(({ gestureName }) => gestureName !== null);
  const drawn = useDrawn();
  const tabs = BENCH_TABS.filter(
    ({ id, isOffered }) => id === open || !isOffered || isOffered({ fit, grown }),
  );
  return (
    <aside className="margin" aria-label={say('bench.margin')} data-held={held || undefined} data-tab={open}>
      <SeatChooser />
      <Tabs className="margin-tabs" selectedKey={open} onSelectionChange={setOpen}>
        <TabList className="tabs" aria-label={say('bench.margin')}>
          {tabs.map(({ id, title, Count }) => (
            <Tab key={id} id={id} className="tab">
              {say(title)}
              {Count && <Count />}
            </Tab>
          ))}
        </TabList>
        {tabs.map(({ id, Panel }) => (
          <TabPanel key={id} id={id} className="tab-scroll">
            {drawn && <Panel {...props} />}
          </TabPanel>
        ))}
      </Tabs>
      <BenchTitleBlock
        fitId={props.fitId}
        revisions={revisions}
        changedSince={changedSince}
        looked={props.looked}
        onSave={onSave}
      />
    </aside>
  );
}

/** False until the bench's first frame has been drawn: the leaf takes as long to make as the whole drawing, which is wanted first. */
function useDrawn(): boolean {
  const [drawn, setDrawn] = useState(false);
  useEffect(() => {
    let frame = requestAnimationFrame(() => {
      frame = requestAnimationFrame(() => setDrawn(true));
    });
    return () => cancelAnimationFrame(frame);
  }, []);
  return drawn;
}
