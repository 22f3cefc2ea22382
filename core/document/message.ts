/**
 * A message of the catalogue by its key, with the values for its places. Core returns these; the shells turn them into text.
 */
export interface Message {
  /** Its key in the catalogue: `offsets.sheer`. */
  readonly key: string;
  readonly values?: Readonly<Record<string, string | number | boolean | undefined>>;
}
