import { useMemo, useState } from 'react';
import type { OpenedFit } from '../../../app/contract/records.ts';
import { evaluateFit } from '../../../core/evaluation/evaluator.ts';
import type { Report } from '../../../core/evaluation/report.ts';
import { nameInSeat } from '../../bench/crew-names.ts';
import { CrewBands, PLACES, POSTURES } from '../../bench/tabs/crew/crew-bands.tsx';
import { CrewContributions } from '../../bench/tabs/crew/crew-contributions.tsx';
import { useCall } from '../../client/use-call.ts';
import { useFormat } from '../../display/use-display.ts';
import { instantText } from '../../language/dates.ts';
import { Explained } from '../../language/explained.tsx';
import { say, words } from '../../language/messages.ts';
import { Name } from '../../language/name.tsx';
import { revisionNumber } from '../../language/revision-number.ts';
import { balanceSentence, bandText, findingTitle } from '../../language/sentences.ts';
import { inShownWords, ShownWordsProvider } from '../../language/shown-words.tsx';
import { useTranslator } from '../../language/use-translator.ts';
import { hrefOf } from '../../route/route.ts';
import { Button } from '../../ui/button.tsx';
import { CautionList } from '../../ui/caution-list.tsx';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { LanguageChoice } from '../../ui/fields/language-choice.tsx';
import { Page } from '../../ui/page.tsx';
import { SeverityMark } from '../../ui/severity-mark.tsx';
import { CrewFigure } from './crew-figure.tsx';
import { CrewSettings } from './crew-settings.tsx';
import './crew-sheet.css';

/**
 * A crew on one sheet, to look at and to print: the whole boat, every seat's setting, trim, and who brings what. It may be in
 * another language than the page.
 */
export function CrewSheetPage({ fitId }: { fitId: string }) {
  const opened = useCall('fits.open', { id: fitId });
  const [language, setLanguage] = useState(words().language);
  const shown = useTranslator(language);
  return (
    <Page
      title={opened.value?.fit.name ?? say('crew.sheet.title')}
      wide
      tools={
        <>
          <LanguageChoice value={language} onChange={setLanguage} />
          <a className="button" href={hrefOf({ page: 'fit', id: fitId })}>
            {say('trial.leave')}
          </a>
          <Button onClick={() => window.print()}>{say('hull.print')}</Button>
        </>
      }
    >
      {opened.error && <ErrorMessage error={opened.error} onRetry={opened.reload} />}
      {!opened.value && !opened.error && <p className="soft">{say('sheet.loading')}</p>}
      {opened.value && (
        <ShownWordsProvider value={shown}>
          <div className="crew-sheet" lang={shown.language} key={shown.language}>
            <CrewSheet opened={opened.value} />
          </div>
        </ShownWordsProvider>
      )}
    </Page>
  );
}

const CrewSheet = inShownWords(({ opened }: { opened: OpenedFit }) => {
  const { fit } = opened;
  const report = useMemo(() => evaluateFit(fit), [fit]);
  return (
    <>
      <p className="crew-sheet-of">
        <span>
          <Name
            text={words().beside([fit.boat.name, ...fit.seats.map((_, seat) => nameInSeat(fit, seat))])}
          />
        </span>
        <span className="soft">{stateText(opened)}</span>
      </p>
      <CrewFigure fit={fit} report={report} />
      <section>
        <h2>{say('crew.sheet.settings')}</h2>
        <p className="soft">{say('crew.sheet.settings.about')}</p>
        <CrewSettings fit={fit} />
      </section>
      <section>
        <h2>{say('crew.sheet.afloat')}</h2>
        <Afloat report={report} />
      </section>
      <section>
        <h2>{say('crew.brings')}</h2>
        <CrewContributions fit={fit} report={report} />
      </section>
      <section>
        <h2>
          <Explained text={say('crew.bands')} />
        </h2>
        <CrewBands report={report} ids={[...PLACES, ...POSTURES]} sure />
      </section>
      <section className="crew-cautions">
        <CautionList />
      </section>
    </>
  );
});

/** Which state of the fit this is. */
function stateText({ revisions, draftSavedAt }: OpenedFit): string {
  const newest = revisions[0];
  if (draftSavedAt !== null) return say('crew.sheet.draft', { when: instantText(draftSavedAt) });
  if (!newest) return '';
  return say('crew.sheet.revision', {
    number: revisionNumber(newest),
    name: newest.name,
    when: instantText(newest.savedAt),
  });
}

/** Trim and balance of the whole boat, with their bands; and what the crew must hold. */
const Afloat = inShownWords(({ report }: { report: Report }) => {
  const format = useFormat();
  const ofBoat = report.findings.filter(({ seat }) => seat === null);
  return (
    <>
      <ul className="crew-afloat">
        {ofBoat.map((finding) => {
          const write = format.quantity(finding.quantity);
          const band = bandText(finding.band, finding.unit, write);
          return (
            <li key={finding.id} data-severity={finding.severity}>
              <SeverityMark />
              <span>
                {findingTitle(finding, write)}
                <span className="only-spoken"> {say(`severity.${finding.severity}`)}</span>
                {band && <span className="soft"> {say('notes.band', { band })}</span>}
              </span>
            </li>
          );
        })}
      </ul>
      <p>
        {report.balance ? balanceSentence(report.balance, format.value) : say('drawing.strip.not-afloat')}
      </p>
    </>
  );
});
