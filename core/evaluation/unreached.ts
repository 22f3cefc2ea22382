import type { Finding } from './finding.ts';

const SENTENCES: Readonly<Record<string, string>> = {
  rearAnkle: 'The rear foot does not reach its rest, so its ankle has no angle to judge.',
  frontKnee: 'The front leg does not reach its place, so its knee has no angle to judge.',
  frontAnkle: 'The front leg does not reach its place, so its ankle has no angle to judge.',
};

/** A coach's sentence on the angle of a limb that does not reach; null for every other finding. */
export function unreachedSentence({
  quantity,
  unreached,
}: Pick<Finding, 'quantity' | 'unreached'>): string | null {
  return unreached ? (SENTENCES[quantity] ?? null) : null;
}
