/** The form in which names are searched and sorted: no accents, no case. `Łukasz Škoda` and `Skoda` meet. */
export function searchText(...parts: readonly string[]): string {
  return parts
    .join(' ')
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[łŁøØđĐßæÆœŒþÞðÐıİ]/g, (letter) => PLAIN[letter] ?? letter)
    .toLowerCase();
}

/** As the limit of a query: every row is given. */
export const EVERY_ROW = -1;

/** Letters that Unicode does not take apart into a letter and an accent. */
const PLAIN: Readonly<Record<string, string>> = {
  ł: 'l',
  Ł: 'l',
  ø: 'o',
  Ø: 'o',
  đ: 'd',
  Đ: 'd',
  ß: 'ss',
  æ: 'ae',
  Æ: 'ae',
  œ: 'oe',
  Œ: 'oe',
  þ: 'th',
  Þ: 'th',
  ð: 'd',
  Ð: 'd',
  ı: 'i',
  İ: 'i',
};

/** A pattern for `LIKE ... ESCAPE '\'` that finds `wanted` anywhere; every character of it stands for itself. */
export function searchPattern(wanted: string): string {
  return `%${searchText(wanted).replace(/[\\%_]/g, (c) => `\\${c}`)}%`;
}
