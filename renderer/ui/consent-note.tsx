import type { Athlete, Consent } from '../../core/document/athlete-schema.ts';
import { isMinor, missingConsents } from '../../core/document/consent.ts';
import { useAllAthletes } from '../client/use-record.ts';
import { today } from '../language/dates.ts';
import { say } from '../language/messages.ts';
import { hrefOf } from '../route/route.ts';

/** What is missing, as words: "body data and photographs". */
function missingText(missing: readonly Consent[]): string {
  const names = missing.map((consent) => say(`consent.missing.${consent}`));
  const [first = '', second] = names;
  return second ? say('consent.missing.list', { first, second }) : first;
}

/** A plain note where a minor's guardian has not consented yet; nothing otherwise. */
export function ConsentLine({
  athlete,
  wanted,
}: {
  athlete: Pick<Athlete, 'name' | 'bornOn' | 'consent'>;
  wanted: readonly Consent[];
}) {
  const missing = missingConsents(athlete, wanted, today());
  if (missing.length === 0) return null;
  return <>{say('consent.missing', { name: athlete.name, what: missingText(missing) })}</>;
}

/**
 * The same for those who kneel in a fit, before something of it is shown or printed. Consents stand in the roster only, so
 * that is where they are looked up; an athlete whom the fit's own copy knows to be an adult is not looked up.
 */
export function ConsentNote({
  athletes,
  wanted,
}: {
  athletes: readonly (Athlete | null | undefined)[];
  wanted: readonly Consent[];
}) {
  const minors = athletes.flatMap((one) => (one?.id && isMinor(one, today()) !== false ? [one.id] : []));
  return minors.length > 0 ? <NoteOfMinors ids={minors} wanted={wanted} /> : null;
}

function NoteOfMinors({ ids, wanted }: { ids: readonly string[]; wanted: readonly Consent[] }) {
  const { inUse, aside } = useAllAthletes();
  const lacking = [...inUse, ...aside].filter(
    ({ id, athlete }) => ids.includes(id) && missingConsents(athlete, wanted, today()).length > 0,
  );
  if (lacking.length === 0) return null;
  return (
    <div className="consent-note" role="note">
      {lacking.map(({ id, athlete }) => (
        <p key={id}>
          <ConsentLine athlete={athlete} wanted={wanted} />{' '}
          <a href={hrefOf({ page: 'athlete', id })}>{say('consent.note')}</a>
        </p>
      ))}
    </div>
  );
}
