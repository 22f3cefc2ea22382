import { useRef } from 'react';
import { Menu, MenuItem, Popover } from 'react-aria-components';
import { useStore } from 'zustand';
import { useDocument, useFit } from '../../bench/bench-context.tsx';
import { toggleLock } from '../../bench/lock-part.ts';
import type { InteractionStore } from '../../drawing/interaction/interaction-state.ts';
import { HANDLES } from '../../drawing/view/handle.ts';
import { say } from '../../language/messages.ts';
import { sendCommand } from '../../ui/menu-commands.tsx';
import { duplicateAndOpen } from './duplicate-refused.tsx';

interface MenuAction {
  readonly id: string;
  readonly name: string;
  readonly run: () => void;
}

/** The drawing's context menu: what can be done with the part under the pointer, and with the fit. */
export function DrawingMenu({ interaction }: { interaction: InteractionStore }) {
  const menu = useStore(interaction, (state) => state.menu);
  const anchor = useRef<HTMLSpanElement>(null);
  const actions = [...usePartActions(interaction), ...useFitActions()];
  const close = () => interaction.setState({ menu: null });
  return (
    <>
      <span ref={anchor} className="drawing-menu-anchor" style={{ left: menu?.x, top: menu?.y }} />
      <Popover
        aria-label={say('menu.title')}
        triggerRef={anchor}
        isOpen={menu !== null}
        onOpenChange={close}
        placement="bottom start"
      >
        <Menu
          className="drawing-menu"
          aria-label={say('menu.title')}
          autoFocus="first"
          onAction={(key) => actions.find(({ id }) => id === key)?.run()}
          onClose={close}
        >
          {actions.map(({ id, name }) => (
            <MenuItem key={id} id={id} className="drawing-menu-item">
              {name}
            </MenuItem>
          ))}
        </Menu>
      </Popover>
    </>
  );
}

function usePartActions(interaction: InteractionStore): MenuAction[] {
  const document = useDocument();
  const handle = useStore(interaction, ({ menu }) => menu?.handle ?? null);
  const fitting = handle && HANDLES[handle].fitting;
  const locked = useFit(({ fit, seat }) => fitting !== null && fit.seats[seat]!.locks.includes(fitting));
  if (!handle || !fitting) return [];
  const part = say(`fitting.${fitting}`);
  return [
    {
      id: 'numbers',
      name: say('menu.numbers', { part }),
      run: () => interaction.setState(({ fieldAsked }) => ({ chosen: handle, fieldAsked: fieldAsked + 1 })),
    },
    {
      id: 'lock',
      name: say(locked ? 'menu.unlock' : 'menu.lock', { part }),
      run: () => toggleLock(document, fitting),
    },
  ];
}

function useFitActions(): MenuAction[] {
  const document = useDocument();
  const undoName = useFit((state) => state.undoName);
  const redoName = useFit((state) => state.redoName);
  const undo = { id: 'undo', run: () => sendCommand('undo') };
  const redo = { id: 'redo', run: () => sendCommand('redo') };
  return [
    ...(undoName === null ? [] : [{ ...undo, name: say('do.undo', { step: undoName }) }]),
    ...(redoName === null ? [] : [{ ...redo, name: say('do.redo', { step: redoName }) }]),
    { id: 'save', name: say('revisions.save'), run: () => sendCommand('save-revision') },
    {
      id: 'duplicate',
      name: say('menu.duplicate'),
      run: () => void duplicateAndOpen(document.getState().fit),
    },
  ];
}
