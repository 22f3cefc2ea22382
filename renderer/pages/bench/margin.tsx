import { type RefObject, useEffect, useRef, useState } from 'react';
import { type Key, Tab, TabList, TabPanel, Tabs } from 'react-aria-components';
import { useFit } from '../../bench/bench-context.tsx';
import type { BenchTabProps } from '../../bench/bench-tab.ts';
import { say } from '../../language/messages.ts';
import { BENCH_TABS } from './bench-tabs.ts';
import { SeatChooser } from './seat-chooser.tsx';
import { BenchTitleBlock } from './title-block.tsx';
import { useMarginTab } from './use-margin-tab.ts';

/** The sheet's right margin: the tabs above; measures; the title block in the corner. */
export function Margin(props: BenchTabProps & { changedSince: boolean }) {
  const { grown, revisions, changedSince, onSave } = props;
  const fit = useFit((state) => state.fit);
  const [open, setOpen] = useMarginTab();
  const held = useFit(({ gestureName }) => gestureName !== null);
  const drawn = useDrawn();
  const row = useRef<HTMLDivElement>(null);
  useSelectedInView(row, open);
  const tabs = BENCH_TABS.filter(
    ({ id, isOffered }) => id === open || !isOffered || isOffered({ fit, grown }),
  );
  return (
    <aside className="margin" aria-label={say('bench.margin')} data-held={held || undefined} data-tab={open}>
      <SeatChooser />
      <Tabs className="margin-tabs" selectedKey={open} onSelectionChange={setOpen}>
        <TabList ref={row} className="tabs one-row" aria-label={say('bench.margin')}>
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

/** Pixels of a neighbour that are seen beside the selected tab, so that it can be touched next. */
const NEIGHBOUR_PX = 48;

/** Rolls a row of tabs that is longer than its place, so that the selected tab is seen with a part of each neighbour. */
function useSelectedInView(row: RefObject<HTMLDivElement | null>, selected: Key): void {
  useEffect(() => {
    const tab = row.current?.querySelector<HTMLElement>(`[data-key="${selected}"]`);
    if (!row.current || !tab) return;
    const start = tab.offsetLeft - row.current.offsetLeft - NEIGHBOUR_PX;
    const end = start + tab.offsetWidth + 2 * NEIGHBOUR_PX - row.current.clientWidth;
    row.current.scrollLeft = Math.max(end, Math.min(row.current.scrollLeft, start));
  }, [row, selected]);
}

/** False until the bench's first frame has been drawn: the margin takes as long to make as the whole drawing, which is wanted first. */
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
