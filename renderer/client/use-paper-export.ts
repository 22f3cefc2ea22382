import { useState } from 'react';
import type { CallInput } from '../../app/contract/contract.ts';
import type { CallError } from '../../app/contract/result.ts';
import { say, words } from '../language/messages.ts';
import { call } from './client.ts';
import { fetchDelivery } from './upload.ts';

/** Making a paper file: whether it is being made, the result in words, and why it was refused. */
export interface PaperExport {
  readonly busy: boolean;
  readonly told: string;
  readonly refusal: CallError | null;
  readonly make: (input: CallInput<'paper.export'>) => Promise<void>;
}

/** One piece of paper at a time. Stopping it is `work.cancel`; nothing is then written. */
export function usePaperExport(): PaperExport {
  const [busy, setBusy] = useState(false);
  const [told, setTold] = useState('');
  const [refusal, setRefusal] = useState<CallError | null>(null);

  async function make(input: CallInput<'paper.export'>): Promise<void> {
    setBusy(true);
    setTold('');
    setRefusal(null);
    const result = await call('paper.export', { language: words().language, ...input });
    setBusy(false);
    if (!result.ok) return setRefusal(result.error);
    const { delivery, unprintable } = result.value;
    const boxes = unprintable.length > 0 ? say('paper.boxes', { scripts: words().row(unprintable) }) : '';
    if (delivery.kind === 'download') fetchDelivery(delivery.href);
    setTold(words().sentences([deliveryText(delivery), boxes].filter(Boolean)));
  }

  return { busy, told, refusal, make };
}

function deliveryText(
  delivery: { kind: 'saved'; path: string } | { kind: 'download' | 'cancelled' },
): string {
  switch (delivery.kind) {
    case 'saved':
      return say('paper.saved', { path: delivery.path });
    case 'download':
      return say('paper.fetched');
    case 'cancelled':
      return say('board.not-kept');
  }
}
