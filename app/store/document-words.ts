import type { Athlete } from '../../core/document/athlete-schema.ts';
import type { StockPaddleDocument } from '../../core/document/stock-paddle-schema.ts';
import { searchText } from './search-text.ts';

/** Anything of the three lists that fits are made from. */
export type ListedDocument = { readonly name: string } & Partial<
  Pick<Athlete, 'limits' | 'bands'> & Pick<StockPaddleDocument, 'note'>
>;

/**
 * What a listed thing is found and sorted by: its name, then the free words in it. Who gave a consent is no such word: a
 * guardian is not looked up.
 */
export function documentWords({ name, limits = [], bands = [], note = '' }: ListedDocument): string {
  const reasons = [...limits, ...bands].map(({ reason }) => reason);
  return searchText(...[name, ...reasons, note].filter(Boolean));
}
