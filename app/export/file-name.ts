/** Longest file name made, in UTF-16 units: well under what file systems and browsers take, ending included. */
const LONGEST = 110;

/** A plain file name of some words: no folders, nothing that a file system refuses, never hidden, never a device's name. */
export function fileName(words: readonly string[], ending: string): string {
  const plain = words
    .join(', ')
    .toWellFormed()
    .normalize('NFC')
    // Control characters and what Windows forbids become dashes.
    .replaceAll(/[\p{Cc}\p{Cf}<>:"/\\|?*]+/gu, '-')
    .replaceAll(/\s+/g, ' ')
    .replace(/^[.\s]+|[.\s]+$/g, '');
  const letters = [...plain];
  while (letters.join('').length > LONGEST) letters.pop();
  const stem = letters.join('').trim();
  const device = /^(con|prn|aux|nul|com\d|lpt\d)$/i.test(stem);
  return `${stem === '' || device ? `sheet ${stem}`.trim() : stem}.${ending}`;
}
