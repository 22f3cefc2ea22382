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
  'nobody-tried':
    'Nobody knelt in that seat of this revision, so there is no trial to keep. What you entered is still here. Choose another seat or revision.',
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
    'This tab may not use the program: its address has been used already, is not complete, or was opened in another tab. Nothing was changed. Go to the window where the program runs, press Enter there, and paste the fresh address into this tab.',
  'delivery-gone': 'This file has been fetched already. Ask for it again in the program.',
  'disk-error':
    'The disk reported an error, so this could not be kept. Everything kept before is still there. Check the disk, take a backup to another one, then try again.',
  'place-gone':
    'The file or folder is not there, or is not of the kind that is needed. Nothing was changed. Choose another place.',
  cancelled: 'This was stopped as you asked. Nothing was changed.',
  'no-such-backup': 'This backup is no longer there. Nothing was changed. Choose another from the list.',
  'backup-unreadable': 'This backup does not read. Nothing was changed. Choose another from the list.',
  'backup-failed': (detail: string) =>
    `Today's backup could not be made (${detail}). The store itself is unharmed. Free some space or check the disk; the program tries again within half an hour.`,
  'store-suspect':
    'The store seems to be damaged: a copy of it does not read through. Earlier backups were kept. Close the program and start it again: it will check the file and save what can be saved.',
  'store-replaced':
    'Another program has put another file in the place of the data file: a synchronised folder or a restored copy, say. This was not kept; everything kept before is in the journal beside it. Close the program and start it again: it will put both together. Keep the data folder out of synchronised folders.',
  upgraded: (copy: string) =>
    `The store was brought up to this program's version. A copy of it as it was lies at ${copy}.`,
  'erase-name': (name: string) =>
    `Nothing was erased. To erase this athlete for good, type the name as it stands: ${name}.`,
  'erase-reach': (copiesLeft: number) =>
    `${copiesLeft > 0 ? 'Some older copies could not be rewritten: delete the files listed. ' : ''}Bundles, prints and files saved elsewhere cannot be reached from here: delete those yourself.`,
  'erase-unfinished': (paths: readonly string[]) =>
    `An erasure that was cut short has been finished. These older copies could not be rewritten; delete them by hand: ${paths.join(', ')}.`,
  'choose-bundle': 'Bundle to import',
  'bundle-too-large':
    'Everything together is larger than 512 MB, more than this program reads from one file. Nothing was changed. Remove some photographs, then export again; your own copy of the data folder holds everything.',
  'bundle-refused': 'This bundle was not taken in. Nothing was changed. What is wrong with it:',
  'join-circle':
    'These two entries are joined already. Nothing was changed. Take them apart first to join them the other way round.',
  'conflict-gone':
    'This has been decided already, or was changed meanwhile. Nothing was changed. Look at the list again.',
  'conflict-unsound':
    'With this value the record would not be complete. Nothing was changed. Decide for the other value, then change it on its own page.',
  'no-such-bundle': 'This bundle is no longer at hand. Nothing was changed. Choose the file again.',
  'nobody-there':
    'Nobody kneels in this seat, so there is nothing to set out or to show. No file was made. Choose a seat with an athlete.',
  'file-disk-full':
    'The disk is full, so the file could not be written. Nothing was left behind, and what was there before is as it was. Free some space or choose another place, then export again.',
  'file-read-only':
    'That place may not be written to, so the file was not made. Nothing was left behind. Choose another folder, then export again.',
  'file-place-gone':
    'That place is not there, or is not a folder, so the file was not made. Nothing was left behind. Choose another folder, then export again.',
  'file-failed': (detail: string) =>
    `The file could not be written (${detail}). Nothing was left behind, and what was there before is as it was. Try another place.`,
  'measured-later': (measuredOn: string) =>
    `Only what was measured before ${measuredOn} can be put in or taken away here; that day's figures are the athlete's present ones. Nothing was changed. Change those on the athlete's page.`,
  'photo-no-picture':
    'This file is not a picture that can be kept. Nothing was changed. Choose a JPEG, PNG or WebP file.',
  'photo-too-large':
    'This picture is larger than 4 MB. Nothing was changed. Make it smaller, then add it again.',
  'photo-too-many': 'This boat has 24 photographs already, the most that are kept. Remove one first.',
  'photo-too-many-of-athlete':
    'This athlete has 60 photographs already, the most that are kept. Remove one first.',
  'photo-no-consent':
    'A guardian has not consented to photographs of this athlete. The picture was not kept. Enter the consent on the athlete’s page first.',
  'photo-store-full':
    'The photographs of all boats together have reached 400 MB, the most that one bundle can carry. Nothing was changed. Remove some first.',
  'page-gone':
    'The drawing stopped unexpectedly. Everything that was shown as kept is kept. Open it again to go on where you were.',
  'desktop-failed': (log: string) =>
    `The program could not open its window: it met a fault of its own. Everything kept before is still there. Start it again; if this happens again, report it with the last lines of ${log}.`,
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
    case 'disk-error':
      return `The disk reported an error while ${refusal.file} was opened (${refusal.detail}). It was left as it is. Check the disk, then start again.`;
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
