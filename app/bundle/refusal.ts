/** What may be wrong with a bundle, and how it is said after the name of the file in it. */
export const BUNDLE_PROBLEMS = {
  'not-a-zip': 'is not a zip file; needed is a bundle as this program exports it',
  'cut-off': 'is cut off; needed is the whole bundle',
  damaged: 'cannot be unpacked; it is damaged, or no bundle of this program',
  'too-large': (limitMb: number) => `is too large; allowed is at most ${limitMb} MB`,
  'too-many': (limit: number) => `holds too many files; allowed is at most ${limit}`,
  'strange-name': 'is not a file that a bundle holds',
  twice: 'is in the bundle twice',
  'no-contents': 'is missing; needed is the whole bundle',
  'not-there': 'is listed in bundle.json but not in the bundle',
  'not-listed': 'is in the bundle but not listed in bundle.json',
  changed: 'is not as bundle.json says; the bundle is damaged or was changed by hand',
  'not-announced':
    'is a photograph that boats.json does not name; the bundle is damaged or was changed by hand',
  'no-picture': 'is not the picture that its name says',
  newer: 'is of a bundle that a newer Kneelwright made; install that one to import it',
  encrypted: 'is encrypted, but is damaged or cut off, or was not encrypted with a passphrase',
  'not-json': 'is not JSON in UTF-8',
} as const;

/** A bundle, or a file in it, is not as it must be. `path` names the file; it is empty for the bundle itself. */
export class BundleRefused extends Error {
  readonly path: string;
  constructor(path: string, sentence: string) {
    super(sentence);
    this.path = path;
  }
}
