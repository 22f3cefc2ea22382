import type { Layer as KonvaLayer } from 'konva/lib/Layer.js';
import { useEffect, useId, useLayoutEffect, useRef, useState } from 'react';
import { Layer, Stage } from 'react-konva/lib/ReactKonvaCore';
import { useStore } from 'zustand';
import { currentFormat, useDisplay } from '../display/use-display.ts';
import type { BenchView } from '../document/bench-view.ts';
import type { FitDocument } from '../document/fit-document.ts';
import { say } from '../language/messages.ts';
import { BenchCanvas } from './canvas/bench-canvas.ts';
import { ViewButtons } from './canvas/view-buttons.tsx';
import { zoomWithKey } from './canvas/view-keys.ts';
import { GripList } from './interaction/grip-list.tsx';
import type { InteractionStore } from './interaction/interaction-state.ts';
import { DrawingPointer } from './interaction/pointer.ts';
import { type Grip, gripName } from './view/handle.ts';
import { FONTS } from './view/pen.ts';
import { LAYERS, type LayerName } from './view/scene.ts';
import type { SheetLayout } from './view/sheet-layout.ts';
import './drawing.css';

interface BenchDrawingProps {
  readonly document: FitDocument;
  readonly view: BenchView;
  readonly interaction: InteractionStore;
}

/** The drawing of a fit: three views on one scale and the boat afloat above them, with the handles that move the fittings. */
export function BenchDrawing(props: BenchDrawingProps) {
  const { document: fitDocument, interaction } = props;
  const host = useRef<HTMLDivElement>(null);
  const { canvas, takeLayer } = useBenchCanvas(host, props);
  const { width, height } = useSize(host);
  const density = useDensity();
  const about = useId();

  useLayoutEffect(() => canvas?.setDensity(density), [canvas, density]);
  // What lies over the canvas is placed by the new layout, so it is rendered again once that is known.
  const [, setLaidOutFor] = useState('');
  useLayoutEffect(() => {
    canvas?.resize(width, height);
    setLaidOutFor(`${width} ${height}`);
  }, [canvas, width, height]);
  useRestyle(canvas, density);

  return (
    // biome-ignore lint/a11y/useSemanticElements: a drawing is no set of form fields
    <div
      ref={host}
      className="drawing"
      role="group"
      aria-label={say('drawing.name')}
      aria-describedby={about}
      onKeyDown={(event) => canvas && zoomWithKey(canvas, event)}
    >
      <p id={about} className="only-spoken">
        {say('drawing.about')}
      </p>
      <Stage width={width} height={height} listening={false} aria-hidden="true">
        {LAYERS.map((name) => (
          <Layer key={name} listening={false} ref={(layer: KonvaLayer | null) => takeLayer(name, layer)} />
        ))}
      </Stage>
      {canvas && (
        <>
          <GripList document={fitDocument} canvas={canvas} interaction={interaction} />
          <ViewButtons canvas={canvas} document={fitDocument} />
          <Refused interaction={interaction} />
        </>
      )}
    </div>
  );
}

/** The canvas over the layers that React makes, with the pointer that works on it; null until they are there. */
function useBenchCanvas(
  host: React.RefObject<HTMLDivElement | null>,
  { document, view, interaction }: BenchDrawingProps,
) {
  const layers = useRef<Partial<Record<LayerName, KonvaLayer>>>({});
  const [canvas, setCanvas] = useState<BenchCanvas | null>(null);
  // Before anything is painted: the page need not be laid out and painted first without its drawing.
  useLayoutEffect(() => {
    const element = host.current;
    if (!element) return;
    const made = new BenchCanvas({
      document,
      view,
      host: element,
      layers: layers.current as Record<LayerName, KonvaLayer>,
      format: currentFormat(),
    });
    const pointer = new DrawingPointer({
      host: element,
      canvas: made,
      document,
      store: interaction,
      focusGrip: (grip) => focusGrip(element, grip),
    });
    let placed: SheetLayout | null = null;
    const stopPlacing = made.onDrawn(({ layout }) => {
      if (layout !== placed) placeCard(element.parentElement ?? element, layout);
      placed = layout;
    });
    setCanvas(made);
    return () => {
      setCanvas(null);
      stopPlacing();
      pointer.dispose();
      made.dispose();
    };
  }, [host, document, view, interaction]);
  const takeLayer = (name: LayerName, layer: KonvaLayer | null) => {
    if (layer) layers.current[name] = layer;
  };
  return { canvas, takeLayer };
}

/** Tells the part's card, an element beside the drawing, where the drawing has left room for it. */
function placeCard(frame: HTMLElement, { card, cardPlace, look }: SheetLayout): void {
  if (frame.dataset.card !== cardPlace) frame.dataset.card = cardPlace;
  const { left, top, width, height } = card;
  const places = {
    'card-left': left,
    'card-top': top,
    'card-width': width,
    'card-height': height,
    'look-right': look.right,
    'look-top': look.top,
  };
  for (const [name, value] of Object.entries(places)) {
    const pixels = `${Math.round(value)}px`;
    const property = `--${name}`;
    if (frame.style.getPropertyValue(property) !== pixels) frame.style.setProperty(property, pixels);
  }
}

/** Shows on the drawing why a part could not be moved. (It is spoken where it is refused.) */
function Refused({ interaction }: { interaction: InteractionStore }) {
  const refused = useStore(interaction, (state) => state.refused);
  return refused && <p className="drawing-refused">{refused}</p>;
}

function focusGrip(host: HTMLElement, grip: Grip): void {
  host.querySelector<HTMLElement>(`[data-grip="${gripName(grip)}"]`)?.focus({ preventScroll: true });
}

function useSize(host: React.RefObject<HTMLElement | null>): { width: number; height: number } {
  const [size, setSize] = useState({ width: 0, height: 0 });
  useLayoutEffect(() => {
    const element = host.current;
    if (!element) return;
    const measure = () => setSize({ width: element.clientWidth, height: element.clientHeight });
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    measure();
    return () => observer.disconnect();
  }, [host]);
  return size;
}

/** Pixels of the screen in one CSS pixel; follows the window from one screen to another. */
function useDensity(): number {
  const [density, setDensity] = useState(() => window.devicePixelRatio);
  useEffect(() => {
    const query = window.matchMedia(`(resolution: ${density}dppx)`);
    const changed = () => setDensity(window.devicePixelRatio);
    query.addEventListener('change', changed);
    return () => query.removeEventListener('change', changed);
  }, [density]);
  return density;
}

/** Draws again when colours, units, fonts or density change: these are not part of the fit. */
function useRestyle(canvas: BenchCanvas | null, density: number): void {
  const display = useDisplay();
  // biome-ignore lint/correctness/useExhaustiveDependencies: density and display are what makes a new style
  useEffect(() => {
    if (!canvas) return;
    let isThere = true;
    const restyle = () => isThere && canvas.restyle(currentFormat());
    restyle();
    // The alphabets of the drawing's own words. Letters of another one are fetched when they are first drawn.
    const { fonts } = window.document;
    void Promise.allSettled(FONTS.map((font) => fonts.load(font))).then(restyle);
    fonts.addEventListener('loadingdone', restyle);
    const dark = window.matchMedia('(prefers-color-scheme: dark)');
    // The theme's own listener sets the colours first; a frame later they can be read.
    const later = () => requestAnimationFrame(restyle);
    dark.addEventListener('change', later);
    const root = window.document.documentElement;
    const observer = new MutationObserver(restyle);
    observer.observe(root, { attributes: true, attributeFilter: ['data-theme'] });
    return () => {
      isThere = false;
      fonts.removeEventListener('loadingdone', restyle);
      dark.removeEventListener('change', later);
      observer.disconnect();
    };
  }, [canvas, display, density]);
}
