import { useState } from 'react';
import type { FieldConflictRecord } from '../../../app/contract/conflicts.ts';
import type { CallError } from '../../../app/contract/result.ts';
import { call } from '../../client/client.ts';
import { useFormat } from '../../display/use-display.ts';
import { instantText } from '../../language/dates.ts';
import { say, words } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { DataTable } from '../../ui/table/data-table.tsx';
import { fieldName, fieldValueText } from './field-text.ts';

type Value = FieldConflictRecord['values'][number];

/** Fields that were changed in two places, such as two computers: the values side by side, and a button for each. */
export function Conflicts(props: {
  open: readonly FieldConflictRecord[];
  onRefused: (error: CallError | null) => void;
}) {
  const [open, setOpen] = useState(props.open);
  const [busy, setBusy] = useState(false);

  async function decide({ kind, id, path }: FieldConflictRecord, { value }: Value): Promise<void> {
    setBusy(true);
    const result = await call('conflicts.decide', { kind, id, path, value });
    setBusy(false);
    props.onRefused(result.ok ? null : result.error);
    if (result.ok) setOpen(result.value);
  }

  return (
    <section aria-label={say('conflicts.title')}>
      <h2>{say('conflicts.title')}</h2>
      {open.length === 0 ? (
        <p className="soft">{say('conflicts.none')}</p>
      ) : (
        <>
          <p>{say('conflicts.about')}</p>
          <DataTable
            rows={open}
            rowKey={({ kind, id, path }) => `${kind} ${id} ${path}`}
            columns={[
              {
                title: say('conflicts.what'),
                isName: true,
                cell: ({ kind, title, path }) => (
                  <>
                    <span className="soft">{say(`conflicts.kind.${kind}`)}</span>{' '}
                    {say('conflicts.of', { title, field: fieldName(path) })}
                  </>
                ),
              },
              {
                title: say('values.title'),
                cell: (conflict) => (
                  <Values conflict={conflict} busy={busy} onDecide={(value) => decide(conflict, value)} />
                ),
              },
            ]}
          />
        </>
      )}
    </section>
  );
}

function Values(props: { conflict: FieldConflictRecord; busy: boolean; onDecide: (value: Value) => void }) {
  const format = useFormat();
  const { path, values } = props.conflict;
  return (
    <div className="stack">
      {values.map((value, i) => {
        const text = fieldValueText(path, value.value, format);
        return (
          <div key={value.value ?? ''} className="row ends">
            <span>
              <strong>{text}</strong>{' '}
              <span className="soft">
                {words().beside([writtenBy(value), i === 0 ? say('conflicts.counts') : ''])}
              </span>
            </span>
            <Button look="words" disabled={props.busy} onClick={() => props.onDecide(value)}>
              {say('conflicts.take', { value: text })}
            </Button>
          </div>
        );
      })}
    </div>
  );
}

function writtenBy({ here, at }: Value): string {
  const when = at ? instantText(at) : '–';
  return say(here ? 'conflicts.here' : 'conflicts.there', { when });
}
