import { useState } from 'react';
import type { Boat } from '../../../core/document/boat-schema.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import type { MarkedPlan } from '../../../core/drilling/marked-plan.ts';
import type { BoardPlan } from '../../../core/setout/board-plan.ts';
import { usePaperExport } from '../../client/use-paper-export.ts';
import { useDisplay } from '../../display/use-display.ts';
import { say, words } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { LanguageChoice } from '../../ui/fields/language-choice.tsx';
import { WorkLine } from '../../ui/work-line.tsx';

/** The plan as papers take it. */
function onPaper({ holes, paddlers, unused }: MarkedPlan, diameterM: number): BoardPlan {
  return {
    holes: holes.map(({ number, x, y, drilled, letters }) => ({
      number,
      xM: x,
      yM: y,
      diameterM,
      drilled,
      letters: [...letters],
    })),
    people: paddlers.map(({ letter, name, holes: { kneePad, rearRest }, onRails }) => ({
      letter,
      name,
      pad: [...kneePad],
      rest: [...rearRest],
      ...(onRails.kneePad === null ? {} : { padRailsXM: onRails.kneePad }),
      ...(onRails.rearRest === null ? {} : { restRailsXM: onRails.rearRest }),
    })),
    unused: [...unused],
  };
}

/** Buttons for the floorboard at full size and the change-over card. `fit` is one of the plan's, in the boat as it is now. */
export function BoardPlanFiles(props: { fit: Fit; boat: Boat; marked: MarkedPlan; diameterM: number }) {
  const { fit, boat, marked, diameterM } = props;
  const { busy, told, refusal, make } = usePaperExport();
  const [language, setLanguage] = useState(words().language);
  const paper = useDisplay().length === 'in' ? 'Letter' : 'A4';
  const file = (what: 'floorboard' | 'card', format: 'pdf' | 'svg' | 'dxf') =>
    void make({
      language,
      fit: { ...fit, boat },
      revision: { number: null, keptAt: new Date().toISOString() },
      wanted: { kind: 'board-plan', seat: 0, what, format, paper, plan: onPaper(marked, diameterM) },
    });
  return (
    <>
      <div className="row">
        <LanguageChoice value={language} onChange={setLanguage} />
        <Button disabled={busy} onClick={() => file('card', 'pdf')}>
          {say('board.card')}
        </Button>
        {(['pdf', 'svg', 'dxf'] as const).map((format) => (
          <Button key={format} disabled={busy} onClick={() => file('floorboard', format)}>
            {say('board.full-size', { format: format.toUpperCase() })}
          </Button>
        ))}
      </div>
      <WorkLine active={busy} />
      <p role="status">{told}</p>
      {refusal && <ErrorMessage error={refusal} />}
    </>
  );
}
