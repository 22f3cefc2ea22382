import { useEffect, useId, useRef, useState } from 'react';
import { useStore } from 'zustand';
import { say } from '../language/messages.ts';
import { Name } from '../language/name.tsx';
import { go } from '../route/route.ts';
import { thingName, thingPlace, thingRoute } from './found-thing.ts';
import { matchingActions } from './matching.ts';
import { offeredActions } from './offered-actions.ts';
import { useFound } from './use-found.ts';
import { usualActions } from './usual-actions.ts';

/** How much is shown of each at first, a screenful in all, and how much more each time. */
const AT_FIRST = { do: 9, things: 8 };
const MORE = 24;

interface Choice {
  readonly key: string;
  readonly group: 'do' | 'things';
  readonly name: string;
  readonly about: string;
  readonly run: () => void;
  /** It shows more of its group: the list stays open. */
  readonly showsMore?: true;
}

function useChoices(text: string) {
  const offered = useStore(offeredActions);
  const [most, setMost] = useState(AT_FIRST);
  const { value, more } = useFound(text, most.things);
  const actions = matchingActions([...offered, ...usualActions()], text);
  const moreOf = (group: Choice['group']): Choice => ({
    key: `more ${group}`,
    group,
    name: say('find.more'),
    about: '',
    run: () => setMost({ ...most, [group]: most[group] + MORE }),
    showsMore: true,
  });
  const choices: Choice[] = [
    ...actions
      .slice(0, most.do)
      .map(({ id, name, run }) => ({ key: `do ${id}`, group: 'do' as const, name, about: '', run })),
    ...(actions.length > most.do ? [moreOf('do')] : []),
    ...(value ?? []).map((thing) => ({
      key: `${thing.kind} ${thing.id}`,
      group: 'things' as const,
      name: thingName(thing),
      about: thingPlace(thing),
      run: () => go(thingRoute(thing)),
    })),
    ...(more ? [moreOf('things')] : []),
  ];
  return { choices, settled: value !== null, startOver: () => setMost(AT_FIRST) };
}

/** What a key does: takes the chosen one, or goes one on (1) or back (−1). */
function keyAct({ nativeEvent, key }: React.KeyboardEvent): 'take' | 1 | -1 | null {
  if (nativeEvent.isComposing) return null;
  if (key === 'Enter') return 'take';
  if (key === 'ArrowDown') return 1;
  return key === 'ArrowUp' ? -1 : null;
}

/** A search entry, and below it actions and places to go to. The keyboard alone is enough. */
export function FindDialog({ onDone }: { onDone: () => void }) {
  const id = useId();
  const [text, setText] = useState('');
  const [at, setAt] = useState(0);
  const list = useRef<HTMLDivElement>(null);
  const { choices, settled, startOver } = useChoices(text);
  const chosen = Math.min(at, choices.length - 1);
  useEffect(() => {
    list.current?.querySelector(`[data-at="${chosen}"]`)?.scrollIntoView({ block: 'nearest' });
  }, [chosen]);

  function take(choice: Choice | undefined): void {
    if (!choice) return;
    if (!choice.showsMore) onDone();
    choice.run();
  }

  function onKey(event: React.KeyboardEvent): void {
    const act = keyAct(event);
    if (act === null) return;
    if (act === 'take') take(choices[chosen]);
    else if (choices.length > 0) setAt((chosen + act + choices.length) % choices.length);
    else return;
    event.preventDefault();
  }

  return (
    <div className="find-chooser">
      <label className="only-spoken" htmlFor={`${id}-text`}>
        {say('finder.label')}
      </label>
      <FindEntry
        id={id}
        text={text}
        chosen={choices.length > 0 ? chosen : null}
        onType={(typed) => {
          setText(typed);
          setAt(0);
          startOver();
        }}
        onKey={onKey}
      />
      <div className="find-list" ref={list} id={`${id}-list`} role="listbox" aria-label={say('finder.title')}>
        <ChoiceGroups id={id} choices={choices} chosen={chosen} onPoint={setAt} onTake={take} />
      </div>
      {choices.length === 0 && settled && (
        <p className="soft" role="status">
          {say('find.nothing', { text })}
        </p>
      )}
      <p className="field-hint" id={`${id}-hint`}>
        {say('finder.hint')}
      </p>
    </div>
  );
}

/** The line to type in. It keeps the focus; the chosen option below is reported as its own. */
function FindEntry(props: {
  id: string;
  text: string;
  chosen: number | null;
  onType: (text: string) => void;
  onKey: (event: React.KeyboardEvent) => void;
}) {
  const { id, chosen } = props;
  return (
    <input
      id={`${id}-text`}
      className="entry find-entry"
      role="combobox"
      aria-expanded="true"
      aria-controls={`${id}-list`}
      aria-activedescendant={chosen === null ? undefined : `${id}-${chosen}`}
      aria-autocomplete="list"
      aria-describedby={`${id}-hint`}
      autoComplete="off"
      spellCheck={false}
      maxLength={120}
      placeholder={say('finder.label')}
      value={props.text}
      // biome-ignore lint/a11y/noAutofocus: the list was opened to type in
      autoFocus
      onChange={({ target }) => props.onType(target.value)}
      onKeyDown={props.onKey}
    />
  );
}

interface ChoicesProps {
  readonly id: string;
  readonly choices: readonly Choice[];
  readonly chosen: number;
  readonly onPoint: (index: number) => void;
  readonly onTake: (choice: Choice) => void;
}

function ChoiceGroups({ choices, ...props }: ChoicesProps) {
  const placed = choices.map((choice, index) => ({ choice, index }));
  return (['do', 'things'] as const).map((group) => (
    <ChoiceGroup
      key={group}
      {...props}
      title={say(`finder.${group}`)}
      choices={placed.filter(({ choice }) => choice.group === group)}
    />
  ));
}

function ChoiceGroup(
  props: Omit<ChoicesProps, 'choices'> & {
    title: string;
    choices: readonly { choice: Choice; index: number }[];
  },
) {
  const { id, title, choices, chosen } = props;
  if (choices.length === 0) return null;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a group of options in a list box is no fieldset
    <div role="group" aria-label={title}>
      <div className="lettering" aria-hidden="true">
        {title}
      </div>
      {choices.map(({ choice, index }) => (
        // biome-ignore lint/a11y/useKeyWithClickEvents: the entry above has the keyboard, and names the chosen option
        <div
          key={choice.key}
          id={`${id}-${index}`}
          className="find-choice"
          role="option"
          tabIndex={-1}
          aria-selected={index === chosen}
          data-at={index}
          onPointerMove={() => props.onPoint(index)}
          onClick={() => props.onTake(choice)}
        >
          <span className={choice.showsMore && 'soft'}>
            <Name text={choice.name} />
          </span>
          <span className="soft">{choice.about}</span>
        </div>
      ))}
    </div>
  );
}
