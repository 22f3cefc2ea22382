import { useMemo, useState } from 'react';
import { Button, FileTrigger } from 'react-aria-components';
import type { CallError } from '../../../app/contract/result.ts';
import type { Athlete } from '../../../core/document/athlete-schema.ts';
import { ATHLETE_COLUMNS, columnName } from '../../../core/roster/athlete-columns.ts';
import { type AthletesTable, athletesFromTable } from '../../../core/roster/athletes-from-table.ts';
import { call } from '../../client/client.ts';
import type { AllAthletes } from '../../client/use-record.ts';
import { today } from '../../language/dates.ts';
import { say, sayCount, sayUnchanged, words } from '../../language/messages.ts';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { renewFormValues } from '../../ui/form/use-form-values.ts';
import type { AthleteValues } from '../athlete/athlete-values.ts';
import { HeadingChoices } from './heading-choices.tsx';
import { readTableFile } from './read-table-file.ts';
import { TablePreview } from './table-preview.tsx';

/** A table that has been read, not imported yet. */
interface Opened {
  readonly name: string;
  readonly cells: readonly (readonly string[])[];
}

/** The chosen table of athletes, its preview, and its import. */
function useImport({ inUse, aside, ready, reload }: AllAthletes) {
  const [opened, setOpened] = useState<Opened | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const [refusal, setRefusal] = useState<CallError | null>(null);
  const [told, setTold] = useState('');
  const known = useMemo(
    () => [...inUse, ...aside].map(({ id, athlete }) => ({ ...athlete, id })),
    [inUse, aside],
  );
  const table = useMemo((): AthletesTable | null => {
    if (!opened || !ready) return null;
    return athletesFromTable(opened.cells, { athletes: known, today: today() });
  }, [opened, ready, known]);

  async function choose(files: FileList | null): Promise<void> {
    const [file] = files ?? [];
    if (!file) return;
    const read = await readTableFile(file);
    setTold('');
    setRefusal(null);
    setProblem('problem' in read ? read.problem : null);
    setOpened('problem' in read ? null : read);
  }

  async function importRows(): Promise<void> {
    if (!opened || table?.kind !== 'read') return;
    setTold('');
    const taken = table.rows.flatMap(({ outcome }) =>
      outcome && outcome.kind !== 'same' ? [outcome.athlete] : [],
    );
    const ids = new Set(taken.map(({ id }) => id));
    const result = await call('athletes.import', {
      athletes: taken,
      opened: known.filter(({ id }) => ids.has(id)),
    });
    setRefusal(result.ok ? null : result.error);
    if (!result.ok) return;
    for (const { id, ...athlete } of taken) {
      if (id) renewFormValues<AthleteValues>(`athlete.${id}`, shownInTable(athlete));
    }
    const bad = table.rows.filter(({ outcome }) => !outcome).map(({ row }) => opened.cells[row - 1]!);
    setOpened(bad.length > 0 ? { ...opened, cells: [opened.cells[0]!, ...bad] } : null);
    setTold(sayCount('table.taken', result.value.saved));
    reload();
  }

  const noNamesIn = opened && table?.kind === 'no-names' ? noNames(opened) : null;
  return { opened, setOpened, table, wrong: problem ?? noNamesIn, refusal, told, choose, importRows };
}

/** Imports a CSV file of athletes: read, looked over row by row, and only then kept. */
export function ImportTable({ everybody }: { everybody: AllAthletes }) {
  const { opened, setOpened, table, wrong, refusal, told, choose, importRows } = useImport(everybody);
  const error = refusal ?? everybody.error;
  return (
    <section>
      <h2>{say('archive.in')}</h2>
      <p className="soft">{say('table.in.about')}</p>
      <details>
        <summary>{say('table.in.columns')}</summary>
        <p>{words().beside(ATHLETE_COLUMNS.map((column) => columnName(column, words())))}</p>
      </details>
      <p>
        <FileTrigger acceptedFileTypes={['.csv', 'text/csv', '.tsv', '.txt']} onSelect={choose}>
          <Button className="button">{say('table.in.do')}</Button>
        </FileTrigger>
      </p>
      {wrong && (
        <p className="error-box" role="alert">
          {wrong}
        </p>
      )}
      {error && <ErrorMessage error={error} />}
      <p role="status">{told}</p>
      {opened && table?.kind === 'no-names' && (
        <HeadingChoices cells={opened.cells} onChange={(cells) => setOpened({ ...opened, cells })} />
      )}
      {opened && table?.kind === 'read' && (
        <TablePreview
          file={opened.name}
          cells={opened.cells}
          table={table}
          onChange={(cells) => setOpened({ ...opened, cells })}
          onImport={importRows}
          onForget={() => setOpened(null)}
        />
      )}
    </section>
  );
}

/** What a table may change of an athlete, for a form of that athlete that was left half filled in. */
function shownInTable({
  name,
  side,
  sex,
  bornOn,
  statureM,
  massKg,
  measuredOn,
  tape,
}: Athlete): Partial<AthleteValues> {
  const days = { bornOn: bornOn ?? '', measuredOn: measuredOn ?? '' };
  return { name, side, sex, statureM, massKg, tape, ...days };
}

function noNames({ name, cells }: Opened): string {
  const headings = (cells[0] ?? []).map((cell) => cell.trim()).filter((cell) => cell !== '');
  return sayUnchanged('table.in.no-names', {
    file: name,
    headings: words().row(headings).slice(0, 300) || say('boat.class.none'),
  });
}
