/** A message of the catalogue by its key, with what fills its places: what core finds, before anybody says it. */
export interface Message {
  /** As in the catalogue: `offsets.sheer`. */
  readonly key: string;
  readonly values?: Readonly<Record<string, string | number | boolean | undefined>>;
}
