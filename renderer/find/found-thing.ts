import type { FoundThing } from '../../app/contract/trials.ts';
import { dateText } from '../language/dates.ts';
import { say } from '../language/messages.ts';
import { revisionNumber } from '../language/revision-number.ts';
import type { Route } from '../route/route.ts';

/** What a thing is called: its name, a revision with its number, a trial by its day. */
export function thingName({ kind, id, title, number, heldOn, at }: FoundThing): string {
  if (kind === 'trial') return say('find.trial', { date: dateText(heldOn ?? at) });
  if (kind === 'revision')
    return say('trial.tried.revision', { number: revisionNumber({ id, number: number ?? 1 }), name: title });
  return title;
}

/** What kind of thing it is, and what it belongs to. */
export function thingPlace({ kind, of }: FoundThing): string {
  const name = say(`kind.${kind}`);
  return of ? say('find.of', { kind: name, of }) : name;
}

/** Where a thing is looked at. */
export function thingRoute({ kind, id, fitId }: FoundThing): Route {
  switch (kind) {
    case 'fit':
    case 'athlete':
    case 'boat':
      return { page: kind, id };
    case 'paddle':
      return { page: 'paddles', id };
    case 'trial':
      return { page: 'fit', id: fitId ?? id, tab: 'trials', trial: id };
    case 'revision':
      return { page: 'fit', id: fitId ?? id, tab: 'revisions' };
  }
}
