import { useEffect, useRef, useState } from 'react';
import { Tab, TabList, TabPanel, Tabs } from 'react-aria-components';
import { useStore } from 'zustand';
import { LOCKABLE, type Lockable } from '../../../core/document/seat-schema.ts';
import type { InteractionStore } from '../../drawing/interaction/interaction-state.ts';
import { HANDLES } from '../../drawing/view/handle.ts';
import { say } from '../../language/messages.ts';
import { useDocument, useFit } from '../bench-context.tsx';
import { BoatMeasures } from './boat-measures.tsx';
import { CoordinateTable } from './coordinate-table.tsx';
import { FittingChoices } from './fitting-choices.tsx';
import { LockSwitch } from './lock-switch.tsx';
import './part-card.css';

type Part = Lockable | 'boat';

/**
 * The card of the selected part, at the drawing: entries for its coordinates, with what one centimetre of each does, and under
 * them its choices and its lock. A drag on the drawing selects the part here.
 */
export function PartCard({ interaction }: { interaction: InteractionStore }) {
  const document = useDocument();
  const [part, setPart] = useChosenPart(interaction);
  const card = useRef<HTMLElement>(null);
  useAskedField(interaction, card);
  return (
    <section ref={card} className="part-card" aria-label={say('measures.title')}>
      <Tabs selectedKey={part} onSelectionChange={(key) => setPart(key as Part)}>
        <TabList className="tabs" aria-label={say('measures.title')}>
          {[...LOCKABLE, 'boat' as const].map((name) => (
            <Tab key={name} id={name} className="tab">
              {say(`fitting.${name}`)}
            </Tab>
          ))}
        </TabList>
        {LOCKABLE.map((fitting) => (
          <TabPanel key={fitting} id={fitting} className="card-sheet">
            {/* biome-ignore lint/a11y/noStaticElementInteractions: focus inside lights the fitting on the drawing */}
            <div onFocus={() => document.light(fitting)} onBlur={() => document.light(null)}>
              <CoordinateTable fitting={fitting} />
              <div className="card-foot">
                <div className="card-choices">
                  <FittingChoices fitting={fitting} />
                </div>
                <LockSwitch fitting={fitting} />
              </div>
            </div>
          </TabPanel>
        ))}
        <TabPanel id="boat" className="card-sheet">
          <BoatMeasures />
        </TabPanel>
      </Tabs>
    </section>
  );
}

/** The part that the card speaks of: the one last taken on the drawing, or chosen here since. */
function useChosenPart(interaction: InteractionStore): [part: Part, choose: (part: Part) => void] {
  const chosen = useStore(interaction, (state) => state.chosen);
  const asked = useStore(interaction, (state) => state.fieldAsked);
  const [part, setPart] = useState<Part>(HANDLES[chosen].fitting);
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked for again, a part comes up again
  useEffect(() => setPart(HANDLES[chosen].fitting), [chosen, asked]);
  const held = useFit(({ gestureName, lit }) => (gestureName === null ? null : lit));
  useEffect(() => {
    const fitting = LOCKABLE.find((name) => name === held);
    if (fitting) setPart(fitting);
  }, [held]);
  return [part, setPart];
}

/** A double-click on the drawing asks for the part's first field. */
function useAskedField(interaction: InteractionStore, card: React.RefObject<HTMLElement | null>): void {
  const asked = useStore(interaction, (state) => state.fieldAsked);
  useEffect(() => {
    if (asked === 0) return;
    // The part's own fields are there once the page is drawn for it.
    const frame = requestAnimationFrame(() =>
      card.current?.querySelector<HTMLInputElement>('.card-table input')?.focus(),
    );
    return () => cancelAnimationFrame(frame);
  }, [asked, card]);
}
