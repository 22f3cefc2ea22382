import { useEffect, useRef, useState } from 'react';
import { useFormat } from '../../../display/use-display.ts';
import { say } from '../../../language/messages.ts';
import { Tick } from '../../../ui/fields/tick.tsx';
import { useBenchView, useFit } from '../../bench-context.tsx';
import { legendRoom, PlotFigure } from './plot-figure.tsx';
import { StrokeInputs } from './stroke-inputs.tsx';
import { strokePlots } from './stroke-plots.ts';
import { StrokeSlider } from './stroke-slider.tsx';
import { StrokeTable } from './stroke-table.tsx';
import { ROWS_PER_LEG, useStroke } from './use-stroke.ts';
import './stroke.css';
import { Explained } from '../../../language/explained.tsx';

/** The tab of the margin for the stroke: slider, plots, pitching, and how the paddler strokes. */
export function StrokeTab() {
  const occupied = useFit(({ fit, seat }) => fit.seats[seat]?.athlete != null);
  return occupied ? <Stroke /> : <p className="soft">{say('drawing.nobody')}</p>;
}

function Stroke() {
  const format = useFormat();
  const seat = useFit((state) => state.seat);
  const side = useFit(({ fit }) => fit.seats[seat]!.side);
  const stroke = useStroke();
  const element = useCursor();
  const plots = strokePlots(stroke.rows, { seat, side, format });
  return (
    <div className="stroke" ref={element} style={legendRoom(plots ?? [])}>
      <StrokeSlider crew={stroke.crew} />
      <Outlines />
      {plots ? (
        <>
          <h2 className="lettering">{say('stroke.plots')}</h2>
          {plots.map((plot) => (
            <PlotFigure key={plot.id} plot={plot} />
          ))}
          <StrokeTable plots={plots} perLeg={ROWS_PER_LEG} />
          <p className="soft">
            <Explained text={say('stroke.about')} />
          </p>
        </>
      ) : (
        <p className="soft">{say('drawing.strip.not-afloat')}</p>
      )}
      <h2 className="lettering">
        <Explained text={say('stroke.inputs')} />
      </h2>
      <StrokeInputs />
    </div>
  );
}

/** Catch and exit beside the figure drawn. */
function Outlines() {
  const { strokeView } = useBenchView();
  const [shown, setShown] = useState(false);
  function show(on: boolean): void {
    setShown(on);
    strokeView.setState({ outlines: on });
  }
  return <Tick name={say('stroke.outlines')} isOn={shown} onChange={show} />;
}

/** Keeps the cursor of every plot where the slider stands, by a style of the tab alone. */
function useCursor(): React.RefObject<HTMLDivElement | null> {
  const { strokeView } = useBenchView();
  const element = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const show = ({ at }: { at: number }) =>
      element.current?.style.setProperty('--stroke-at', (at / 3).toFixed(4));
    show(strokeView.getState());
    return strokeView.subscribe(show);
  }, [strokeView]);
  return element;
}
