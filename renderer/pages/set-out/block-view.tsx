import type { SheetBlock } from '../../../core/setout/sheet-block.ts';

/** A headed part of the sheet: sentences, a table, or short entries side by side. */
export function BlockView({ block }: { block: SheetBlock }) {
  return (
    <section className="sheet-block">
      <h3>{block.heading}</h3>
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
    <ul className="cautions" data-strong={block.strong || undefined}>
      {items}
    </ul>
  );
}

function Table({ block: { columns, cells } }: { block: Extract<SheetBlock, { kind: 'table' }> }) {
  const look = (index: number) => (columns[index]?.anchor === 'end' ? 'numeric' : undefined);
  return (
    <div className="table-scroll">
      <table className="ruled sheet-table">
        <thead>
          <tr>
            {columns.map(({ title }, index) => (
              <th key={title} scope="col" className={look(index)}>
                {title}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {cells.map(([first, ...rest]) => (
            <tr key={first}>
              <th scope="row" data-strong={columns[0]?.strong || undefined}>
                {first}
              </th>
              {rest.map((text, index) => (
                <td
                  key={columns[index + 1]?.title}
                  className={look(index + 1)}
                  data-strong={columns[index + 1]?.strong || undefined}
                >
                  {text}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
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
