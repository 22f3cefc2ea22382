/** The values of a message: texts, counts, and names to select by. */
export type MessageValues = Readonly<Record<string, string | number | boolean | undefined>>;

/**
 * Says messages in one language. The program's translator is one; a script may bring its own. Core names messages and their
 * values only: it contains no sentences.
 */
export interface Words {
  /** The language, BCP 47. */
  readonly language: string;
  /** A number with so many places after the decimal mark of the language. */
  number(value: number, decimals: number): string;
  /** The message with its places filled. */
  say(key: string, values?: MessageValues): string;
  /** True where there is a text for the key. */
  has(key: string): boolean;
  /** Texts as one list: "a, b and c". */
  list(texts: readonly string[]): string;
  /** Names and values side by side in one line: "Anna · C1 · 2026-05-04". Empty ones are left out. */
  beside(texts: readonly string[]): string;
  /** Whole sentences one after another, as the language parts them. */
  sentences(texts: readonly string[]): string;
}
