/** Reads a text as JSON; undefined where it is none. */
export function readJson(text: unknown): unknown {
  try {
    return typeof text === 'string' ? JSON.parse(text) : undefined;
  } catch {
    return undefined;
  }
}

/** Reads a text as a JSON object or list; null where it is neither. */
export function readJsonObject(text: unknown): object | null {
  const value = readJson(text);
  return typeof value === 'object' ? value : null;
}
