import { Checkbox } from 'react-aria-components';

/** A checkbox. */
export function Tick(props: { name: string; isOn: boolean; onChange: (on: boolean) => void }) {
  return (
    <Checkbox className="tick" isSelected={props.isOn} onChange={props.onChange}>
      <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
        <path d="M1.5 1.5h13v13h-13Z" fill="none" stroke="currentColor" />
        {props.isOn && <path d="M4 8.5 7 11.5 12.5 4.5" fill="none" stroke="currentColor" strokeWidth="2" />}
      </svg>
      {props.name}
    </Checkbox>
  );
}
