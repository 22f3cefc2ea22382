import type { CallError } from '../contract/result.ts';
import type { StoreRefusal } from '../store/open-store.ts';

/**
 * Every sentence that the program says to a person about a call or the store: what happened, what was kept, what to
 * do. What is wrong inside an input is worded in `problem-sentences.ts`.
 */
export const SENTENCES = {
  'unknown-call': (name: string) =>
    `The page asked for "${name}", which this program does not know. Nothing was changed. Reload the page.`,
  'bad-input':
    'What was sent is not complete or not allowed. Nothing was changed. Correct what is listed below.',
  'no-such-row': (what: string) =>
    `This ${what} is not in the store; it may have been removed in another window. Nothing was changed. Go back to the list.`,
  'damaged-row': (what: string) =>
    `This ${what} is in the store but cannot be read. It was left as it is and set aside. Open an earlier revision, or restore a backup.`,
  'draft-conflict':
    'Another window has kept a newer draft of this fit. That draft was kept and this one was not written over it. Open the fit again to see it, or save this one as a new fit.',
  'only-draft': 'This fit has no saved revision to go back to. The draft was kept. Save a revision first.',
  'disk-full':
    'The disk is full, so this could not be kept. Everything kept before is still there. Free some space, then go on; the next edit is kept again.',
  'read-only':
    'The data folder can no longer be written to, so this could not be kept. Everything kept before is still there. Allow writing to the folder, or start with another one (--data).',
  'store-damaged':
    'The store could not be read at this place; the file or the disk is damaged. Nothing was written. Close the program and start it again: it will check the file and offer the newest good backup.',
  'store-busy':
    'Another program is holding the data file, so this could not be kept. Everything kept before is still there. Close the other program and try again.',
  internal:
    'The program made a mistake of its own and did not do this. Everything kept before is still there. Try again; if it happens again, please report it with what you did.',
  'too-large': (limitMb: number) =>
    `What was sent is larger than ${limitMb} MB. Nothing was changed. Send something smaller.`,
  'too-many': 'Too many requests in a short time. Nothing was changed. Wait a moment, then try again.',
  'not-a-call': 'What was sent is not a call of this program. Nothing was changed. Reload the page.',
  'own-page-only': 'This address is for its own page only.',
  'no-session':
    'This address does not open the program: it has been used already, or it is not complete. Go to the window where the program runs and press Enter there; it prints a fresh address.',
  'delivery-gone': 'This file has been fetched already. Ask for it again in the program.',
  'page-gone':
    'The drawing stopped unexpectedly. Everything that was shown as kept is kept. Open it again to go on where you were.',
  'demo-not-empty':
    'The demo club is only added to an empty store, so that invented people never stand among real ones. Nothing was changed. Start with another data folder (--data) to see it.',
  'demo-broken': (detail: string) =>
    `The demo club's own files do not read (${detail}). Nothing was changed. Install the program again.`,
} as const;

/** What to say when the store could not be opened. */
export function refusalSentence(refusal: StoreRefusal): string {
  switch (refusal.code) {
    case 'cannot-write':
      return `The data folder ${refusal.folder} cannot be written to. Nothing was changed. Allow writing to it, or choose another with --data DIR.`;
    case 'in-use':
      return `The data file ${refusal.file} is in use by another running Kneelwright. Nothing was changed. Go on there, or close it first, or choose another folder with --data DIR.`;
    case 'newer':
      return `The data file ${refusal.file} was written by a newer Kneelwright (store version ${refusal.found}; this one knows ${refusal.known}). It was left as it is. Install the newer program, or choose another folder with --data DIR.`;
    case 'foreign':
      return `The file ${refusal.file} is a database of some other program. It was left as it is. Choose another folder with --data DIR.`;
    case 'damaged':
      return `The data file ${refusal.file} is damaged (${refusal.detail}). It was left as it is.`;
    case 'disk-full':
      return `The disk that holds ${refusal.folder} is full. Nothing was changed. Free some space, then start again.`;
  }
}

/** Makes a refusal: the code for the page, the sentence for the person. */
export function callError(
  code: CallError['code'],
  message: string,
  problems: CallError['problems'] = [],
): CallError {
  return { code, message, problems };
}
