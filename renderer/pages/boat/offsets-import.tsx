import { useState } from 'react';
import { Button, FileTrigger } from 'react-aria-components';
import type { OffsetsHull } from '../../../core/document/hull-kinds-schema.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';
import { offsetsOfCsv, type ReadOffsets } from './offsets-of-csv.ts';

/** Imports a table of offsets from a CSV file; a file that is not one is explained and changes nothing. */
export function OffsetsImport(props: { offsets: OffsetsHull | null; onRead: (hull: OffsetsHull) => void }) {
  const [file, setFile] = useState<string | null>(null);
  const [shift, setShift] = useState<Shift>({ x: 0, z: 0 });
  const [problems, setProblems] = useState<readonly string[]>([]);

  async function read(files: FileList | null): Promise<void> {
    const chosen = files?.[0];
    if (!chosen) return;
    const result = offsetsOfCsv(await chosen.text());
    if ('problems' in result) return setProblems(result.problems);
    setProblems([]);
    setFile(chosen.name);
    setShift(result.shift);
    props.onRead(result.hull);
  }

  const { offsets } = props;
  const points = offsets?.stations.reduce((sum, { section }) => sum + section.length, 0) ?? 0;
  return (
    <div className="stack">
      <p className="soft">{say('boat.offsets.about')}</p>
      <div className="entry-row">
        <FileTrigger acceptedFileTypes={['.csv', 'text/csv', '.txt', '.tsv']} onSelect={read}>
          <Button className="button">{say('boat.offsets.read')}</Button>
        </FileTrigger>
      </div>
      {problems.length > 0 && (
        <div className="error-box" role="alert">
          <ul>
            {problems.map((problem) => (
              <li key={problem}>{problem}</li>
            ))}
          </ul>
          <p>{say('boat.offsets.nothing-kept')}</p>
        </div>
      )}
      <p role="status">
        {!offsets && say('boat.offsets.none')}
        {offsets && file && say('boat.offsets.got', { file, stations: offsets.stations.length, points })}
        {offsets && file && <ZeroMoved shift={shift} />}
        {offsets && !file && say('boat.offsets.kept', { stations: offsets.stations.length })}
      </p>
    </div>
  );
}

type Shift = Extract<ReadOffsets, { hull: unknown }>['shift'];

/** That the table's zero was not the boat's, and where the boat's own is in it. */
function ZeroMoved({ shift: { x, z } }: { shift: Shift }) {
  const format = useFormat();
  if (x === 0 && z === 0) return null;
  return <> {say('boat.offsets.zero', { along: format.length(x), height: format.length(z) })}</>;
}
