import type { BandOverride } from '../../../core/document/band-override-schema.ts';
import { say } from '../../language/messages.ts';
import type { MeasureKind } from './measure-kinds.ts';

const KINDS: Readonly<Record<string, MeasureKind>> = { m: 'length', rad: 'angle', kg: 'mass' };

/** What the edges of a band measure, by the unit of its quantity. */
export const edgeKind = (unit: string): MeasureKind => KINDS[unit] ?? 'number';

/** Bounds of an edge, in the band's own unit: the schema leaves them open. */
export const EDGE_BOUNDS = { min: -1000, max: 1000 };

/** How an edge is to be written, where that does not show. */
export const edgeHint = (unit: string): string | undefined =>
  unit === '1' ? say('athlete-bands.share') : undefined;

/** What is wrong with a band of one's own: it needs an edge, and two edges their order. */
export function bandProblem({ min, max }: Pick<BandOverride, 'min' | 'max'>): string | null {
  if (min === null && max === null) return say('athlete-bands.empty');
  return min !== null && max !== null && min >= max ? say('athlete-bands.turned') : null;
}
