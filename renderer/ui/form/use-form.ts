import { useRef, useState } from 'react';
import type { CallError, CallResult } from '../../../app/contract/result.ts';
import { type FormRules, type Problems, readForm, withoutPath } from './form-rules.ts';
import { type ValueRule, valueRule } from './schema-at.ts';
import { type FormValues, useFormValues } from './use-form-values.ts';
import { valueAt, withValueAt } from './value-at.ts';

/** One value of a form as its field is given it. */
export interface FieldBinding<T> extends ValueRule {
  readonly name: string;
  readonly value: T;
  onChange(value: T): void;
  readonly problem: string | null;
}

/** Binds the field of a value by its path, of up to four keys. */
interface BindField<V> {
  <A extends keyof V>(a: A): FieldBinding<V[A]>;
  <A extends keyof V, B extends keyof V[A]>(a: A, b: B): FieldBinding<V[A][B]>;
  <A extends keyof V, B extends keyof V[A], C extends keyof V[A][B]>(
    a: A,
    b: B,
    c: C,
  ): FieldBinding<V[A][B][C]>;
  <A extends keyof V, B extends keyof V[A], C extends keyof V[A][B], D extends keyof V[A][B][C]>(
    ...path: [A, B, C, D]
  ): FieldBinding<V[A][B][C][D]>;
}

/** A form while it is being filled in. */
export interface FormState<V> {
  readonly values: V;
  readonly change: (part: Partial<V>) => void;
  readonly at: BindField<V>;
  readonly problems: Problems;
  /** Counts the times that a submission was refused here: each one takes the focus to the summary. */
  readonly refusals: number;
  /** Why the program refused what was submitted. */
  readonly error: CallError | null;
  readonly submit: (event: React.FormEvent) => Promise<void>;
}

export interface FormPlan<V, Out, Saved> {
  readonly start: V;
  /** Name under which unfinished values outlive the page; left out, they do not. */
  readonly keepAs?: string;
  /** Others may change the record meanwhile. */
  readonly shared?: boolean;
  /** Values that live elsewhere, because another page writes to them as well; left out, the form has its own. */
  readonly held?: FormValues<V>;
  /** What else changes with a change. */
  readonly changing?: (values: V, part: Partial<V>) => Partial<V>;
  /** `before`: of a shared record, what others have changed since the unfinished values were begun, as it was then. */
  readonly save: (document: Out, event: React.FormEvent, before: Partial<Out>) => Promise<CallResult<Saved>>;
  readonly onSaved: (saved: Saved, event: React.FormEvent) => void;
}

/** A form over a schema: its values, what is wrong with them, and what is done with the document they make. */
export function useForm<V extends object, Out, Saved>(
  rules: FormRules<V, Out>,
  plan: FormPlan<V, Out, Saved>,
): FormState<V> {
  const own = useFormValues(plan.keepAs ?? null, plan.start, plan.shared);
  const { formValues: values, change: enter, discard } = plan.held ?? own;
  const [problems, setProblems] = useState<Problems>({});
  const [refusals, setRefusals] = useState(0);
  const [error, setError] = useState<CallError | null>(null);
  const busy = useRef(false);

  /** The problems that remain after a change: without those of the changed values and of the whole form. */
  function changedAt(paths: readonly string[], now: Problems): Problems {
    const ofWhole = Object.keys(now).filter((path) => !Object.hasOwn(values, path.split('.')[0]!));
    return [...paths, ...ofWhole].reduce(withoutPath, now);
  }

  function change(part: Partial<V>): void {
    setProblems((now) => changedAt(Object.keys(part), now));
    enter((now) => (plan.changing ? plan.changing(now, part) : part));
  }

  function bind(...path: PropertyKey[]): FieldBinding<unknown> {
    const name = path.join('.');
    return {
      ...valueRule(rules.fields ?? rules.schema, path),
      name,
      value: valueAt(values, path),
      problem: problems[name] ?? null,
      onChange: (value) => {
        const top = path[0] as keyof V;
        setProblems((now) => changedAt([name], now));
        enter((now) => {
          const part: Partial<V> = {};
          part[top] = withValueAt(now, path, value)[top];
          return plan.changing ? plan.changing(now, part) : part;
        });
      },
    };
  }

  async function submit(event: React.FormEvent): Promise<void> {
    event.preventDefault();
    const read = readForm(rules, values);
    setProblems(read.ok ? {} : read.problems);
    if (!read.ok) return setRefusals((n) => n + 1);
    if (busy.current) return;
    busy.current = true;
    const result = await plan.save(read.document, event, fieldsBefore(rules, own.begun));
    busy.current = false;
    setError(result.ok ? null : result.error);
    if (!result.ok) return;
    discard();
    plan.onSaved(result.value, event);
  }

  return { values, change, at: bind as BindField<V>, problems, refusals, error, submit };
}

/** The fields of the document that differ between what unfinished values were begun with and what the form starts with. */
function fieldsBefore<V, Out>(rules: FormRules<V, Out>, begun: FormValues<V>['begun']): Partial<Out> {
  if (!begun) return {};
  const [was, start] = [readForm(rules, begun.was), readForm(rules, begun.start)];
  if (!was.ok || !start.ok) return {};
  const before: Partial<Out> = {};
  for (const key in { ...was.document, ...start.document })
    if (JSON.stringify(was.document[key]) !== JSON.stringify(start.document[key]))
      before[key] = was.document[key];
  return before;
}
