import type { Layer } from 'konva/lib/Layer.js';
import { Shape } from 'konva/lib/Shape.js';

/** What paints a layer; one unit is one CSS pixel. */
type Painter = (context: CanvasRenderingContext2D) => void;

/**
 * One layer of the drawing. It is a Konva layer with a single shape, whose scene function paints all of it: what moves under
 * the hand is drawn in one pass, without a node for each line. React owns the layer; handles that listen stand over it in the
 * page, where keyboard and screen reader find them.
 */
export class PaperLayer {
  private readonly layer: Layer;
  private readonly shape: Shape;
  private painter: Painter = () => {};

  constructor(layer: Layer) {
    this.layer = layer;
    this.shape = new Shape({ listening: false, sceneFunc: ({ _context }) => this.painter(_context) });
    layer.add(this.shape);
  }

  /** Screen pixels in one CSS pixel. Setting them clears the layer. */
  setDensity(density: number): void {
    this.layer.getCanvas().setPixelRatio(density);
  }

  /** Clears the layer and paints it again. */
  draw(painter: Painter): void {
    this.painter = painter;
    this.layer.drawScene();
  }

  /** Removes the shape; the layer itself belongs to React. */
  remove(): void {
    this.shape.destroy();
  }
}
