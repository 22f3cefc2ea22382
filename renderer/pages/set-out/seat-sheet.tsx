import { useMemo } from 'react';
import type { Hull } from '../../../core/hull/hull.ts';
import { type SeatSetOut, setOutSeat } from '../../../core/setout/set-out.ts';
import type { TemplateDrawing } from '../../../core/setout/template-drawing.ts';
import { templatesOf } from '../../../core/setout/templates.ts';
import { usePaperExport } from '../../client/use-paper-export.ts';
import { solveFit } from '../../document/solved-fit.ts';
import type { FitMoment } from '../../document/use-fit-states.ts';
import { say } from '../../language/messages.ts';
import { useTranslator } from '../../language/use-translator.ts';
import { Button } from '../../ui/button.tsx';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { WorkLine } from '../../ui/work-line.tsx';
import type { Choices } from './choices.ts';
import { SheetPreview } from './sheet-preview.tsx';
import { TemplateChoice } from './template-choice.tsx';

/** One seat of a setting: its sheet, its templates, and the files that can be had of them. */
export function SeatSheet(props: {
  moment: FitMoment;
  choices: Choices;
  onChange: (change: Partial<Choices>) => void;
}) {
  const { moment, choices } = props;
  const { fit } = moment;
  const { seat, options } = choices;
  const words = useTranslator(choices.language);
  const known = useMemo(() => solveFit(fit), [fit]);
  const out = useMemo(
    () =>
      typeof known === 'string'
        ? null
        : setOutSeat({ fit, report: known.report, index: seat, options, words }),
    [fit, known, seat, options, words],
  );
  if (typeof known === 'string') return <p role="alert">{say('setout.broken', { why: known })}</p>;
  if (!out) return <p>{say('show.nobody')}</p>;
  return <Papers {...props} out={out} hull={known.hull} />;
}

interface PapersProps {
  readonly moment: FitMoment;
  readonly choices: Choices;
  readonly out: SeatSetOut;
  readonly hull: Hull;
  readonly onChange: (change: Partial<Choices>) => void;
}

function Papers(props: PapersProps) {
  const { moment, choices, out, hull } = props;
  const { fit, revision } = moment;
  const drawings = useMemo(() => templatesOf(out), [out]);
  const stamp = {
    fitName: fit.name,
    boatName: fit.boat.name,
    athleteName: out.work.athlete.name,
    revision: revision.number,
    revisionName: revision.name,
    mark: revision.mark,
    keptAt: revision.keptAt,
  };
  return (
    <>
      <Files {...props} drawings={drawings} />
      <SheetPreview out={out} hull={hull} paper={choices.paper} stamp={stamp} />
      <section className="set-out-templates">
        <h2>{say('setout.templates')}</h2>
        <p className="soft">{say('setout.templates.about')}</p>
        <TemplateChoice
          drawings={drawings}
          chosen={choices.templates}
          paper={choices.paper}
          units={choices.options.units}
          onChange={(templates) => props.onChange({ templates })}
        />
      </section>
    </>
  );
}

/** Buttons that make the files, how far one has come, and what came of it. */
function Files({ moment, choices, drawings, out }: PapersProps & { drawings: readonly TemplateDrawing[] }) {
  const { fit, revision } = moment;
  const { seat, paper, options, language } = choices;
  const { busy, told, refusal, make } = usePaperExport();
  const { shelf } = out.work;
  const hasSolids = !shelf.pad || !shelf.rest;
  const templates = drawings.map(({ id }) => id).filter((id) => choices.templates.includes(id));
  const sheet = () =>
    void make({ language, fit, revision, wanted: { kind: 'set-out-sheet', seat, paper, options } });
  const cut = (format: 'pdf' | 'svg' | 'dxf') =>
    void make({
      language,
      fit,
      revision,
      wanted: { kind: 'templates', seat, paper, options, format, templates },
    });
  return (
    <div className="set-out-files stack">
      <div className="row">
        <Button look="chief" disabled={busy} onClick={sheet}>
          {say('setout.sheet.pdf')}
        </Button>
        {(['pdf', 'svg', 'dxf'] as const).map((format) => (
          <Button key={format} disabled={busy || templates.length === 0} onClick={() => cut(format)}>
            {say(`setout.templates.${format}`)}
          </Button>
        ))}
      </div>
      <div className="row">
        <span className="soft">{say('setout.solids')}</span>
        {(['step', '3mf', 'stl'] as const).map((format) => (
          <Button
            key={format}
            disabled={busy || !hasSolids}
            onClick={() =>
              void make({ language, fit, revision, wanted: { kind: 'solids', seat, options, format } })
            }
          >
            {say(`setout.solids.${format}`)}
          </Button>
        ))}
      </div>
      <p className="field-hint">{say('setout.solids.about')}</p>
      {templates.length === 0 && <p className="field-hint">{say('setout.templates.none')}</p>}
      <WorkLine active={busy} />
      <p role="status">{told}</p>
      {refusal && <ErrorMessage error={refusal} />}
    </div>
  );
}
