import { announce } from '../../announce/announce.ts';
import type { FitDocument, Gesture } from '../../document/fit-document.ts';
import { say } from '../../language/messages.ts';
import type { BenchCanvas } from '../canvas/bench-canvas.ts';
import { gripMarks } from '../view/grip-marks.ts';
import { type Grip, HANDLE_IDS, HANDLES, type HandleId, sameGrip } from '../view/handle.ts';
import { type ScreenPoint, screenDistance } from '../view/screen-point.ts';
import { panBy, type ViewName, viewAt, zoomAbout } from '../view/view-geometry.ts';
import { type Drag, type DragKeys, draggedTo, startDrag } from './drag.ts';
import type { InteractionStore } from './interaction-state.ts';
import { markEnd, markStart } from './measured.ts';
import { pointedPart } from './pointed-part.ts';
import { pointedSeat } from './pointed-seat.ts';
import { FINE } from './snap.ts';

/** Felt radii of the handles: 24 px across for a mouse, 44 px for a finger. */
const FELT = { mouse: 13, touch: 23 } as const;
/** With Shift held a part moves by this share of the pointer's movement. */
const SLOW = 0.2;
/** A press that moves less than this does not pan, pixels. */
const PRESS_PX = 4;
/** One step of a wheel's hundred pixels zooms by this much. */
const WHEEL_ZOOM = 1.16;
const WHEEL_STEP = 100;

interface Holding {
  readonly hold: Drag;
  readonly gesture: Gesture;
  readonly pointer: number;
  /** Where the drag is on the screen; with Shift or Ctrl it follows the pointer slowly. */
  at: ScreenPoint;
  last: ScreenPoint;
  keys: DragKeys;
}

interface Panning {
  readonly view: ViewName;
  readonly fingers: Map<number, ScreenPoint>;
  readonly from: ScreenPoint;
  /** False until the views have been panned: a press without movement picks a seat. */
  pushed: boolean;
}

/**
 * The pointer on the drawing. Pointer moves only store where the pointer is; one animation frame makes the edit, runs
 * the core and draws. React is told when a drag starts and when it ends.
 */
export class DrawingPointer {
  private readonly host: HTMLElement;
  private readonly canvas: BenchCanvas;
  private readonly document: FitDocument;
  private readonly store: InteractionStore;
  private readonly stop = new AbortController();
  private readonly focusGrip: (grip: Grip) => void;
  private holding: Holding | null = null;
  private panning: Panning | null = null;
  private frame = 0;
  /** Where the drawing lies in the page, as last read. */
  private place: { readonly left: number; readonly top: number } | null = null;

  constructor(given: {
    host: HTMLElement;
    canvas: BenchCanvas;
    document: FitDocument;
    store: InteractionStore;
    /** Gives the page's own element of a handle the keyboard's focus. */
    focusGrip: (grip: Grip) => void;
  }) {
    this.host = given.host;
    this.canvas = given.canvas;
    this.document = given.document;
    this.store = given.store;
    this.focusGrip = given.focusGrip;
    this.listen();
  }

  private listen(): void {
    const { host } = this;
    const { signal } = this.stop;
    host.addEventListener('pointerdown', (event) => this.down(event), { signal });
    host.addEventListener('pointermove', (event) => this.move(event), { signal });
    host.addEventListener('pointerup', (event) => this.up(event), { signal });
    host.addEventListener('pointercancel', (event) => this.lost(event), { signal });
    host.addEventListener('pointerleave', () => this.leave(), { signal });
    host.addEventListener('dblclick', (event) => this.askField(event), { signal });
    host.addEventListener('contextmenu', (event) => this.openMenu(event), { signal });
    host.addEventListener('wheel', (event) => this.wheel(event), { signal, passive: false });
    window.addEventListener('keydown', (event) => this.key(event), { signal, capture: true });
    window.addEventListener('keyup', (event) => this.key(event), { signal, capture: true });
    window.addEventListener('blur', () => this.release(), { signal });
    // Undo, or another edit, ends the gesture: then the drag ends too.
    const stop = this.document.subscribe(({ gestureName }) => {
      if (this.holding && gestureName === null) this.finish(() => undefined);
    });
    signal.addEventListener('abort', stop);
  }

  dispose(): void {
    this.cancel();
    cancelAnimationFrame(this.frame);
    this.stop.abort();
  }

  private pointOf(event: MouseEvent): ScreenPoint {
    // During a drag the drawing stays where it is: reading its place again would cause a layout at every move.
    const busy = this.holding !== null || this.panning !== null;
    if (!busy || !this.place) this.place = this.host.getBoundingClientRect();
    const { left, top } = this.place;
    return { x: event.clientX - left, y: event.clientY - top };
  }

  /** Whether an event is on the canvas itself, not on a button or note over it. */
  private isOnPaper(event: Event): boolean {
    return !(event.target as Element).closest('[data-over-paper]');
  }

  private down(event: PointerEvent): void {
    if (!this.isOnPaper(event)) return;
    if (event.pointerType === 'mouse' && event.button !== 0) return;
    if (this.store.getState().refused) this.store.setState({ refused: null });
    this.setTouch(event.pointerType === 'touch');
    const at = this.pointOf(event);
    if (this.holding) return;
    if (this.panning) {
      this.host.setPointerCapture(event.pointerId);
      this.panning.fingers.set(event.pointerId, at);
      return;
    }
    const grip = this.gripAt(at, event.pointerType);
    if (grip) this.take(grip, event);
    else this.startPanning(at, event);
  }

  /** The handle of the part at a point: a handle itself, or the wood of a fitting; null on anything else. */
  private handleAt(at: ScreenPoint, pointerType: string): HandleId | null {
    const grip = this.gripAt(at, pointerType);
    if (grip) return grip.handle;
    const scene = this.canvas.scene();
    const part = scene && pointedPart(scene, at);
    return HANDLE_IDS.find((id) => HANDLES[id].fitting === part) ?? null;
  }

  /** A double-click on a part asks for its first field. */
  private askField(event: MouseEvent): void {
    if (!this.isOnPaper(event)) return;
    const chosen = this.handleAt(this.pointOf(event), 'mouse');
    if (chosen) this.store.setState(({ fieldAsked }) => ({ chosen, fieldAsked: fieldAsked + 1 }));
  }

  /** The menu of what can be done with the part under the pointer, or with the fit. */
  private openMenu(event: MouseEvent): void {
    if (!this.isOnPaper(event) || this.holding) return;
    event.preventDefault();
    const focused = (event.target as Element).closest<HTMLElement>('[data-handle]')?.dataset.handle;
    const handle = (focused as HandleId | undefined) ?? this.handleAt(this.pointOf(event), 'mouse');
    if (handle) this.store.setState({ chosen: handle });
    this.store.setState({ menu: { ...this.pointOf(event), handle } });
  }

  private setTouch(touch: boolean): void {
    this.canvas.feelFor(touch);
    if (this.store.getState().touch !== touch) this.store.setState({ touch });
  }

  /** The nearest handle within its felt radius of a point. */
  gripAt(at: ScreenPoint, pointerType: string): Grip | null {
    const scene = this.canvas.scene();
    if (!scene) return null;
    const reach = pointerType === 'mouse' ? FELT.mouse : FELT.touch;
    let best: { grip: Grip; away: number } | null = null;
    for (const mark of gripMarks(scene)) {
      const away = Math.hypot(mark.at.x - at.x, mark.at.y - at.y);
      if (away <= reach && (!best || away < best.away)) best = { grip: mark.grip, away };
    }
    return best?.grip ?? null;
  }

  private take(grip: Grip, event: PointerEvent): void {
    event.preventDefault();
    this.focusGrip(grip);
    const { fit, report } = this.document.live();
    const { seat } = this.document.getState();
    const name = say(`drawing.handle.${grip.handle}`);
    if (fit.seats[seat]!.locks.includes(HANDLES[grip.handle].fitting)) {
      const refused = say('drawing.locked', { handle: name });
      this.store.setState({ refused, chosen: grip.handle });
      announce(refused);
      return;
    }
    const { geometry } = this.canvas;
    const screen = this.pointOf(event);
    const hold = geometry && startDrag(grip, { fit, report, seat }, { screen, geometry });
    const scene = this.canvas.scene();
    if (!hold || !scene) return;
    this.host.setPointerCapture(event.pointerId);
    const gesture = this.document.beginGesture(say('drawing.handle.move', { handle: name }));
    this.holding = { hold, gesture, pointer: event.pointerId, at: screen, last: screen, keys: keysOf(event) };
    this.canvas.hold({ grip, start: scene.picture, limits: hold.limits });
    this.store.setState({ held: grip, chosen: grip.handle, refused: null });
    this.host.dataset.pointer = 'holding';
  }

  private startPanning(at: ScreenPoint, event: PointerEvent): void {
    const { geometry } = this.canvas;
    const view = geometry && viewAt(geometry.windows, at);
    if (!view) {
      this.pick(at);
      return;
    }
    this.host.setPointerCapture(event.pointerId);
    this.panning = { view, fingers: new Map([[event.pointerId, at]]), from: at, pushed: false };
    this.host.dataset.pointer = 'panning';
  }

  /** Selects the seat that was pressed. */
  private pick(at: ScreenPoint): void {
    const scene = this.canvas.scene();
    const seat = scene && pointedSeat(scene, at);
    if (seat !== null && seat !== scene?.seat) this.document.focusSeat(seat);
  }

  private move(event: PointerEvent): void {
    const at = this.pointOf(event);
    if (this.holding) {
      if (event.pointerId !== this.holding.pointer) return;
      markStart();
      this.follow(this.holding, at, keysOf(event));
      markEnd('noted');
    } else if (this.panning) this.pan(this.panning, event.pointerId, at);
    else if (event.pointerType === 'mouse') this.hover(at, event);
  }

  /** Stores where the drag is; the frame does the rest. */
  private follow(holding: Holding, at: ScreenPoint, keys: DragKeys): void {
    const speed = keys.fine ? FINE : keys.slow ? SLOW : 1;
    holding.at = {
      x: holding.at.x + (at.x - holding.last.x) * speed,
      y: holding.at.y + (at.y - holding.last.y) * speed,
    };
    holding.last = at;
    holding.keys = keys;
    this.requestPull();
  }

  private requestPull(): void {
    if (this.frame === 0) this.frame = requestAnimationFrame(() => this.pull());
  }

  private pull(): void {
    this.frame = 0;
    if (!this.holding) return;
    markStart();
    const { hold, gesture, at, keys } = this.holding;
    this.canvas.drawNow(() => gesture.move(draggedTo(hold, at, keys)));
    markEnd('drawn');
  }

  private pan(panning: Panning, pointer: number, at: ScreenPoint): void {
    const { view, fingers, from } = panning;
    const before = fingers.get(pointer);
    const { geometry } = this.canvas;
    if (!before || !geometry) return;
    panning.pushed ||= fingers.size > 1 || screenDistance(from, at) >= PRESS_PX;
    if (!panning.pushed) return;
    const others = [...fingers].filter(([id]) => id !== pointer).map(([, place]) => place);
    fingers.set(pointer, at);
    const other = others[0];
    if (!other) {
      this.canvas.look(panBy(geometry.camera, view, { x: at.x - before.x, y: at.y - before.y }));
      return;
    }
    const was = Math.hypot(before.x - other.x, before.y - other.y);
    const is = Math.hypot(at.x - other.x, at.y - other.y);
    const middle = { x: (before.x + other.x) / 2, y: (before.y + other.y) / 2 };
    const zoomed = zoomAbout(geometry, view, { screen: middle, factor: is / Math.max(1, was) });
    this.canvas.look(panBy(zoomed, view, { x: (at.x - before.x) / 2, y: (at.y - before.y) / 2 }));
  }

  private hover(at: ScreenPoint, event: PointerEvent): void {
    const scene = this.canvas.scene();
    if (!scene) return;
    const over = this.isOnPaper(event);
    const grip = over ? this.gripAt(at, 'mouse') : null;
    if (!sameGrip(grip, scene.pointed)) this.canvas.point(grip, { focused: false });
    const part = grip ? HANDLES[grip.handle].fitting : over ? pointedPart(scene, at) : null;
    if (part !== scene.lit && (over || part)) this.document.light(part);
    this.host.dataset.pointer = grip
      ? 'over-grip'
      : over && viewAt(scene.layout.windows, at)
        ? 'over-paper'
        : '';
  }

  private leave(): void {
    if (this.holding || this.panning) return;
    this.canvas.point(null, { focused: false });
    if (this.document.getState().lit) this.document.light(null);
  }

  private up(event: PointerEvent): void {
    if (this.holding?.pointer === event.pointerId) this.release();
    const panning = this.panning;
    this.dropFinger(event.pointerId);
    if (panning && !panning.pushed && !this.panning) this.pick(panning.from);
  }

  private lost(event: PointerEvent): void {
    if (this.holding?.pointer === event.pointerId) this.cancel();
    this.dropFinger(event.pointerId);
  }

  private dropFinger(pointer: number): void {
    this.panning?.fingers.delete(pointer);
    if (this.panning?.fingers.size === 0) {
      this.panning = null;
      this.host.dataset.pointer = '';
    }
  }

  /** Ends the drag at the last place of the pointer. */
  release(): void {
    if (!this.holding) return;
    if (this.frame !== 0) {
      cancelAnimationFrame(this.frame);
      this.pull();
    }
    this.finish((gesture) => gesture.end());
  }

  /** Puts it back exactly as it was. */
  cancel(): void {
    this.finish((gesture) => gesture.cancel());
  }

  private finish(how: (gesture: Gesture) => void): void {
    const { holding } = this;
    if (!holding) return;
    this.holding = null;
    cancelAnimationFrame(this.frame);
    this.frame = 0;
    if (this.host.hasPointerCapture(holding.pointer)) this.host.releasePointerCapture(holding.pointer);
    how(holding.gesture);
    this.canvas.hold(null);
    this.store.setState({ held: null });
    this.host.dataset.pointer = '';
  }

  private key(event: KeyboardEvent): void {
    if (!this.holding) return;
    if (event.type === 'keydown' && event.key === 'Escape') {
      event.preventDefault();
      event.stopPropagation();
      this.cancel();
    } else if (event.key === 'Alt' || event.key === 'Control' || event.key === 'Shift') {
      event.preventDefault();
      this.holding.keys = keysOf(event);
      this.requestPull();
    }
  }

  private wheel(event: WheelEvent): void {
    if (!this.isOnPaper(event)) return;
    event.preventDefault();
    const { geometry } = this.canvas;
    const at = this.pointOf(event);
    const view = geometry && viewAt(geometry.windows, at);
    if (!view || this.holding) return;
    if (event.shiftKey) {
      const push = event.deltaX || event.deltaY;
      this.canvas.look(panBy(geometry.camera, view, { x: -push, y: 0 }));
      return;
    }
    const factor = WHEEL_ZOOM ** (-event.deltaY / WHEEL_STEP);
    this.canvas.look(zoomAbout(geometry, view, { screen: at, factor }));
  }
}

function keysOf(event: { altKey: boolean; ctrlKey: boolean; shiftKey: boolean }): DragKeys {
  const { altKey: free, ctrlKey, shiftKey } = event;
  return { free, fine: ctrlKey && !shiftKey, slow: shiftKey && !ctrlKey, all: ctrlKey && shiftKey };
}
