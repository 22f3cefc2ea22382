import { useState } from 'react';
import type { CallError } from '../../app/contract/result.ts';
import { say } from '../language/messages.ts';
import { call } from './client.ts';
import { fetchDelivery } from './upload.ts';

/** Exports tables as CSV files; says where a file was saved, or why not. */
export function useTableExport() {
  const [refusal, setRefusal] = useState<CallError | null>(null);
  const [told, setTold] = useState('');
  async function exportTable(name: string, rows: string[][]): Promise<void> {
    const result = await call('tables.export', { name, rows });
    setRefusal(result.ok ? null : result.error);
    setTold('');
    if (!result.ok) return;
    if (result.value.kind === 'download') fetchDelivery(result.value.href);
    if (result.value.kind === 'saved') setTold(say('paper.saved', { path: result.value.path }));
  }
  return { exportTable, refusal, told };
}
