import type { CallName, CallOutput, ParsedInput } from '../contract/contract.ts';
import type { CallResult } from '../contract/result.ts';
import { listBackups } from '../store/backups.ts';
import { listErased, wasErased } from '../store/erased-people.ts';
import { findThings } from '../store/find-things.ts';
import {
  createFit,
  discardDraft,
  fitsOfBoat,
  listFits,
  openFit,
  saveDraft,
  setFitArchived,
} from '../store/fits.ts';
import { entriesOfPerson, takeApart } from '../store/join-people.ts';
import { listMeasurings } from '../store/measurings.ts';
import { describePhoto, listPhotos, photosOfAthlete, removePhoto, studyPhoto } from '../store/photos.ts';
import { listRevisions, openRevision, saveRevision } from '../store/revisions.ts';
import { athletes, boats, paddles } from '../store/roster.ts';
import { fitsOfAthlete, timelineOf } from '../store/timeline.ts';
import { listTrials, saveTrial, setTrialArchived } from '../store/trials.ts';
import { exportBundle, importBundle, previewBundle, unlockBundle } from './bundles.ts';
import { decide, openConflicts } from './conflicts.ts';
import { keepDisplay, readDisplayFile } from './display.ts';
import { exportTable } from './export-table.ts';
import { importAthletes } from './import-athletes.ts';
import { installDemo } from './install-demo.ts';
import { joinPerson } from './join-person.ts';
import {
  callLibrary,
  discard,
  joinLibrary,
  leaveLibrary,
  listGroups,
  makeGroup,
  openInLibrary,
  previewLibrary,
  setInGroup,
} from './library.ts';
import { keepEarlierMeasuring, removeEarlierMeasuring } from './measurings.ts';
import { keepPhoto, showPhoto } from './photos.ts';
import { done, found, missing, type Program, refused } from './program.ts';
import { programState } from './program-state.ts';
import { erase, previewErase, restore, takeBackupNow } from './safekeeping.ts';
import { SENTENCES } from './sentences.ts';

type Answer<N extends CallName> = CallResult<CallOutput<N>>;

/**
 * One function for each entry of the contract. Inputs are parsed before they arrive here. What makes papers is loaded with the
 * first one: it is half of what a start would load.
 */
export type Services = {
  readonly [N in CallName]: (program: Program, input: ParsedInput<N>) => Answer<N> | Promise<Answer<N>>;
};

export const services: Services = {
  'program.state': (program) => done(programState(program)),
  'program.quit': ({ shell }) => {
    shell.quit();
    return done({ quitting: true });
  },
  'display.read': (program) => done(readDisplayFile(program)),
  'display.keep': keepDisplay,
  'demo.install': installDemo,
  'athletes.list': ({ store }, listing) => done(athletes.list(store, listing)),
  'athletes.open': ({ store }, { id }) => found('athlete', athletes.get(store, id)),
  'athletes.save': ({ store }, { athlete, opened }) => done(athletes.save(store, athlete, opened)),
  'athletes.archive': ({ store }, { id }) => found('athlete', athletes.setArchived(store, id, true)),
  'athletes.restore': ({ store }, { id }) => found('athlete', athletes.setArchived(store, id, false)),
  'athletes.entries': ({ store }, { id }) => done(entriesOfPerson(store, id)),
  'athletes.join': joinPerson,
  'athletes.takeApart': ({ store }, { id }) =>
    takeApart(store, id) ? done(entriesOfPerson(store, id)) : missing('athlete'),
  'athletes.previewErase': previewErase,
  'athletes.erase': erase,
  'athletes.erased': ({ store }, { ids }) => {
    const erased = listErased(store.db);
    return done(ids.filter((id) => wasErased(erased, id)));
  },
  'athletes.import': importAthletes,
  'measurings.list': ({ store }, { athleteId }) => done(listMeasurings(store, athleteId)),
  'measurings.save': keepEarlierMeasuring,
  'measurings.remove': removeEarlierMeasuring,
  'boats.list': ({ store }, listing) => done(boats.list(store, listing)),
  'boats.open': ({ store }, { id }) => found('boat', boats.get(store, id)),
  'boats.save': ({ store }, { boat, opened }) => done(boats.save(store, boat, opened)),
  'boats.archive': ({ store }, { id }) => found('boat', boats.setArchived(store, id, true)),
  'boats.restore': ({ store }, { id }) => found('boat', boats.setArchived(store, id, false)),
  'boats.fits': ({ store }, { id }) => done(fitsOfBoat(store, id)),
  'boats.sections': async (program, input) =>
    (await import('./export-sections.ts')).exportSections(program, input),
  'boats.stock': ({ store }, { id }) => {
    const boat = boats.get(store, id);
    return boat ? done(boat.boat.stock ?? { pads: [], rests: [] }) : missing('boat');
  },
  'photos.list': ({ store }, { boatId }) => done(listPhotos(store, boatId)),
  'photos.ofAthlete': ({ store }, { athleteId }) => done(photosOfAthlete(store, athleteId)),
  'photos.open': showPhoto,
  'photos.add': keepPhoto,
  'photos.describe': ({ store }, { id, caption }) => found('photograph', describePhoto(store, id, caption)),
  'photos.study': ({ store }, { id, study }) => found('photograph', studyPhoto(store, id, study)),
  'photos.remove': ({ store }, { id }) =>
    removePhoto(store, id) ? done({ removed: true }) : missing('photograph'),
  'paddles.list': ({ store }, listing) => done(paddles.list(store, listing)),
  'paddles.open': ({ store }, { id }) => found('paddle', paddles.get(store, id)),
  'paddles.save': ({ store }, { paddle, opened }) => done(paddles.save(store, paddle, opened)),
  'paddles.archive': ({ store }, { id }) => found('paddle', paddles.setArchived(store, id, true)),
  'paddles.restore': ({ store }, { id }) => found('paddle', paddles.setArchived(store, id, false)),
  'fits.list': ({ store }, listing) => done(listFits(store, listing)),
  'fits.create': ({ store }, { fit }) => done(createFit(store, fit)),
  'fits.open': ({ store }, { id }) => found('fit', openFit(store, id)),
  'fits.archive': ({ store }, { id }) => found('fit', setFitArchived(store, id, true)),
  'fits.restore': ({ store }, { id }) => found('fit', setFitArchived(store, id, false)),
  'drafts.save': ({ store }, draft) => {
    const kept = saveDraft(store, draft);
    return kept === 'conflict' ? refused('conflict', SENTENCES['draft-conflict']) : found('fit', kept);
  },
  'drafts.discard': ({ store }, { id }) => {
    const opened = discardDraft(store, id);
    return opened === 'only-draft' ? refused('conflict', SENTENCES['only-draft']) : found('fit', opened);
  },
  'revisions.save': ({ store }, made) => {
    const saved = saveRevision(store, made);
    return saved === 'conflict' ? refused('conflict', SENTENCES['draft-conflict']) : found('fit', saved);
  },
  'revisions.list': ({ store }, { fitId, ...page }) => done(listRevisions(store, fitId, page)),
  'revisions.open': ({ store }, { id }) => found('revision', openRevision(store, id)),
  'trials.list': ({ store }, { fitId }) => done(listTrials(store, fitId)),
  'trials.save': ({ store }, trial) => {
    const saved = saveTrial(store, trial);
    return saved === 'nobody' ? refused('not-allowed', SENTENCES['nobody-tried']) : found('trial', saved);
  },
  'trials.archive': ({ store }, { id }) => found('trial', setTrialArchived(store, id, true)),
  'trials.restore': ({ store }, { id }) => found('trial', setTrialArchived(store, id, false)),
  'athletes.timeline': ({ store }, { id, limit }) => done(timelineOf(store, id, limit)),
  'athletes.fits': ({ store }, { id }) => done(fitsOfAthlete(store, id)),
  'things.find': ({ store }, wanted) => done(findThings(store, wanted)),
  'backups.list': ({ store }) => done(listBackups(store.folder)),
  'backups.take': takeBackupNow,
  'backups.restore': restore,
  'bundle.export': exportBundle,
  'bundle.preview': previewBundle,
  'bundle.unlock': unlockBundle,
  'bundle.import': importBundle,
  'conflicts.list': (program) => done(openConflicts(program)),
  'conflicts.decide': decide,
  'library.state': ({ library }) => done(library.state()),
  'library.preview': previewLibrary,
  'library.join': joinLibrary,
  'library.call': callLibrary,
  'library.leave': leaveLibrary,
  'library.discard': discard,
  'library.groups': listGroups,
  'library.makeGroup': makeGroup,
  'library.setInGroup': setInGroup,
  'library.open': openInLibrary,
  'paper.export': async (program, input) => (await import('./export-paper.ts')).exportPaper(program, input),
  'tables.export': exportTable,
  'work.progress': ({ work }) => done(work.progress()),
  'work.cancel': ({ work }) => done({ asked: work.cancel() }),
};
