import type { FitSummary } from '../../../app/contract/records.ts';
import type { CallResult } from '../../../app/contract/result.ts';
import { call } from '../../client/client.ts';
import { instantText } from '../../language/dates.ts';
import { Explained } from '../../language/explained.tsx';
import { say, sayCount, words } from '../../language/messages.ts';
import { hrefOf } from '../../route/route.ts';
import { Page } from '../../ui/page.tsx';
import { RosterList } from '../../ui/roster-list.tsx';
import { StoreNotices } from '../../ui/store-notices.tsx';
import { duplicateFit } from '../new-fit/duplicate-fit.ts';

function keptText({ revisions, hasDraft }: FitSummary): string {
  if (revisions === 0) return say('fits.no-revision');
  const count = sayCount('fits.revisions', revisions);
  return hasDraft ? say('fits.draft-after', { revisions: count }) : count;
}

/** Makes a second fit like the stored one as it stands now. */
async function duplicateStored(id: string): Promise<CallResult<unknown>> {
  const opened = await call('fits.open', { id });
  return opened.ok ? duplicateFit(opened.value.fit) : opened;
}

/** Straight to paper, and to showing the athlete. */
function FitWays({ fit: { id, name } }: { fit: FitSummary }) {
  return (
    <span className="row fit-links">
      <a href={hrefOf({ page: 'set-out', id })} aria-label={say('setout.title', { name })}>
        {say('setout.page')}
      </a>
      <a href={hrefOf({ page: 'show', id })} aria-label={say('show.page.of', { name })}>
        {say('show.page')}
      </a>
      <a href={hrefOf({ page: 'trial', id })} aria-label={say('trial.page.of', { name })}>
        {say('trial.page')}
      </a>
    </span>
  );
}

/** Every fit, last changed first. */
export function FitsPage() {
  return (
    <Page
      title={say('archive.counts.fits')}
      wide
      tools={
        <a className="button chief" href={hrefOf({ page: 'new-fit' })}>
          {say('fits.new')}
        </a>
      }
    >
      <StoreNotices />
      <RosterList<FitSummary>
        duplicate={duplicateStored}
        of="fits"
        nameTitle={say('term.fit')}
        nameOf={({ name }) => name}
        hrefOf={({ id }) => hrefOf({ page: 'fit', id })}
        columns={[
          {
            title: say('archive.counts.athletes'),
            cell: (fit) => words().row(fit.athleteNames) || say('fits.no-athlete'),
          },
          { title: say('fitting.boat'), cell: (fit) => fit.boatName },
          { title: say('fits.kept'), cell: keptText, className: 'whole' },
          { title: say('fits.use'), cell: (fit) => <FitWays fit={fit} /> },
          { title: say('list.changed'), cell: (fit) => instantText(fit.changedAt), className: 'whole' },
        ]}
        empty={
          <div className="stack">
            <p>
              <Explained text={say('fits.empty')} />
            </p>
          </div>
        }
      />
    </Page>
  );
}
