import { say } from '../../language/messages.ts';
import type { PhotoMarkName } from './mark-order.ts';

/** What a mark is called, as a person finds it in the picture. */
export function markName(name: PhotoMarkName): string {
  return say(`photograph.mark.${name}`);
}
