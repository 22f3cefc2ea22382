import type { CallError } from '../contract/result.ts';
import { say } from '../shell/say.ts';
import type { StoreRefusal } from '../store/open-store.ts';

/**
 * Every sentence that the program says to a person about a call or the store: what happened, what was kept, what to
 * do. What is wrong inside an input is worded in `problem-sentences.ts`.
 */
export const SENTENCES = {
  'unknown-call': (name: string) => say('problem.unknown-call', { name }),
  get 'bad-input'() {
    return say('problem.invalid');
  },
  'no-such-row': (what: string) => say('problem.not-found', { what }),
  'damaged-row': (what: string) => say('problem.unreadable', { what }),
  get 'nobody-tried'() {
    return say('problem.nobody-knelt');
  },
  get 'draft-conflict'() {
    return say('problem.draft-conflict');
  },
  get 'only-draft'() {
    return say('problem.only-draft');
  },
  get 'disk-full'() {
    return say('problem.disk-full');
  },
  get 'read-only'() {
    return say('problem.read-only');
  },
  get 'store-damaged'() {
    return say('problem.damaged');
  },
  get 'store-busy'() {
    return say('problem.busy');
  },
  get internal() {
    return say('problem.internal');
  },
  'too-large': (most: number) => say('problem.too-large', { most }),
  get 'too-many'() {
    return say('problem.too-many');
  },
  get 'not-a-call'() {
    return say('problem.not-a-call');
  },
  get 'own-page-only'() {
    return say('problem.own-page-only');
  },
  get 'no-session'() {
    return say('problem.tab-refused');
  },
  get 'delivery-gone'() {
    return say('problem.delivery-gone');
  },
  get 'disk-error'() {
    return say('problem.disk-error');
  },
  get 'place-gone'() {
    return say('problem.no-place');
  },
  get cancelled() {
    return say('problem.cancelled');
  },
  get 'no-such-backup'() {
    return say('problem.no-such-backup');
  },
  get 'backup-unreadable'() {
    return say('problem.backup-unreadable');
  },
  'backup-failed': (detail: string) => say('problem.backup-failed', { detail }),
  get 'store-suspect'() {
    return say('problem.store-damaged');
  },
  get 'store-replaced'() {
    return say('problem.file-replaced');
  },
  upgraded: (copy: string) => say('problem.migrated', { copy }),
  'erase-name': (name: string) => say('problem.erase-name', { name }),
  'erase-reach': (copiesLeft: number) =>
    say(copiesLeft > 0 ? 'problem.erased.copies-left' : 'problem.erased'),
  'erase-unfinished': (paths: readonly string[]) =>
    say('problem.erasure-finished', { paths: paths.join(', ') }),
  get 'choose-bundle'() {
    return say('problem.choose-bundle');
  },
  get 'import-finished'() {
    return say('problem.import-finished');
  },
  get 'bundle-too-large'() {
    return say('problem.bundle-too-large');
  },
  get 'bundle-refused'() {
    return say('problem.bundle-refused');
  },
  get 'join-circle'() {
    return say('problem.joined-already');
  },
  get 'conflict-gone'() {
    return say('problem.decided-already');
  },
  get 'conflict-unsound'() {
    return say('problem.not-complete');
  },
  get 'no-invitation'() {
    return say('problem.no-invitation');
  },
  get 'library-away'() {
    return say('problem.club-library-away');
  },
  get 'no-such-bundle'() {
    return say('problem.no-such-bundle');
  },
  get 'nobody-there'() {
    return say('problem.nobody-there');
  },
  get 'file-disk-full'() {
    return say('problem.file-disk-full');
  },
  get 'file-read-only'() {
    return say('problem.file-read-only');
  },
  get 'file-place-gone'() {
    return say('problem.file-place-gone');
  },
  'file-failed': (detail: string) => say('problem.file-failed', { detail }),
  'measured-later': (day: string) => say('problem.measured-day', { day }),
  get 'photo-no-picture'() {
    return say('problem.not-a-picture');
  },
  get 'photo-too-large'() {
    return say('problem.picture-too-large');
  },
  get 'photo-too-many'() {
    return say('problem.photo-too-many');
  },
  get 'photo-too-many-of-athlete'() {
    return say('problem.photo-of-athlete-many');
  },
  get 'photo-no-consent'() {
    return say('problem.photo-no-consent');
  },
  get 'photo-store-full'() {
    return say('problem.photos-too-large');
  },
  get 'page-gone'() {
    return say('problem.page-gone');
  },
  'desktop-failed': (log: string) => say('problem.window-failed', { log }),
  get 'demo-not-empty'() {
    return say('problem.demo-not-empty');
  },
  'demo-broken': (detail: string) => say('problem.demo-broken', { detail }),
};

/** What to say when the store could not be opened. */
export function refusalSentence(refusal: StoreRefusal): string {
  const { code, ...values } = refusal;
  return say(`start-problem.${code}`, values);
}

/** Makes a refusal: the code for the page, the sentence for the person. */
export function callError(
  code: CallError['code'],
  message: string,
  problems: CallError['problems'] = [],
): CallError {
  return { code, message, problems };
}
