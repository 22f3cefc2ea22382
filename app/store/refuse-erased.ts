import { isOf, nameCleaner, withoutPerson } from './erase-from-fit.ts';
import { listErased, wasErased } from './erased-people.ts';
import type { Incoming, IncomingFit, IncomingFitPart } from './incoming.ts';
import type { MergeCounts } from './merge-counts.ts';
import type { Person } from './person.ts';
import type { RecordVersions } from './record-versions.ts';
import type { Store } from './store.ts';

type Of<K extends Incoming['kind']> = Extract<Incoming, { kind: K }>['item'];
type Fit = IncomingFit['revisions'][number]['fit'];

/**
 * Keeps people who were erased here from coming back with an older file: their entries are refused, their seats left empty,
 * fits of theirs alone are left out, and their names taken out of the words of everything else that comes after them.
 */
export function refuseErased(store: Store, counts: MergeCounts): { admit(incoming: Incoming): Incoming[] } {
  const erased = listErased(store.db);
  const refused = new Map<string, Person>();

  const meets = (id: string | null | undefined, name: string): boolean => {
    if (!id || !wasErased(erased, id)) return false;
    const known = refused.get(id);
    if (!known) counts.refusedErased += 1;
    const names = new Set([...(known?.formerNames ?? []), name]);
    refused.set(id, {
      id,
      name: known?.name ?? name,
      formerNames: [...names],
      guardians: known?.guardians ?? [],
    });
    return true;
  };
  const meetAll = (fits: readonly Fit[]) => {
    for (const { athlete } of fits.flatMap(({ seats }) => seats))
      if (athlete) meets(athlete.id, athlete.name);
  };
  const admitFit = (item: IncomingFit): Incoming[] => {
    const fits = [...item.revisions, ...(item.draft ? [item.draft] : [])].map(({ fit }) => fit);
    meetAll(fits);
    const people = [...refused.values()];
    const isTheirs = (seat: Fit['seats'][number]) => people.some((person) => isOf(seat, person));
    const seats = fits.flatMap((fit) => fit.seats.filter(({ athlete }) => athlete));
    // What else there is of it may be somebody else's.
    if (seats.length > 0 && seats.every(isTheirs) && !item.more) return [];
    return [{ kind: 'fit', item: people.reduce(fitWithout, item) }];
  };
  const admitFitPart = (item: IncomingFitPart): Incoming[] => {
    meetAll(item.revisions.map(({ fit }) => fit));
    const without = (part: IncomingFitPart, person: Person) => ({ ...part, ...partsWithout(part, person) });
    return [{ kind: 'fit-part', item: [...refused.values()].reduce(without, item) }];
  };

  const showsErased = ({ athleteId }: Of<'photo'>) => athleteId !== undefined && wasErased(erased, athleteId);

  return {
    admit(incoming) {
      if (incoming.kind === 'erased') {
        erased.push(incoming.item);
        return [incoming];
      }
      if (erased.length === 0) return [incoming];
      if (incoming.kind === 'fit') return admitFit(incoming.item);
      if (incoming.kind === 'fit-part') return admitFitPart(incoming.item);
      if (incoming.kind === 'photo' && showsErased(incoming.item)) return [];
      if (incoming.kind === 'athlete' && meets(incoming.item.id, incoming.item.athlete.name)) {
        const given = Object.values(incoming.item.athlete.consent ?? {}).map(({ by }) => by);
        const person = refused.get(incoming.item.id)!;
        refused.set(person.id, { ...person, guardians: given });
        return [];
      }
      return [[...refused.values()].reduce(wordsWithout, incoming)];
    },
  };
}

function fitWithout(item: IncomingFit, person: Person): IncomingFit {
  return {
    ...item,
    ...waiting(item.versions, person),
    draft: item.draft && { ...item.draft, fit: withoutPerson(item.draft.fit, person) },
    ...partsWithout(item, person),
  };
}

/** The revisions and trials of a fit without a person. */
function partsWithout({ revisions, trials }: Omit<IncomingFitPart, 'fitId'>, person: Person) {
  const clean = nameCleaner(person, 'parts-too');
  const gone = trials.filter(({ athleteId }) => athleteId === person.id).map(({ id }) => id);
  return {
    revisions: revisions.map((revision) => ({
      ...revision,
      name: clean(revision.name),
      reason: clean(revision.reason),
      answers: revision.answers.filter(({ trialId }) => !gone.includes(trialId)),
      fit: withoutPerson(revision.fit, person),
    })),
    trials: trials
      .filter(({ athleteId }) => athleteId !== person.id)
      .map((one) => ({
        ...one,
        trial: { ...one.trial, notes: clean(one.trial.notes) },
        ...waiting(one.versions, person),
      })),
  };
}

/** Values that wait for a decision are left out where they name the person. */
function waiting(
  versions: RecordVersions | undefined,
  person: Person,
): { versions: RecordVersions | undefined } {
  if (!versions) return { versions };
  const clean = nameCleaner(person, 'full-names');
  const isFree = ({ value }: { value: string | null }) =>
    value === null || (!value.includes(person.id) && clean(value) === value);
  const fields = Object.fromEntries(
    Object.entries(versions.fields).map(([path, version]) => [
      path,
      { ...version, others: version.others.filter(isFree) },
    ]),
  );
  return { versions: { ...versions, fields } };
}

/** Anything else with the full names taken out of its words. */
function wordsWithout(incoming: Incoming, person: Person): Incoming {
  const clean = nameCleaner(person, 'full-names');
  switch (incoming.kind) {
    case 'athlete': {
      const { athlete } = incoming.item;
      const reasons = <T extends { reason: string }>(list: readonly T[]) =>
        list.map((one) => ({ ...one, reason: clean(one.reason) }));
      const { limits, bands } = athlete;
      const cleaned = { ...athlete, limits: reasons(limits), ...(bands ? { bands: reasons(bands) } : {}) };
      return {
        kind: 'athlete',
        item: { ...incoming.item, athlete: cleaned, ...waiting(incoming.item.versions, person) },
      };
    }
    case 'boat': {
      const { boat, photos, versions } = incoming.item;
      const named: Of<'boat'>['boat'] = { ...boat, name: clean(boat.name) };
      const captioned = photos.map((photo) => ({
        ...photo,
        caption: clean(photo.caption),
        ...waiting(photo.versions, person),
      }));
      return {
        kind: 'boat',
        item: { ...incoming.item, boat: named, photos: captioned, ...waiting(versions, person) },
      };
    }
    case 'photo': {
      const { caption, versions } = incoming.item;
      return {
        kind: 'photo',
        item: { ...incoming.item, caption: clean(caption), ...waiting(versions, person) },
      };
    }
    case 'removed-photo': {
      const { id, versions } = incoming.item;
      return {
        kind: 'removed-photo',
        item: { id, versions: waiting(versions, person).versions ?? versions },
      };
    }
    case 'paddle': {
      const { paddle, versions } = incoming.item;
      const cleaned = { ...paddle, name: clean(paddle.name), note: clean(paddle.note) };
      return { kind: 'paddle', item: { ...incoming.item, paddle: cleaned, ...waiting(versions, person) } };
    }
    default:
      return incoming;
  }
}
