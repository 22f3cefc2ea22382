/** One canvas of the drawing, as large as its sheet, sharp on its screen. */
export class PaperLayer {
  private readonly canvas: HTMLCanvasElement;
  private readonly context: CanvasRenderingContext2D;
  private size = { width: 0, height: 0 };
  private density = 1;

  /** Puts a new canvas over those that the host holds already. */
  constructor(host: HTMLElement) {
    this.canvas = host.ownerDocument.createElement('canvas');
    this.canvas.style.position = 'absolute';
    this.canvas.style.inset = '0';
    this.context = this.canvas.getContext('2d')!;
    host.append(this.canvas);
  }

  /** Size in CSS pixels, and screen pixels in one of them. Setting either clears the canvas. */
  fit(size: { width: number; height: number }, density: number): void {
    this.size = size;
    this.density = density;
    this.canvas.width = Math.round(size.width * density);
    this.canvas.height = Math.round(size.height * density);
    this.canvas.style.width = `${size.width}px`;
    this.canvas.style.height = `${size.height}px`;
  }

  /** Clears the canvas and paints it anew; one unit is one CSS pixel. */
  draw(paint: (context: CanvasRenderingContext2D) => void): void {
    const { context, size, density } = this;
    context.setTransform(density, 0, 0, density, 0, 0);
    context.clearRect(0, 0, size.width, size.height);
    paint(context);
  }

  remove(): void {
    this.canvas.remove();
  }
}
