/** Texts that look like words and are none for a reader, each with its reason. */
export interface Allowed {
  readonly why: string;
  matches(file: string, text: string): boolean;
}

const at = (folder: RegExp, why: string, text: RegExp = /./): Allowed => ({
  why,
  matches: (file, found) => folder.test(file) && text.test(found),
});

export const ALLOWED: readonly Allowed[] = [
  at(/^app\/store\/migrations\//, 'queries of the store'),
  at(
    /^core\/roster\/(heading-aliases|read-athlete-cell)\.ts$/,
    'what tables of clubs say: read, never shown',
  ),
  at(/^core\/roster\/athlete-columns\.ts$/, 'headings of the table’s format, read in every language'),
  at(/^core\/hull\/classic-offsets\.ts$/, 'a heading that a table has: read, never shown', /^sheer height$/),
  at(/^core\/body\/measuring\.ts$/, 'names that ISO 7250-1 gives to measures'),
  at(/^core\/body\/(joint-centres|tape-models)\.ts$/, 'names of constants, for the engineer'),
  at(/^core\/posture\/neutral-posture\.ts$/, 'sources of constants, for the engineer'),
  at(/^core\/evaluation\//, 'codes of kinds of sources', /^(common practice|this model|class rule)$/),
  at(/^core\/optimise\/|^renderer\/bench\/proposal\//, 'a code', /^out of reach$/),
  at(/^core\/trial\//, 'a code', /^to zero$/),
  at(/^core\/drilling\//, 'a section of the LP format', /^Subject To$/),
  at(/^renderer\/drawing\/view\/label-placer\.ts$/, 'a code', /^may meet$/),
  at(/^renderer\/drawing\/view\/pen\.ts$/, 'a font', /^"Ysabeau Office"$/),
  at(/^renderer\/pages\/boat\/station-paste\.ts$/, 'a code', /^no measure$/),
  at(/^renderer\//, 'where a menu opens: a code of its library', /^(top|bottom) (start|end)$/),
  at(/^renderer\/ui\/form\/form-summary\.tsx$/, 'a selector', /^input, select/),
  at(/^app\/export\/template-dxf\.ts$/, 'descriptions of line types as DXF writes them', /line [_ ]+$/),
  at(/^app\/export\/solids\/stl\.ts$/, 'the header of a binary file', /binary STL$/),
  at(/^app\/shell\/data-folder\.ts$/, 'a folder of macOS', /^Application Support$/),
  at(/^app\/shell\/log-file\.ts$/, 'a line of the log, for whoever looks for a fault', /was thrown$/),
  at(/^app\/store\/(integrity|quarantine)\.ts$/, 'what is wrong with a row, for whoever looks for a fault'),
  at(/^app\/library\/commands\.ts$/, 'a command to copy', /^npm run library/),
  at(/^app\/(library\/usage|launch\/usage|headless\/evaluate)\.ts$/, 'what is typed', /^npm |--/),
];
