import type { CallError } from '../contract/result.ts';
import type { MessageKey } from '../language/messages.ts';
import type { SayValues } from '../language/translator.ts';
import { say, words } from '../shell/say.ts';
import type { StoreRefusal } from '../store/open-store.ts';

/** A problem after which everything is as it was before. */
const unchanged = (key: MessageKey, values?: SayValues): string =>
  words().sentences([say(key, values), say('problem.unchanged')]);

/** A problem that loses nothing of what was saved. */
const kept = (key: MessageKey, values?: SayValues): string =>
  words().sentences([say(key, values), say('problem.kept')]);

/**
 * Every sentence that the program says to a person about a call or the store: what happened, what was kept, what to
 * do. What is wrong inside an input is worded in `problem-sentences.ts`.
 */
export const SENTENCES = {
  'unknown-call': (name: string) => unchanged('problem.unknown-call', { name }),
  get 'bad-input'() {
    return unchanged('problem.invalid');
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
    return kept('problem.disk-full');
  },
  get 'read-only'() {
    return kept('problem.read-only');
  },
  get 'store-damaged'() {
    return say('problem.damaged');
  },
  get 'store-busy'() {
    return kept('problem.busy');
  },
  get internal() {
    return kept('problem.internal');
  },
  'too-large': (most: number) => unchanged('problem.too-large', { most }),
  get 'too-many'() {
    return unchanged('problem.too-many');
  },
  get 'not-a-call'() {
    return unchanged('problem.not-a-call');
  },
  get 'own-page-only'() {
    return say('problem.own-page-only');
  },
  get 'no-session'() {
    return unchanged('problem.tab-refused');
  },
  get 'delivery-gone'() {
    return say('problem.delivery-gone');
  },
  get 'disk-error'() {
    return kept('problem.disk-error');
  },
  get 'place-gone'() {
    return unchanged('problem.no-place');
  },
  get cancelled() {
    return unchanged('problem.cancelled');
  },
  get 'no-such-backup'() {
    return unchanged('problem.no-such-backup');
  },
  get 'backup-unreadable'() {
    return unchanged('problem.backup-unreadable');
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
    say('problem.erasure-finished', { paths: words().row(paths) }),
  get 'choose-bundle'() {
    return say('problem.choose-bundle');
  },
  get 'import-finished'() {
    return say('problem.import-finished');
  },
  get 'bundle-too-large'() {
    return unchanged('problem.bundle-too-large');
  },
  get 'bundle-refused'() {
    return say('problem.bundle-refused');
  },
  get 'join-circle'() {
    return unchanged('problem.joined-already');
  },
  get 'conflict-gone'() {
    return unchanged('problem.decided-already');
  },
  get 'conflict-unsound'() {
    return unchanged('problem.not-complete');
  },
  get 'no-invitation'() {
    return unchanged('problem.no-invitation');
  },
  get 'no-such-bundle'() {
    return unchanged('problem.no-such-bundle');
  },
  get 'nobody-there'() {
    return say('drawing.nobody');
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
  'measured-later': (day: string) => unchanged('problem.measured-day', { day }),
  get 'photo-no-picture'() {
    return unchanged('problem.not-a-picture');
  },
  get 'photo-too-large'() {
    return unchanged('problem.picture-too-large');
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
    return unchanged('problem.photos-too-large');
  },
  get 'page-gone'() {
    return say('problem.page-gone', { saved: say('error.saved') });
  },
  'desktop-failed': (log: string) => kept('problem.window-failed', { log }),
  get 'demo-not-empty'() {
    return unchanged('problem.demo-not-empty');
  },
  'demo-broken': (detail: string) => unchanged('problem.demo-broken', { detail }),
};

/** What to say when the store could not be opened. */
export function refusalSentence(refusal: StoreRefusal): string {
  const { code, ...values } = refusal;
  return unchanged(`start-problem.${code}`, values);
}

/** Makes a refusal: the code for the page, the sentence for the person. */
export function callError(
  code: CallError['code'],
  message: string,
  problems: CallError['problems'] = [],
): CallError {
  return { code, message, problems };
}
