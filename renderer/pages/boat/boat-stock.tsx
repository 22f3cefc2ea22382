import { say } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { Field } from '../../ui/form/field.tsx';
import { BLANK_PAD, BLANK_REST } from './blank-pieces.ts';
import type { BoatSectionProps } from './boat-values.ts';

/** Pads and rests that are kept with the boat. */
export function BoatStock({ form }: BoatSectionProps) {
  const { pads, rests } = form.values;
  return (
    <section>
      <h2>{say('boat.stock')}</h2>
      <Pieces
        title={say('boat.stock.pads')}
        names={pads.map(({ name }) => name)}
        fields={(i) => <PadFields form={form} at={i} />}
        add={say('boat.stock.add-pad')}
        onAdd={() => form.change({ pads: [...pads, BLANK_PAD] })}
        onRemove={(at) => form.change({ pads: pads.filter((_, i) => i !== at) })}
      />
      <Pieces
        title={say('boat.stock.rests')}
        names={rests.map(({ name }) => name)}
        fields={(i) => <RestFields form={form} at={i} />}
        add={say('boat.stock.add-rest')}
        onAdd={() => form.change({ rests: [...rests, BLANK_REST] })}
        onRemove={(at) => form.change({ rests: rests.filter((_, i) => i !== at) })}
      />
    </section>
  );
}

function Pieces(props: {
  title: string;
  names: readonly string[];
  fields: (at: number) => React.ReactNode;
  add: string;
  onAdd: () => void;
  onRemove: (at: number) => void;
}) {
  return (
    <div className="stack">
      <h3 className="lettering">{props.title}</h3>
      {props.names.map((name, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a piece is its place in the list
        <div className="entry-row kept-row" key={i}>
          {props.fields(i)}
          <Button look="words" onClick={() => props.onRemove(i)}>
            {say('boat.stock.remove', { name: name || say('boat.stock.nameless') })}
          </Button>
        </div>
      ))}
      <p>
        <Button onClick={props.onAdd}>{props.add}</Button>
      </p>
    </div>
  );
}

function PadFields({ form, at }: BoatSectionProps & { at: number }) {
  return (
    <>
      <Field as="text" {...form.at('pads', at, 'name')} label={say('boat.name')} />
      <Field as="number" {...form.at('pads', at, 'count')} label={say('boat.stock.count')} />
      <Field as="length" {...form.at('pads', at, 'lengthM')} label={say('measure.paddle.lengthM')} />
      <Field as="length" {...form.at('pads', at, 'widthM')} label={say('measures.block.widthM')} />
      <Field as="length" {...form.at('pads', at, 'heightM')} label={say('boat.stock.pad-height')} />
      <Field as="length" {...form.at('pads', at, 'recessDepthM')} label={say('boat.stock.recess')} />
      <Field as="length" {...form.at('pads', at, 'foamM')} label={say('boat.stock.foam')} />
      <Field as="length" {...form.at('pads', at, 'foamGiveM')} label={say('boat.stock.give')} />
    </>
  );
}

function RestFields({ form, at }: BoatSectionProps & { at: number }) {
  return (
    <>
      <Field as="text" {...form.at('rests', at, 'name')} label={say('boat.name')} />
      <Field as="number" {...form.at('rests', at, 'count')} label={say('boat.stock.count')} />
      <Field as="length" {...form.at('rests', at, 'widthM')} label={say('measures.block.widthM')} />
      <Field as="length" {...form.at('rests', at, 'heightM')} label={say('boat.stock.rest-height')} />
      <Field as="angle" {...form.at('rests', at, 'tiltDeg')} label={say('boat.stock.tilt')} />
      <Field as="length" {...form.at('rests', at, 'foamM')} label={say('boat.stock.foam')} />
    </>
  );
}
