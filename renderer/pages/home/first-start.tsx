import { lazy, Suspense, useState } from 'react';
import type { CallError } from '../../../app/contract/result.ts';
import { call } from '../../client/client.ts';
import { say } from '../../language/messages.ts';
import { go, hrefOf } from '../../route/route.ts';
import { Button } from '../../ui/button.tsx';
import { CautionList } from '../../ui/caution-list.tsx';
import { ErrorMessage } from '../../ui/error-message.tsx';
import './home.css';

// The words are there first; the figure is computed and follows.
const StartFigure = lazy(() => import('./start-figure.tsx').then((m) => ({ default: m.StartFigure })));

/** The page of an empty store: what the program is, two ways to begin, and the cautions. */
export function FirstStart({ notices }: { notices: readonly string[] }) {
  const [refusal, setRefusal] = useState<CallError | null>(null);
  const [busy, setBusy] = useState(false);

  async function openDemo(): Promise<void> {
    setBusy(true);
    const result = await call('demo.install', {});
    setBusy(false);
    if (result.ok) go({ page: 'fit', id: result.value.fitId });
    else setRefusal(result.error);
  }

  return (
    <main className="sheet-body" id="content" tabIndex={-1}>
      <div className="first-start">
        <div className="start-picture">
          <Suspense>
            <StartFigure />
          </Suspense>
        </div>
        <div className="first-words">
          <h1>{say('sheet.name')}</h1>
          <p className="first-what">{say('start.what')}</p>
          {notices.map((notice) => (
            <p key={notice}>{notice}</p>
          ))}
          <div className="first-choices">
            <div>
              <Button look="chief" onClick={openDemo} disabled={busy}>
                {say('start.demo')}
              </Button>
              <p className="soft">{say('start.demo.about')}</p>
            </div>
            <div>
              <a className="button" href={hrefOf({ page: 'new-fit' })}>
                {say('start.blank')}
              </a>
              <p className="soft">{say('start.blank.about')}</p>
            </div>
          </div>
          {refusal && <ErrorMessage error={refusal} />}
          <h2 className="lettering">{say('start.cautions')}</h2>
          <CautionList />
        </div>
      </div>
    </main>
  );
}
