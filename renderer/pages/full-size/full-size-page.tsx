import { useMemo, useState } from 'react';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { evaluateFit } from '../../../core/evaluation/evaluator.ts';
import { setOutSeat } from '../../../core/setout/set-out.ts';
import type { TemplateDrawing } from '../../../core/setout/template-drawing.ts';
import type { TemplateId } from '../../../core/setout/template-ids.ts';
import { templatesOf } from '../../../core/setout/templates.ts';
import { ASSUMED_PIXELS_PER_MM, scaleOf } from '../../display/screen-scale.ts';
import { useDisplay } from '../../display/use-display.ts';
import { useScreen } from '../../display/use-screen.ts';
import { useOpenedFit } from '../../document/use-fit-states.ts';
import { say, words } from '../../language/messages.ts';
import { hrefOf } from '../../route/route.ts';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';
import { Page } from '../../ui/page.tsx';
import { FullSizeTemplate } from './full-size-template.tsx';
import { MeasureScreen } from './measure-screen.tsx';
import './full-size.css';

/** What is held against the glass: pad and rests. A floorboard is longer than any screen. */
const THINGS: readonly TemplateId[] = ['pad-recess', 'pad-block', 'rear-rest', 'front-wedge', 'front-foot'];

/** Pad and rests at full size on a measured screen, to hold the thing itself against the glass. */
export function FullSizePage({ fitId }: { fitId: string }) {
  const { value, error, reload } = useOpenedFit(fitId);
  return (
    <Page
      title={say('fullsize.title', { name: value?.fit.name ?? '' })}
      wide
      tools={
        <a className="button" href={hrefOf({ page: 'fit', id: fitId })}>
          {say('trial.leave')}
        </a>
      }
    >
      <p className="full-size-no-print">{say('fullsize.no-print')}</p>
      {error && <ErrorMessage error={error} onRetry={reload} />}
      {!value && !error && <p className="soft">{say('sheet.loading')}</p>}
      {value && <FullSize fit={value.fit} />}
    </Page>
  );
}

function FullSize({ fit }: { fit: Fit }) {
  const seats = fit.seats.flatMap(({ athlete }, index) => (athlete ? [{ index, name: athlete.name }] : []));
  const [seat, setSeat] = useState(seats[0]?.index ?? 0);
  const display = useDisplay();
  const screen = useScreen();
  const kept = scaleOf(display, screen);
  const [tried, setTried] = useState<{ screen: string; pixelsPerMm: number } | null>(null);
  const pixelsPerMm = tried?.screen === screen ? tried.pixelsPerMm : (kept ?? ASSUMED_PIXELS_PER_MM);
  const drawings = useDrawings(fit, seat, display.length === 'in' ? 'in' : 'mm');
  const [thing, setThing] = useState<TemplateId>('pad-recess');
  const drawing = drawings?.find(({ id }) => id === thing) ?? drawings?.[0];
  if (!drawing) return <p>{say('show.nobody')}</p>;
  return (
    <div className="full-size">
      <MeasureScreen
        key={screen}
        screen={screen}
        kept={kept}
        pixelsPerMm={pixelsPerMm}
        tried={tried?.screen === screen}
        onTry={(scale) => setTried(scale === null ? null : { screen, pixelsPerMm: scale })}
      />
      <div className="row full-size-choices">
        {seats.length > 1 && (
          <ChoiceField
            label={say('bench.seat')}
            value={String(seat)}
            onChange={(value) => setSeat(Number(value))}
            options={seats.map(({ index, name }) => ({
              value: String(index),
              name: say('bench.seat.of', { number: index + 1, name }),
            }))}
          />
        )}
        <ChoiceField
          label={say('transfer.what')}
          value={drawing.id}
          onChange={setThing}
          options={drawings!.map(({ id, title }) => ({ value: id, name: title }))}
        />
      </div>
      <FullSizeTemplate drawing={drawing} pixelsPerMm={pixelsPerMm} measured={kept !== null} />
    </div>
  );
}

/** What this seat has of the things, as the templates on paper have them; null in an empty seat. */
function useDrawings(fit: Fit, seat: number, units: 'mm' | 'in'): readonly TemplateDrawing[] | null {
  return useMemo(() => {
    const options = { units };
    const out = setOutSeat({ fit, report: evaluateFit(fit), index: seat, options, words: words() });
    return out && templatesOf(out, THINGS);
  }, [fit, seat, units]);
}
