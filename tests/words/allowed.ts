/** Texts that look like words and are none for a reader, each with its reason. */
export interface Allowed {
  readonly why: string;
  matches(file: string, text: string): boolean;
}

const at = (folder: RegExp, why: string, text: RegExp = /./): Allowed => ({
  why,
  matches: (file, found) => folder.test(file) && text.test(found),
});

export const ALLOWED: readonly Allowed[] = [at(/^app\/store\/migrations\//, 'queries of the store')];
