import { useId } from 'react';

/** A slider with its label, for what is set by looking rather than by a number. */
export function RangeField(props: {
  label: string;
  value: number;
  min: number;
  max: number;
  step: number;
  onChange: (value: number) => void;
  className?: string;
}) {
  const { label, onChange, className, ...range } = props;
  const id = useId();
  return (
    <div className={className}>
      <label htmlFor={id}>{label}</label>
      <input {...range} id={id} type="range" onChange={({ target }) => onChange(target.valueAsNumber)} />
    </div>
  );
}
