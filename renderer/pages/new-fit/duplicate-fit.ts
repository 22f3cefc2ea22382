import type { CallOutput } from '../../../app/contract/contract.ts';
import type { CallResult } from '../../../app/contract/result.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { call } from '../../client/client.ts';
import { copyName } from './fit-name.ts';

/** Makes a second fit like this one, as it stands, under a name of its own; its revisions stay with the first. */
export async function duplicateFit(fit: Fit): Promise<CallResult<CallOutput<'fits.create'>>> {
  const listed = await call('fits.list', {});
  const taken = listed.ok ? listed.value.map(({ name }) => name) : [fit.name];
  return call('fits.create', { fit: { ...fit, name: copyName(fit.name, taken) } });
}
