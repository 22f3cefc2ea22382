/** A call as sent: `{"name": ..., "input": ...}`; null where the text is not such a JSON object. */
export function parseCall(text: string): { readonly name: unknown; readonly input: unknown } | null {
  try {
    const sent: unknown = JSON.parse(text);
    if (typeof sent !== 'object' || sent === null || Array.isArray(sent)) return null;
    const { name, input } = sent as { name?: unknown; input?: unknown };
    return { name, input };
  } catch {
    return null;
  }
}
