import type { CallError } from '../../../app/contract/result.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { call } from '../../client/client.ts';
import { go } from '../../route/route.ts';

/** The longest name that a fit may have. */
const LONGEST_NAME = 120;

/** The name of a copy: "Spring (2)"; of that one, "Spring (3)". A name never grows a tail. */
export function copyName(name: string): string {
  const [, stem, number] = /^(.*) \((\d+)\)$/.exec(name) ?? [null, name, '1'];
  const tail = ` (${Number(number) + 1})`;
  return stem!.slice(0, LONGEST_NAME - tail.length) + tail;
}

/** Makes a fit like this one, as it stands, and opens it. Gives back why not, or null. */
export async function duplicateFit(fit: Fit): Promise<CallError | null> {
  const made = await call('fits.create', { fit: { ...fit, name: copyName(fit.name) } });
  if (!made.ok) return made.error;
  go({ page: 'fit', id: made.value.id });
  return null;
}
