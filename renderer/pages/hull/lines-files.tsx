import { useState } from 'react';
import type { CallError } from '../../../app/contract/result.ts';
import type { Hull } from '../../../core/hull/hull.ts';
import { offsetsOut } from '../../../core/hull/offsets-out.ts';
import { sectionsOut } from '../../../core/hull/sections-out.ts';
import { call } from '../../client/client.ts';
import { fetchDelivery } from '../../client/upload.ts';
import { useTableExport } from '../../client/use-table-export.ts';
import { useDisplay } from '../../display/use-display.ts';
import { say, words } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { LanguageChoice } from '../../ui/fields/language-choice.tsx';

/** Buttons for a hull's offsets as a table and its sections at full size. */
export function LinesFiles({ id, hull, name }: { id: string; hull: Hull; name: string }) {
  const table = useTableExport();
  const [refusal, setRefusal] = useState<CallError | null>(null);
  const [language, setLanguage] = useState(words().language);
  const inches = useDisplay().length === 'in';

  async function sections(format: 'pdf' | 'svg' | 'dxf'): Promise<void> {
    const [paper, units] = inches ? (['Letter', 'in'] as const) : (['A4', 'mm'] as const);
    const result = await call('boats.sections', { id, format, paper, units, language });
    setRefusal(result.ok ? null : result.error);
    if (result.ok && result.value.kind === 'download') fetchDelivery(result.value.href);
  }

  const problem = table.refusal ?? refusal;
  return (
    <>
      <div className="row">
        <LanguageChoice value={language} onChange={setLanguage} />
        <Button onClick={() => void table.exportTable(say('hull.offsets.file', { name }), offsetsOut(hull))}>
          {say('hull.offsets.csv')}
        </Button>
        <Button
          onClick={() =>
            void table.exportTable(words().row([say('hull.sections.title'), name]), sectionsOut(hull))
          }
        >
          {say('hull.sections.file', { format: 'CSV' })}
        </Button>
        {(['pdf', 'svg', 'dxf'] as const).map((format) => (
          <Button key={format} onClick={() => void sections(format)}>
            {say('hull.sections.file', { format: format.toUpperCase() })}
          </Button>
        ))}
      </div>
      <p role="status">{table.told}</p>
      {problem && <ErrorMessage error={problem} />}
    </>
  );
}
