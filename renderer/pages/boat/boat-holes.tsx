import { say } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { Field } from '../../ui/form/field.tsx';
import { BLANK_HOLE } from './blank-pieces.ts';
import type { BoatSectionProps } from './boat-values.ts';

const states = () =>
  (['drilled', 'planned', 'plugged'] as const).map((value) => ({ value, name: say(`boat.holes.${value}`) }));

/** Holes that the floorboard has, is to have, or had: fittings snap to the drilled ones, and a plan begins with them. */
export function BoatHoles({ form }: BoatSectionProps) {
  const { holes } = form.values;
  return (
    <section>
      <h2>{say('boat.holes')}</h2>
      <p className="soft">{say('boat.holes.about')}</p>
      {holes.map((_, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a hole is its place in the list
        <div className="entry-row kept-row" key={i}>
          <Field as="length" {...form.at('holes', i, 'fromSternM')} label={say('boat.holes.from-stern')} />
          <Field as="length" {...form.at('holes', i, 'yM')} label={say('boat.holes.to-port')} />
          <Field as="length" {...form.at('holes', i, 'diameterM')} label={say('boat.holes.diameter')} />
          <Field
            as="select"
            {...form.at('holes', i, 'state')}
            label={say('board.state')}
            options={states()}
          />
          <Button
            look="words"
            onClick={() => form.change({ holes: holes.filter((_hole, other) => other !== i) })}
          >
            {say('boat.holes.remove')}
          </Button>
        </div>
      ))}
      <p className="row">
        <Button onClick={() => form.change({ holes: [...holes, BLANK_HOLE] })}>
          {say('boat.holes.add')}
        </Button>
        {holes.some(({ state }) => state === 'planned') && (
          <Button
            onClick={() =>
              form.change({
                holes: holes.map((hole) => (hole.state === 'planned' ? { ...hole, state: 'drilled' } : hole)),
              })
            }
          >
            {say('boat.holes.all-drilled')}
          </Button>
        )}
      </p>
    </section>
  );
}
