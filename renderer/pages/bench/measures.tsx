import { useEffect, useState } from 'react';
import { Tab, TabList, TabPanel, Tabs } from 'react-aria-components';
import { coordinatesOfFitting } from '../../../core/document/coordinates.ts';
import { LOCKABLE, type Lockable } from '../../../core/document/seat-schema.ts';
import { useDocument, useFit } from '../../bench/bench-context.tsx';
import { say } from '../../language/messages.ts';
import { BoatMeasures } from './boat-measures.tsx';
import { FittingChoices } from './fitting-choices.tsx';
import { LockSwitch } from './lock-switch.tsx';
import { MeasureRow } from './measure-row.tsx';

type Sheet = Lockable | 'boat';

/** The same values as numbers, fitting by fitting. What the hand takes hold of on the drawing comes up here. */
export function Measures() {
  const document = useDocument();
  const held = useFit(({ gestureName, lit }) => (gestureName === null ? null : lit));
  const [sheet, setSheet] = useState<Sheet>('kneePad');
  useEffect(() => {
    const fitting = LOCKABLE.find((name) => name === held);
    if (fitting) setSheet(fitting);
  }, [held]);
  return (
    <section className="measures" aria-label={say('measures.title')}>
      <Tabs selectedKey={sheet} onSelectionChange={(key) => setSheet(key as Sheet)}>
        <TabList className="tabs" aria-label={say('measures.title')}>
          {[...LOCKABLE, 'boat' as const].map((name) => (
            <Tab key={name} id={name} className="tab">
              {say(`fitting.${name}`)}
            </Tab>
          ))}
        </TabList>
        {LOCKABLE.map((fitting) => (
          <TabPanel key={fitting} id={fitting} className="measure-sheet" shouldForceMount={false}>
            {/* biome-ignore lint/a11y/noStaticElementInteractions: focus inside lights the fitting on the drawing */}
            <div onFocus={() => document.light(fitting)} onBlur={() => document.light(null)}>
              {coordinatesOfFitting(fitting).map((coordinate) => (
                <MeasureRow key={coordinate} coordinate={coordinate} />
              ))}
              <div className="measure-foot">
                <FittingChoices fitting={fitting} />
                <LockSwitch fitting={fitting} />
              </div>
            </div>
          </TabPanel>
        ))}
        <TabPanel id="boat" className="measure-sheet">
          <BoatMeasures />
        </TabPanel>
      </Tabs>
    </section>
  );
}
