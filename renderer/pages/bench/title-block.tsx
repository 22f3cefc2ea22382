import type { RevisionSummary } from '../../../app/contract/records.ts';
import { useFit } from '../../bench/bench-context.tsx';
import type { FetchedRevision } from '../../bench/fetched-revision.ts';
import { say, words } from '../../language/messages.ts';
import { Name } from '../../language/name.tsx';
import { revisionName, revisionNumber } from '../../language/revision-number.ts';
import { Button } from '../../ui/button.tsx';
import { usePageTitle } from '../../ui/use-page-title.ts';
import { LibraryLine } from './library-line.tsx';
import { SavedState } from './saved-state.tsx';

function revisionText(newest: RevisionSummary | undefined, changedSince: boolean): string {
  if (!newest) return say('block.revision.none');
  const name = revisionName(newest);
  const number = revisionNumber(newest);
  return say(changedSince ? 'block.revision.since' : 'block.revision.named', { number, name });
}

/** The title block in the sheet's lower right corner: what this is a drawing of, which revision, and that it is kept. */
export function BenchTitleBlock(props: {
  fitId: string;
  revisions: readonly RevisionSummary[];
  changedSince: boolean;
  /** The earlier revision that is looked at; null while the fit itself is worked on. */
  looked: FetchedRevision | null;
  /** Null while nothing can be saved. */
  onSave: (() => void) | null;
}) {
  const { looked } = props;
  const name = useFit(({ fit }) => fit.name);
  usePageTitle(name);
  const boat = useFit(({ fit }) => fit.boat);
  const athletes = useFit(({ fit }) => words().row(fit.seats.flatMap(({ athlete }) => athlete?.name ?? [])));
  // The name mostly says who and which boat, the chooser of seats who is in a crew; what they say is not said twice.
  const saidElsewhere = useFit(
    ({ fit: { seats, name } }) =>
      seats.length > 1 || seats.every(({ athlete }) => !athlete || name.includes(athlete.name)),
  );
  const unsaid = [
    ...(athletes && saidElsewhere ? [] : [athletes || say('fits.no-athlete')]),
    ...(name.includes(boat.name) ? [] : [boat.name]),
    ...(boat.boatClass === 'none' ? [] : [boat.boatClass]),
  ];
  return (
    <section className="title-block" aria-label={say('block.title')}>
      <h1 title={name}>
        <Name text={name} />
      </h1>
      <Button
        look="words"
        className="title-save"
        disabled={!props.onSave}
        onClick={props.onSave ?? undefined}
      >
        {say('revisions.save')}
      </Button>
      <p className="title-about">
        {unsaid.length > 0 && <span>{words().beside(unsaid)}</span>}
        <span className="title-revision" data-looking={looked ? true : undefined}>
          {looked
            ? say('block.revision.looking', {
                number: revisionNumber(looked.revision),
                name: revisionName(looked.revision),
              })
            : revisionText(props.revisions[0], props.changedSince)}
        </span>
      </p>
      <SavedState />
      <LibraryLine fitId={props.fitId} />
    </section>
  );
}
