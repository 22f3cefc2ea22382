import { useRef } from 'react';
import { ErrorMessage } from '../error-message.tsx';
import { FormSummary } from './form-summary.tsx';
import type { FormState } from './use-form.ts';

/**
 * A form: the problems at the top, the buttons below the fields. Enter goes on to the next entry that is needed and still
 * empty; where none is left, it submits.
 */
export function Form<V>(props: {
  form: FormState<V>;
  className?: string;
  buttons: React.ReactNode;
  buttonsAtEnd?: boolean;
  children: React.ReactNode;
}) {
  const { form } = props;
  const place = useRef<HTMLFormElement>(null);
  return (
    <form
      ref={place}
      className={props.className ?? 'entries'}
      onSubmit={form.submit}
      onKeyDown={goOnWithEnter}
      noValidate
    >
      <FormSummary form={form} place={place} />
      {props.children}
      {form.error && <ErrorMessage error={form.error} />}
      <div className={props.buttonsAtEnd ? 'row ends' : 'row'}>{props.buttons}</div>
    </form>
  );
}

function goOnWithEnter(event: React.KeyboardEvent<HTMLFormElement>): void {
  const { target } = event;
  if (event.key !== 'Enter' || event.defaultPrevented || !(target instanceof HTMLInputElement)) return;
  const needed = [...event.currentTarget.querySelectorAll<HTMLInputElement>('input[aria-required="true"]')];
  const next = needed.find((input) => input.value === '' && comesAfter(input, target));
  if (!next) return;
  event.preventDefault();
  next.focus();
}

function comesAfter(one: Node, other: Node): boolean {
  return Boolean(other.compareDocumentPosition(one) & Node.DOCUMENT_POSITION_FOLLOWING);
}
