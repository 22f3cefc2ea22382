import { useMemo, useState } from 'react';
import type { OpenedFit } from '../../../app/contract/records.ts';
import type { TrialRecord } from '../../../app/contract/trials.ts';
import { saidIn } from '../../../app/language/spoken.ts';
import type { Translator } from '../../../app/language/translator.ts';
import { type ShowView, showPicture } from '../../../core/show/show-picture.ts';
import { blendScenes } from '../../../core/show/show-scene.ts';
import { showWindow } from '../../../core/show/show-window.ts';
import { usePaperExport } from '../../client/use-paper-export.ts';
import { useDisplay, useFormatIn } from '../../display/use-display.ts';
import type { FitMoment } from '../../document/use-fit-states.ts';
import { say } from '../../language/messages.ts';
import { Name } from '../../language/name.tsx';
import { ShownWordsProvider, useShownWords } from '../../language/shown-words.tsx';
import { useTranslator } from '../../language/use-translator.ts';
import { Button } from '../../ui/button.tsx';
import { ConsentNote } from '../../ui/consent-note.tsx';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';
import { WorkLine } from '../../ui/work-line.tsx';
import { type AfterWater, afterWater, afterWaterLines } from './after-water.ts';
import { BetweenSlider } from './between-slider.tsx';
import { ChooseShown } from './choose-shown.tsx';
import type { ShowChoices } from './show-choices.ts';
import { ShowFigure } from './show-figure.tsx';
import { picturesToPrint, ShownPictures } from './shown-pictures.tsx';
import { StoryWords } from './story-words.tsx';
import { type Shown, useShown } from './use-shown.ts';

const views = ({ say }: Translator): readonly { readonly value: ShowView; readonly name: string }[] => [
  { value: 'side', name: say('athlete-page.side') },
  { value: 'behind', name: say('athlete-page.behind') },
  { value: 'above', name: say('athlete-page.above') },
];

interface ShownSeatProps {
  readonly moments: { readonly now: FitMoment; readonly before: FitMoment | null };
  readonly opened: OpenedFit;
  readonly seats: readonly { readonly index: number; readonly name: string }[];
  readonly choices: ShowChoices;
  /** Trials of the fit, the latest first. */
  readonly trials: readonly TrialRecord[];
  readonly onChange: (change: Partial<ShowChoices>) => void;
  /** Buttons to leave, at the end of the head. */
  readonly children: React.ReactNode;
}

/** One athlete's picture and words, and the page to take home. */
export function ShownSeat(props: ShownSeatProps) {
  const { moments, choices } = props;
  const units = useDisplay().length === 'in' ? 'in' : 'mm';
  const fits = { now: moments.now.fit, before: moments.before?.fit ?? null };
  const words = useTranslator(choices.language);
  const shown = useShown(fits, { seat: choices.seat, format: useFormatIn(words.language), words });
  const said = saidIn(words, () => afterWater(props.trials, props.opened.revisions, choices.seat));
  if (shown === null || typeof shown === 'string') {
    return (
      <header className="show-head">
        <p role="alert">{shown === null ? say('show.nobody') : say('show.broken', { why: shown })}</p>
        <div className="row">
          <ChooseShown {...props} />
          {props.children}
        </div>
      </header>
    );
  }
  return (
    <ShownWordsProvider value={words}>
      <Head {...props} shown={shown} units={units} said={said} />
      <div className="show-body" lang={words.language}>
        <Picture shown={shown} choices={choices} onChange={props.onChange} />
        <StoryWords
          story={shown.story}
          reason={moments.now.reason}
          said={said}
          triedNumber={moments.before?.revision.number ?? null}
        />
      </div>
      <Photographs {...props} />
    </ShownWordsProvider>
  );
}

function Head(props: ShownSeatProps & { shown: Shown; units: 'mm' | 'in'; said: AfterWater | null }) {
  const { moments, choices, shown, units, said } = props;
  const { busy, told, refusal, make } = usePaperExport();
  const words = useShownWords();
  const format = useFormatIn(words.language);
  const { fit, revision, reason } = moments.now;
  const massKg = fit.seats[choices.seat]?.athlete?.massKg;
  const asked = { language: choices.language, fit, revision };
  const takeHome = async () => {
    const athleteId = props.opened.fit.seats[choices.seat]?.athlete?.id;
    await make({
      ...asked,
      wanted: {
        kind: 'take-home',
        seat: choices.seat,
        paper: choices.paper,
        units,
        before: shown.before ? (moments.before?.fit ?? null) : null,
        reason,
        said: { lines: saidIn(words, () => afterWaterLines(said)), open: said?.open ?? false },
        mass: choices.showsMass ? format.massUnit : 'hidden',
        photographs: athleteId ? await picturesToPrint(athleteId, props.opened.id, words) : [],
      },
    });
  };
  const moving = () =>
    make({ ...asked, wanted: { kind: 'moving-picture', seat: choices.seat, view: choices.view } });
  return (
    <header className="show-head">
      <div>
        <h1>
          <Name text={shown.story.athleteName} />
        </h1>
        <p>
          {words.say('athlete-page.kneels', { side: shown.story.kneels })}
          {choices.showsMass && massKg !== undefined && (
            <span className="show-mass">{words.say('athlete-page.mass', { mass: format.mass(massKg) })}</span>
          )}
        </p>
      </div>
      <div className="row">
        <ChooseShown {...props} />
        <Button look="bare" disabled={busy} onClick={() => void takeHome()}>
          {say('show.take-home')}
        </Button>
        <Button look="bare" disabled={busy} onClick={() => void moving()}>
          {say('show.moving')}
        </Button>
        {props.children}
      </div>
      <Told busy={busy} told={told} refusal={refusal} />
      <ConsentNote athletes={[fit.seats[choices.seat]?.athlete]} wanted={['bodyData']} />
    </header>
  );
}

/** What became of a file that was asked for. */
function Told({ busy, told, refusal }: Pick<ReturnType<typeof usePaperExport>, 'busy' | 'told' | 'refusal'>) {
  return (
    <>
      <div className="show-told" role="status">
        <WorkLine active={busy} />
        {told !== '' && <p>{told}</p>}
      </div>
      {refusal && <ErrorMessage error={refusal} />}
    </>
  );
}

function Picture(props: {
  shown: Shown;
  choices: ShowChoices;
  onChange: (change: Partial<ShowChoices>) => void;
}) {
  const { shown, choices } = props;
  const { view } = choices;
  const { now, before, hull, story } = shown;
  const moved = before !== null && story.changes.length > 0;
  const [percent, setPercent] = useState(100);
  const words = useShownWords();
  const window = useMemo(() => showWindow(before ? [now, before] : [now], view), [now, before, view]);
  const ghost = useMemo(
    () => (moved ? showPicture(before, hull, view).person : null),
    [moved, before, hull, view],
  );
  const picture = useMemo(() => {
    const scene = moved ? blendScenes(before, now, percent / 100) : now;
    return showPicture(scene, hull, view);
  }, [moved, before, now, hull, view, percent]);
  return (
    <section className="show-picture">
      <ShowFigure
        picture={picture}
        before={ghost}
        window={window}
        label={words.say(`show.picture.${view}`)}
      />
      <div className="show-controls">
        {moved && <BetweenSlider percent={percent} onMove={setPercent} />}
        <ChoiceField
          label={words.say('show.view')}
          labelHidden
          value={view}
          onChange={(chosen) => props.onChange({ view: chosen })}
          options={views(words)}
        />
      </div>
    </section>
  );
}

/** The athlete's photographs in this fit, where the athlete is one of the club's. */
function Photographs({ opened, choices }: Pick<ShownSeatProps, 'opened' | 'choices'>) {
  const athlete = opened.fit.seats[choices.seat]?.athlete;
  if (!athlete?.id) return null;
  return <ShownPictures athlete={{ ...athlete, id: athlete.id }} fitId={opened.id} />;
}
