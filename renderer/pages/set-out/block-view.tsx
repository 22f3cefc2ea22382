import type { SheetBlock } from '../../../core/setout/sheet-block.ts';
import { Explained } from '../../language/explained.tsx';
import { DataTable } from '../../ui/table/data-table.tsx';

/** A headed part of the sheet: sentences, a table, or short entries side by side. */
export function BlockView({ block }: { block: SheetBlock }) {
  return (
    <section className="sheet-block">
      <h3>
        <Explained text={block.heading} />
      </h3>
      <Body block={block} />
    </section>
  );
}

function Body({ block }: { block: SheetBlock }) {
  switch (block.kind) {
    case 'list':
      return <Sentences block={block} />;
    case 'table':
      return <Table block={block} />;
    case 'grid':
      return <Grid block={block} />;
  }
}

function Sentences({ block }: { block: Extract<SheetBlock, { kind: 'list' }> }) {
  const items = block.sentences.map((sentence) => <li key={sentence}>{sentence}</li>);
  return block.numbered ? (
    <ol className="sheet-steps">{items}</ol>
  ) : (
    <ul className="sheet-cautions" data-strong={block.strong || undefined}>
      {items}
    </ul>
  );
}

function Table({ block: { columns, cells } }: { block: Extract<SheetBlock, { kind: 'table' }> }) {
  return (
    <div className="table-scroll">
      <DataTable
        className="ruled sheet-table"
        rows={cells}
        rowKey={([first]) => first ?? ''}
        columns={columns.map(({ title, anchor, strong }, index) => ({
          title,
          isName: index === 0,
          numeric: anchor === 'end',
          cellMarks: () => ({ 'data-strong': strong || undefined }),
          cell: (row: readonly string[]) => row[index],
        }))}
      />
    </div>
  );
}

function Grid({ block }: { block: Extract<SheetBlock, { kind: 'grid' }> }) {
  return (
    <>
      {block.sentence !== null && <p>{block.sentence}</p>}
      <dl className="sheet-grid" style={{ '--per-row': String(block.perRow) } as React.CSSProperties}>
        {block.entries.map(({ label, value, now }) => (
          <div key={`${label} ${value}`} className="sheet-grid-entry" data-now={now || undefined}>
            <dt>{label}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}
