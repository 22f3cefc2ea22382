import { useState } from 'react';
import type { StockPaddleDocument } from '../../../core/document/stock-paddle-schema.ts';
import { call } from '../../client/client.ts';
import { say } from '../../language/messages.ts';
import { go, hrefOf } from '../../route/route.ts';
import { Button } from '../../ui/button.tsx';
import { Field } from '../../ui/form/field.tsx';
import { Form } from '../../ui/form/form.tsx';
import { useForm } from '../../ui/form/use-form.ts';
import { BLANK_PADDLE, PADDLE_RULES } from './paddle-rules.ts';

/** The form of one of the club's paddles. */
export function PaddleForm({ paddle, id }: { paddle: StockPaddleDocument | null; id: string | undefined }) {
  const [opened] = useState(paddle ?? undefined);
  const form = useForm(PADDLE_RULES, {
    start: paddle ?? BLANK_PADDLE,
    save: (made) => call('paddles.save', { paddle: id ? { ...made, id } : made, opened }),
    onSaved: () => go({ page: 'paddles' }),
  });
  return (
    <Form
      form={form}
      buttons={
        <>
          <Button type="submit" look="chief">
            {say('trial.keep')}
          </Button>
          <a className="button" href={hrefOf({ page: 'paddles' })}>
            {say('revisions.cancel')}
          </a>
        </>
      }
    >
      <section className="entry-grid">
        <Field as="text" {...form.at('name')} label={say('paddles.entry.name')} />
        <Field as="length" {...form.at('lengthM')} label={say('paddles.entry.length')} />
        <Field
          as="length"
          {...form.at('bladeLengthM')}
          label={say('paddles.entry.blade')}
          hint={say('paddles.entry.blade.hint')}
        />
        <Field as="angle" {...form.at('bladeAngleDeg')} label={say('paddle.blade-angle')} stepped />
        <Field as="mass" {...form.at('massKg')} label={say('boat.class-check.least-mass')} />
        <Field as="text" {...form.at('note')} label={say('paddles.note')} />
      </section>
    </Form>
  );
}
