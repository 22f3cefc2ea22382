import { Konva } from 'konva/lib/Global.js';
import { Layer } from 'konva/lib/Layer.js';
import { Shape } from 'konva/lib/Shape.js';
import { Stage } from 'konva/lib/Stage.js';
import { LAYERS, type LayerName } from '../view/scene.ts';

/** What paints a layer; one unit is one CSS pixel. */
type Painter = (context: CanvasRenderingContext2D) => void;

interface PaintedLayer {
  readonly layer: Layer;
  painter: Painter;
}

/**
 * The canvases of the drawing, one over the other: a Konva stage with its layers. Each layer has a single shape, whose scene function
 * paints all of it: what moves under the hand is drawn in one pass, without a node for each line. Handles that listen stand
 * over it in the page, where keyboard and screen reader find them; so nothing here is React's, and Konva's binding to it, which
 * weighs half as much as Konva, is not needed.
 */
export class Paper {
  private readonly stage: Stage;
  private readonly layers: Readonly<Record<LayerName, PaintedLayer>>;

  constructor(container: HTMLDivElement) {
    // Konva would draw again by itself, a frame after each change.
    Konva.autoDrawEnabled = false;
    this.stage = new Stage({ container, listening: false });
    const layers = LAYERS.map((name) => [name, paintedLayer(this.stage)] as const);
    this.layers = Object.fromEntries(layers) as Record<LayerName, PaintedLayer>;
  }

  /** Gives the canvases a size, CSS pixels, and clears them. */
  resize(size: { readonly width: number; readonly height: number }): void {
    this.stage.size(size);
  }

  /** Screen pixels in one CSS pixel. Setting them clears the canvases. */
  setDensity(density: number): void {
    for (const { layer } of Object.values(this.layers)) layer.getCanvas().setPixelRatio(density);
  }

  /** Clears a layer and paints it anew. */
  draw(name: LayerName, painter: Painter): void {
    const painted = this.layers[name];
    painted.painter = painter;
    painted.layer.drawScene();
  }

  /** Takes the canvases out of the page. */
  remove(): void {
    this.stage.destroy();
  }
}

function paintedLayer(stage: Stage): PaintedLayer {
  const painted: PaintedLayer = { layer: new Layer({ listening: false }), painter: () => {} };
  stage.add(painted.layer);
  painted.layer.add(new Shape({ listening: false, sceneFunc: ({ _context }) => painted.painter(_context) }));
  return painted;
}
