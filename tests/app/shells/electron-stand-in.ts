import { EventEmitter } from 'node:events';
import type { ElectronApi } from '../../../app/electron/electron-api.ts';

type Handler = (event: unknown, ...args: unknown[]) => unknown;

/** What a test sees of the stand-in: what the desktop shell asked of Electron, and levers to pull as Electron would. */
export interface StandIn {
  readonly electron: ElectronApi;
  readonly app: EventEmitter & {
    quitCalls: number;
    exitCode: number | null;
    lockFree: boolean;
    /** Where the shell has told Electron to keep things. */
    paths: Record<string, string>;
    /** Chromium's switches that the shell has set. */
    switches: Record<string, string>;
    whenReady: () => Promise<void>;
  };
  readonly windows: StandInWindow[];
  readonly ipcHandlers: Map<string, Handler>;
  readonly schemes: unknown[];
  readonly protocolHandlers: Map<string, (request: Request) => Response | Promise<Response>>;
  readonly session: Record<'permission' | 'check' | 'device' | 'request', unknown>;
  readonly errorBoxes: { title: string; text: string }[];
  /** What the person chooses in the next dialogs. */
  readonly choices: { save: string | null; open: string | null; button: number };
  readonly menu: { template: unknown[] };
  sandboxed(): boolean;
}

/** A window as far as the desktop shell uses one. */
export class StandInWindow extends EventEmitter {
  readonly options: Record<string, unknown>;
  readonly loaded: string[] = [];
  readonly sent: { channel: string; args: unknown[] }[] = [];
  readonly webContents = Object.assign(new EventEmitter(), {
    openHandler: null as null | ((details: { url: string }) => { action: string }),
    setWindowOpenHandler(handler: (details: { url: string }) => { action: string }) {
      this.openHandler = handler;
    },
    send: (channel: string, ...args: unknown[]) => this.sent.push({ channel, args }),
  });
  shown = false;
  focused = false;
  minimized = false;
  maximized = false;
  constructor(options: Record<string, unknown>) {
    super();
    this.options = options;
  }
  async loadURL(url: string) {
    this.loaded.push(url);
  }
  show() {
    this.shown = true;
  }
  focus() {
    this.focused = true;
  }
  restore() {
    this.minimized = false;
  }
  maximize() {
    this.maximized = true;
  }
  isMinimized() {
    return this.minimized;
  }
  isMaximized() {
    return this.maximized;
  }
  getNormalBounds() {
    return { x: 40, y: 30, width: 1300, height: 820 };
  }
}

/**
 * A stand-in for the few parts of Electron that the desktop shell uses. It is no Electron: it shows no window and
 * isolates nothing. It records what the shell's real code asks for and lets a test pull Electron's levers.
 */
export function electronStandIn(appPath: string): StandIn {
  const windows: StandInWindow[] = [];
  const ipcHandlers: StandIn['ipcHandlers'] = new Map();
  const protocolHandlers: StandIn['protocolHandlers'] = new Map();
  const session: StandIn['session'] = { permission: null, check: null, device: null, request: null };
  const choices: StandIn['choices'] = { save: null, open: null, button: 0 };
  const schemes: unknown[] = [];
  const errorBoxes: StandIn['errorBoxes'] = [];
  const menu: StandIn['menu'] = { template: [] };
  let sandboxed = false;
  const app = Object.assign(new EventEmitter(), {
    quitCalls: 0,
    exitCode: null as number | null,
    lockFree: true,
    requestSingleInstanceLock: (): boolean => app.lockFree,
    enableSandbox: () => {
      sandboxed = true;
    },
    whenReady: async () => {},
    paths: {} as Record<string, string>,
    switches: {} as Record<string, string>,
    commandLine: {
      appendSwitch: (name: string, value: string) => {
        app.switches[name] = value;
      },
    },
    setPath: (name: string, path: string) => {
      app.paths[name] = path;
    },
    getAppPath: () => appPath,
    quit: () => {
      app.quitCalls += 1;
      app.emit('will-quit');
    },
    exit: (code: number) => {
      app.exitCode = code;
    },
  });
  class Window extends StandInWindow {
    constructor(options: Record<string, unknown>) {
      super(options);
      windows.push(this);
    }
  }
  const electron = {
    app,
    BrowserWindow: Window,
    ipcMain: { handle: (channel: string, handler: Handler) => ipcHandlers.set(channel, handler) },
    protocol: {
      registerSchemesAsPrivileged: (list: unknown[]) => schemes.push(...list),
      handle: (scheme: string, handler: (request: Request) => Response) =>
        protocolHandlers.set(scheme, handler),
    },
    session: {
      defaultSession: {
        setPermissionRequestHandler: (handler: unknown) => {
          session.permission = handler;
        },
        setPermissionCheckHandler: (handler: unknown) => {
          session.check = handler;
        },
        setDevicePermissionHandler: (handler: unknown) => {
          session.device = handler;
        },
        webRequest: {
          onBeforeRequest: (handler: unknown) => {
            session.request = handler;
          },
        },
      },
    },
    dialog: {
      showErrorBox: (title: string, text: string) => errorBoxes.push({ title, text }),
      showMessageBox: async () => ({ response: choices.button }),
      showSaveDialog: async () => ({ canceled: choices.save === null, filePath: choices.save ?? '' }),
      showOpenDialog: async () => ({
        canceled: choices.open === null,
        filePaths: choices.open === null ? [] : [choices.open],
      }),
    },
    Menu: {
      buildFromTemplate: (template: unknown[]) => template,
      setApplicationMenu: (template: unknown[]) => {
        menu.template = template;
      },
    },
    screen: { getDisplayMatching: () => ({ workArea: { x: 0, y: 0, width: 1920, height: 1080 } }) },
  };
  return {
    electron: electron as unknown as ElectronApi,
    app,
    windows,
    ipcHandlers,
    schemes,
    protocolHandlers,
    session,
    errorBoxes,
    choices,
    menu,
    sandboxed: () => sandboxed,
  };
}
