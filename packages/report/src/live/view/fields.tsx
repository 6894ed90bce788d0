import { show } from "../state/store.ts";

/** A field for one number: while it is typed in, it keeps what is typed, whatever comes of it. */
export interface NumberFieldProps {
  id: string;
  value: number | null;
  label: string;
  /** What is typed, once it is a number in the range. */
  onNumber: (value: number) => void;
  /** The field was emptied; without it an empty field changes nothing. */
  onEmpty?: () => void;
  least: number;
  most: number;
  step?: number | "any";
}

let typed: { id: string; text: string } | null = null;

export function NumberField({ id, value, label, onNumber, onEmpty, least, most, step = "any" }: NumberFieldProps) {
  const shown = typed?.id === id ? typed.text : value === null ? "" : String(value);
  return (
    <input
      id={id}
      class="number"
      type="number"
      inputMode="decimal"
      min={least}
      max={most}
      step={step}
      value={shown}
      aria-label={label}
      size={5}
      onInput={({ currentTarget }) => {
        typed = { id, text: currentTarget.value };
        const number = currentTarget.valueAsNumber;
        if (number >= least && number <= most) onNumber(number);
        else if (currentTarget.value === "" && currentTarget.validity.valid) onEmpty?.();
        show({});
      }}
      onBlur={() => {
        typed = null;
        show({});
      }}
    />
  );
}

/** One word of the sentence that can be changed. */
export interface ChoiceFieldProps {
  id?: string;
  label: string;
  value: string;
  options: readonly (readonly [value: string, words: string])[];
  onChoice: (value: string) => void;
}

export function ChoiceField({ id, label, value, options, onChoice }: ChoiceFieldProps) {
  return (
    <select id={id} aria-label={label} value={value} onChange={({ currentTarget }) => onChoice(currentTarget.value)}>
      {options.map(([key, words]) => (
        <option key={key} value={key}>
          {words}
        </option>
      ))}
    </select>
  );
}
