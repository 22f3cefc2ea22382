import { stockPad, stockRest } from '../../../core/document/stock-schema.ts';
import { say } from '../../language/messages.ts';
import { limitsOf } from '../../ui/fields/limits-of.ts';
import { MeasureField } from '../../ui/fields/measure-field.tsx';
import type { MeasureKind } from '../../ui/fields/measure-kinds.ts';
import { TextField } from '../../ui/fields/text-field.tsx';
import type { FittingsProps } from './fittings-props.ts';
import { BLANK_PAD, BLANK_REST, type PadEntry, type RestEntry } from './kept-entries.ts';

const pad = stockPad.shape;
const rest = stockRest.shape;

interface Figure<K extends string> {
  readonly key: K;
  readonly label: string;
  readonly kind?: MeasureKind;
  readonly limits: { readonly min: number; readonly max: number };
}

const count = limitsOf(pad.count.unwrap());

const padFigures = (): readonly Figure<Exclude<keyof PadEntry, 'name'>>[] => [
  { key: 'count', label: say('boat.stock.count'), kind: 'number', limits: count },
  { key: 'lengthM', label: say('boat.stock.length'), limits: limitsOf(pad.lengthM) },
  { key: 'widthM', label: say('boat.stock.width'), limits: limitsOf(pad.widthM) },
  { key: 'heightM', label: say('boat.stock.pad-height'), limits: limitsOf(pad.heightM) },
  { key: 'recessDepthM', label: say('boat.stock.recess'), limits: limitsOf(pad.recessDepthM) },
  { key: 'foamM', label: say('boat.stock.foam'), limits: limitsOf(pad.foamM.unwrap()) },
  { key: 'foamGiveM', label: say('boat.stock.give'), limits: limitsOf(pad.foamGiveM) },
];

const restFigures = (): readonly Figure<Exclude<keyof RestEntry, 'name'>>[] => [
  { key: 'count', label: say('boat.stock.count'), kind: 'number', limits: count },
  { key: 'widthM', label: say('boat.stock.width'), limits: limitsOf(rest.widthM) },
  { key: 'heightM', label: say('boat.stock.rest-height'), limits: limitsOf(rest.heightM) },
  { key: 'tiltDeg', label: say('boat.stock.tilt'), kind: 'angle', limits: limitsOf(rest.tiltDeg) },
  { key: 'foamM', label: say('boat.stock.foam'), limits: limitsOf(rest.foamM.unwrap()) },
];

/** Pads and rests that are kept with the boat. */
export function BoatStock({ entries, problems, onChange }: FittingsProps) {
  const { pads, rests } = entries;
  return (
    <section>
      <h2>{say('boat.stock')}</h2>
      <p className="soft">{say('boat.stock.about')}</p>
      <Pieces
        title={say('boat.stock.pads')}
        add={say('boat.stock.add-pad')}
        pieces={pads}
        blank={BLANK_PAD}
        figures={padFigures()}
        problem={(i, key) => problems[`stock.pads.${i}.${key}`]}
        onChange={(changed) => onChange({ pads: changed })}
      />
      <Pieces
        title={say('boat.stock.rests')}
        add={say('boat.stock.add-rest')}
        pieces={rests}
        blank={BLANK_REST}
        figures={restFigures()}
        problem={(i, key) => problems[`stock.rests.${i}.${key}`]}
        onChange={(changed) => onChange({ rests: changed })}
      />
    </section>
  );
}

type Piece<K extends string> = { readonly name: string } & { readonly [P in K]: number | null };

function Pieces<K extends string, P extends Piece<K>>(props: {
  title: string;
  add: string;
  pieces: readonly P[];
  blank: P;
  figures: readonly Figure<K>[];
  problem: (at: number, key: string) => string | undefined;
  onChange: (pieces: readonly P[]) => void;
}) {
  const { pieces, figures, problem, onChange } = props;
  const set = (at: number, part: Partial<P>) =>
    onChange(pieces.map((piece, i) => (i === at ? { ...piece, ...part } : piece)));
  return (
    <div className="stack">
      <h3 className="lettering">{props.title}</h3>
      {pieces.map((piece, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a piece is its place in the list
        <div className="entry-row kept-row" key={i}>
          <TextField
            label={say('boat.stock.name')}
            value={piece.name}
            onChange={(name) => set(i, { name } as Partial<P>)}
            problem={piece.name.trim() === '' ? problem(i, 'name') : null}
          />
          {figures.map(({ key, label, kind = 'length', limits }) => (
            <MeasureField
              key={key}
              label={label}
              kind={kind}
              value={piece[key]}
              {...limits}
              onEnter={(value) =>
                set(i, { [key]: kind === 'number' ? Math.round(value) : value } as Partial<P>)
              }
              problem={piece[key] === null ? problem(i, key) : null}
            />
          ))}
          <button
            type="button"
            className="button words"
            onClick={() => onChange(pieces.filter((_, other) => other !== i))}
          >
            {say('boat.stock.remove', { name: piece.name || say('boat.stock.nameless') })}
          </button>
        </div>
      ))}
      <p>
        <button type="button" className="button" onClick={() => onChange([...pieces, props.blank])}>
          {props.add}
        </button>
      </p>
    </div>
  );
}
