import type { MessageKey } from '../../language/messages.ts';
import { say } from '../../language/messages.ts';
import { Button } from '../button.tsx';

/** Rows of entries, possibly none: each has its fields and a button that removes it; one more button adds a row. */
export function EntryRows<Row>(props: {
  rows: readonly Row[];
  blank: Row;
  onChange: (rows: readonly Row[]) => void;
  /** The fields of the row at a place in the list. */
  fields: (index: number) => React.ReactNode;
  add: MessageKey;
  remove: MessageKey;
  /** The most rows that may be added. */
  most?: number;
  className?: string;
}) {
  const { rows, blank, onChange, fields, most = Number.POSITIVE_INFINITY } = props;
  return (
    <>
      {rows.map((_, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place in the list
        <div className={`entry-row ${props.className ?? ''}`} key={index}>
          {fields(index)}
          <Button look="words" onClick={() => onChange(rows.filter((__, other) => other !== index))}>
            {say(props.remove)}
          </Button>
        </div>
      ))}
      <p>
        <Button disabled={rows.length >= most} onClick={() => onChange([...rows, blank])}>
          {say(props.add)}
        </Button>
      </p>
    </>
  );
}
