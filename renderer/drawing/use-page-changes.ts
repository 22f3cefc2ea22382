import type { Layer } from 'konva/lib/Layer.js';
import { type RefObject, useEffect } from 'react';
import type { Format } from '../language/format.ts';
import type { BenchCanvas } from './bench-canvas.ts';
import type { LayerName } from './scene.ts';

/** Draws anew when the theme, the way numbers are written, or the screen's density changes. */
export function usePageChanges(
  canvas: BenchCanvas | null,
  { format, layers }: { format: Format; layers: RefObject<Partial<Record<LayerName, Layer>>> },
): void {
  useEffect(() => {
    if (!canvas) return;
    canvas.restyle(format);
    const themes = new MutationObserver(() => canvas.restyle(format));
    themes.observe(document.documentElement, { attributeFilter: ['data-theme'] });
    return () => themes.disconnect();
  }, [canvas, format]);

  useEffect(() => {
    if (!canvas) return;
    const stop = new AbortController();
    const watch = () => {
      const query = matchMedia(`(resolution: ${devicePixelRatio}dppx)`);
      query.addEventListener('change', changed, { signal: stop.signal, once: true });
    };
    const changed = () => {
      for (const layer of Object.values(layers.current)) layer.getCanvas().setPixelRatio(devicePixelRatio);
      canvas.invalidate();
      watch();
    };
    watch();
    return () => stop.abort();
  }, [canvas, layers]);
}
