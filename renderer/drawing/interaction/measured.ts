/** Set by `?measure` in the page's address: the script time of a drag is then written to the browser's own timeline. */
const measures = globalThis.location?.search.includes('measure') ?? false;
let started = 0;

/** Marks the start of a pointer move's script; does nothing unless measuring is on. */
export function markStart(): void {
  if (measures) started = performance.now();
}

/** Marks its end as the measure `hand`: a move that was noted, or an edit that was computed and drawn. */
export function markEnd(what: 'noted' | 'drawn'): void {
  if (measures) performance.measure('hand', { start: started, end: performance.now(), detail: what });
}
