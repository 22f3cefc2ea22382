import { useEffect, useRef, useState } from 'react';
import { sayCount } from '../../language/messages.ts';
import { Button } from '../button.tsx';
import type { Problems } from './form-rules.ts';
import type { FormState } from './use-form.ts';

/** One line of the summary. */
interface SummaryLine {
  readonly path: string;
  /** What the field is called; null for a problem of no one field. */
  readonly label: string | null;
  readonly text: string;
}

/** The problems that keep a form from being saved; each line links to its field. It takes the focus when it appears. */
export function FormSummary<V>(props: {
  form: FormState<V>;
  place: React.RefObject<HTMLFormElement | null>;
}) {
  const { form, place } = props;
  const box = useRef<HTMLDivElement>(null);
  const [lines, setLines] = useState<readonly SummaryLine[]>([]);
  useEffect(() => {
    setLines(place.current ? linesOf(place.current, form.problems) : []);
  }, [form.problems, place]);
  useEffect(() => {
    if (form.refusals > 0) box.current?.focus();
  }, [form.refusals]);
  return (
    <div
      ref={box}
      className="error-box stack"
      role="alert"
      tabIndex={-1}
      hidden={Object.keys(form.problems).length === 0}
    >
      <p>{sayCount('form.wrong', Math.max(1, lines.length))}</p>
      <ul>
        {lines.map(({ path, label, text }) => (
          <li key={path}>
            {label === null ? (
              text
            ) : (
              <>
                <Button look="words" onClick={() => focusField(place.current, path)}>
                  {label}
                </Button>
                {`: ${text}`}
              </>
            )}
          </li>
        ))}
      </ul>
    </div>
  );
}

const ENTRY = 'input, select, textarea, button';

/** The field of a path, or the first field of what stands at it. */
function fieldAt(form: HTMLFormElement | null, path: string): HTMLElement | null {
  const name = CSS.escape(path);
  return form?.querySelector<HTMLElement>(`[data-field="${name}"], [data-field^="${name}."]`) ?? null;
}

function focusField(form: HTMLFormElement | null, path: string): void {
  fieldAt(form, path)?.querySelector<HTMLElement>(ENTRY)?.focus();
}

/** The problems in the order of their fields on the page, those of no field first. A text that its field refused says why. */
function linesOf(form: HTMLFormElement, problems: Problems): SummaryLine[] {
  const order = [...form.querySelectorAll<HTMLElement>('[data-field]')];
  return Object.entries(problems)
    .map(([path, text]) => ({ path, text, field: fieldAt(form, path) }))
    .sort((a, b) => (a.field ? order.indexOf(a.field) : -1) - (b.field ? order.indexOf(b.field) : -1))
    .map(({ path, text, field }) => ({
      path,
      text: field?.querySelector('.field-problem')?.textContent ?? text,
      label: field && (field.firstElementChild?.textContent ?? path),
    }));
}
