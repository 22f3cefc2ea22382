import type { Layer } from 'konva/lib/Layer.js';
import type { Format } from '../../../app/language/format.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import type { BenchView } from '../../document/bench-view.ts';
import type { FitDocument } from '../../document/fit-document.ts';
import { onLiveFrame } from '../../document/live-frame.ts';
import { boat } from '../layers/boat.ts';
import { captions } from '../layers/captions.ts';
import { figures } from '../layers/figure.ts';
import { fittings } from '../layers/fittings.ts';
import { ghostPart } from '../layers/ghost.ts';
import { grips } from '../layers/grips.ts';
import { ground } from '../layers/ground.ts';
import { guides } from '../layers/guides.ts';
import { arcs, labelsPart } from '../layers/labels.ts';
import { leaderLines } from '../layers/leader-lines.ts';
import { leaderRouter } from '../layers/leaders.ts';
import { strip } from '../layers/strip.ts';
import { strokeOutline } from '../layers/stroke-outline.ts';
import { support } from '../layers/support.ts';
import { cockpitView } from '../view/cockpit-view.ts';
import type { Grip } from '../view/handle.ts';
import { type HullDrawing, hullDrawing } from '../view/hull-drawing.ts';
import { type Palette, readPalette } from '../view/palette.ts';
import { forgetWidths, Pen } from '../view/pen.ts';
import { boatBox, pictureOf } from '../view/picture.ts';
import {
  type Dragged,
  LAYERS,
  type LayerName,
  type Picture,
  type Scene,
  type ScenePart,
} from '../view/scene.ts';
import { CARD, type CardSize, layOutWholeBoat, type SheetLayout, TOUCH_CARD } from '../view/sheet-layout.ts';
import { strokePicture } from '../view/stroke-pictures.ts';
import { fitCamera, type ViewCamera, type ViewGeometry } from '../view/view-geometry.ts';
import { PaperLayer } from './paper-layer.ts';

/** What the views are asked to show: the seat worked on, or the whole boat. */
export type ShownExtent = 'seat' | 'boat';

/** What changed, and with it which layers are drawn again. */
const ALL: readonly LayerName[] = LAYERS;
const MOVING: readonly LayerName[] = ['boat', 'labels', 'overlay'];
/** In each frame of a drag; the labels follow less often. */
const UNDER_HAND: readonly LayerName[] = ['boat', 'overlay'];
const OVERLAY: readonly LayerName[] = ['overlay'];

/**
 * Room that the part's card takes on the drawing's sheet. Null in upright windows: there it stands under the drawing, beside the
 * margin, as the bench's style sheet says; and in narrow ones, where it follows the drawing.
 */
function cardOnSheet(): CardSize | null {
  if (window.matchMedia('(orientation: portrait)').matches) return null;
  return window.matchMedia('(pointer: coarse)').matches ? TOUCH_CARD : CARD;
}

/** Called after every drawing, with the scene drawn. */
export type DrawListener = (scene: Scene) => void;

/**
 * The drawing itself, outside React: keeps what is shown, makes a scene of it, and draws the layers that changed,
 * once per animation frame, or at once inside one.
 */
export class BenchCanvas {
  private readonly document: FitDocument;
  private readonly view: BenchView;
  private readonly host: HTMLElement;
  private readonly layers: ReadonlyMap<LayerName, PaperLayer>;
  private readonly parts: readonly ScenePart[];
  private readonly stops: (() => void)[] = [];
  private readonly dirty = new Set<LayerName>();
  private frame = 0;
  private drawingNow = false;
  private labelsFrame = 0;
  private palette: Palette;
  private format: Format;
  private size = { width: 0, height: 0 };
  private layout: SheetLayout | null = null;
  private camera: ViewCamera | null = null;
  private lines: { boat: Fit['boat']; lines: HullDrawing } | null = null;
  private picture: Picture;
  private ghost: { fit: Fit; picture: Picture } | null = null;
  private showing: ShownExtent = 'seat';
  private fitted = false;
  private held: Dragged | null = null;
  private pointed: Grip | null = null;
  private focused = false;
  private touch = false;
  private readonly drawn = new Set<DrawListener>();

  constructor(given: {
    document: FitDocument;
    view: BenchView;
    host: HTMLElement;
    /** The layers that React has made. */
    layers: Readonly<Record<LayerName, Layer>>;
    format: Format;
  }) {
    this.document = given.document;
    this.view = given.view;
    this.host = given.host;
    this.layers = new Map(LAYERS.map((name) => [name, new PaperLayer(given.layers[name])]));
    this.format = given.format;
    this.palette = readPalette(given.host);
    this.picture = this.pictureNow();
    const route = leaderRouter(() => this.host.getBoundingClientRect().top);
    this.parts = [
      ground,
      strip,
      boat,
      fittings,
      figures,
      captions,
      support,
      arcs,
      leaderLines(route),
      labelsPart(route),
      ghostPart(),
      strokeOutline('catch'),
      strokeOutline('exit'),
      guides,
      grips,
    ];
    this.listen();
  }

  /** Paints a layer's parts in turn. */
  private paint(name: LayerName, scene: Scene): void {
    this.layers.get(name)!.draw((context) => {
      const pen = new Pen(context, this.palette);
      for (const part of this.parts) if (part.layer === name) part.paint(pen, scene);
    });
  }

  private listen(): void {
    const { document, view } = this;
    this.stops.push(
      view.notePlaces.subscribe(() => this.invalidate(['labels'])),
      view.strokeView.subscribe(() => this.live()),
      document.onLive(() => this.live()),
      onLiveFrame(document, () => this.labelsAfterTexts()),
      document.subscribe((now, before) => {
        if (now.seat !== before.seat) this.showAll(this.showing);
        if (now.lit !== before.lit || now.ghost !== before.ghost) this.invalidate(MOVING);
      }),
    );
  }

  /** The fit as drawn this instant, where the stroke's slider stands. */
  private pictureNow(): Picture {
    return strokePicture(this.document.live(), this.view.strokeView.getState().at);
  }

  private live(): void {
    this.picture = this.pictureNow();
    this.invalidate(this.held ? UNDER_HAND : MOVING);
  }

  /** The scene as it stands; null before the sheet has a size. */
  scene(): Scene | null {
    const { layout, camera } = this;
    if (!layout || !camera) return null;
    const { seat, lit, ghost } = this.document.getState();
    return {
      picture: this.picture,
      ghost: this.ghostPicture(ghost),
      seat: Math.min(seat, this.picture.fit.seats.length - 1),
      layout,
      geometry: { windows: layout.windows, camera },
      notes: this.view.notePlaces.getState().notes,
      stroke: this.view.strokeView.getState(),
      lines: this.hullLines(),
      format: this.format,
      lit,
      held: this.held,
      pointed: this.pointed,
      focused: this.focused,
      touch: this.touch,
    };
  }

  private hullLines(): HullDrawing {
    const { boat: ofBoat } = this.document.live().fit;
    if (this.lines?.boat !== ofBoat) this.lines = { boat: ofBoat, lines: hullDrawing(ofBoat) };
    return this.lines.lines;
  }

  private ghostPicture(fit: Fit | null): Picture | null {
    if (!fit) return null;
    if (this.ghost?.fit !== fit)
      this.ghost = { fit, picture: pictureOf(fit, this.document.evaluator.evaluate(fit)) };
    return this.ghost.picture;
  }

  /** Called after every drawing; returns a function that stops it. */
  onDrawn(listener: DrawListener): () => void {
    this.drawn.add(listener);
    return () => this.drawn.delete(listener);
  }

  get geometry(): ViewGeometry | null {
    return this.layout && this.camera && { windows: this.layout.windows, camera: this.camera };
  }

  resize(width: number, height: number): void {
    if (width < 1 || height < 1) return;
    this.size = { width, height };
    this.showAll(this.showing);
  }

  /** Pixels of the screen in one CSS pixel. */
  setDensity(density: number): void {
    for (const layer of this.layers.values()) layer.setDensity(density);
    this.invalidate(ALL);
  }

  /** Fits the views to the seat worked on, or to the whole boat. */
  showAll(showing: ShownExtent): void {
    this.showing = showing;
    if (this.size.width === 0) return;
    const lines = this.hullLines();
    const { seat } = this.document.getState();
    const card = cardOnSheet();
    if (showing === 'seat') {
      const worked = Math.min(seat, this.picture.fit.seats.length - 1);
      const view = cockpitView(this.size, { picture: this.picture, lines, seat: worked }, card);
      this.layout = view.layout;
      this.camera = view.camera;
    } else {
      const box = boatBox(this.picture, lines);
      this.layout = layOutWholeBoat(this.size, box, card);
      this.camera = fitCamera(this.layout.windows, box);
    }
    this.fitted = true;
    this.invalidate(ALL);
  }

  /** True until the views are zoomed or panned after they were fitted. */
  get isFitted(): boolean {
    return this.fitted;
  }

  get shows(): ShownExtent {
    return this.showing;
  }

  look(camera: ViewCamera): void {
    this.camera = camera;
    this.fitted = false;
    this.invalidate(ALL);
  }

  hold(held: Dragged | null): void {
    this.held = held;
    this.invalidate(MOVING);
  }

  point(pointed: Grip | null, { focused }: { focused: boolean }): void {
    this.pointed = pointed;
    this.focused = focused;
    this.invalidate(OVERLAY);
  }

  feelFor(touch: boolean): void {
    if (touch === this.touch) return;
    this.touch = touch;
    this.invalidate(MOVING);
  }

  /** Colours, numbers or the screen's density have changed. */
  restyle(format: Format): void {
    this.format = format;
    this.palette = readPalette(this.host);
    forgetWidths();
    this.invalidate(ALL);
  }

  /** Draws these layers in the next animation frame. */
  invalidate(layers: readonly LayerName[] = ALL): void {
    for (const name of layers) this.dirty.add(name);
    if (this.frame === 0 && !this.drawingNow) this.frame = requestAnimationFrame(() => this.flush());
  }

  /** Changes what is seen and draws it at once, without asking for a frame; for use inside one. */
  drawNow(change: () => void): void {
    this.drawingNow = true;
    try {
      change();
    } finally {
      this.drawingNow = false;
    }
    this.flush();
  }

  /**
   * During a drag the labels are drawn as often as the page's texts change, in the frame after: to write, lay out and paint both
   * in one frame took too long for it.
   */
  private labelsAfterTexts(): void {
    if (!this.held) return;
    cancelAnimationFrame(this.labelsFrame);
    this.labelsFrame = requestAnimationFrame(() => {
      this.dirty.add('labels');
      this.flush();
    });
  }

  private flush(): void {
    cancelAnimationFrame(this.frame);
    this.frame = 0;
    const scene = this.scene();
    if (scene) for (const name of LAYERS) if (this.dirty.has(name)) this.paint(name, scene);
    this.dirty.clear();
    if (scene) for (const listener of this.drawn) listener(scene);
  }

  dispose(): void {
    cancelAnimationFrame(this.frame);
    cancelAnimationFrame(this.labelsFrame);
    for (const stop of this.stops) stop();
    for (const layer of this.layers.values()) layer.remove();
  }
}
