/** A field that is kept once it is left, or Enter is pressed; what could not be kept stays as typed. */
import { useEffect, useState } from "react";

interface Props {
  readonly label: string;
  readonly value: string;
  readonly hint?: string;
  /** names to choose from while typing */
  readonly listId?: string;
  onValue(text: string): Promise<boolean>;
}

export function TypedField({ label, value, hint = "", listId, onValue }: Props) {
  const [typed, setTyped] = useState(value);
  useEffect(() => setTyped(value), [value]);
  const keep = () => {
    if (typed !== value) void onValue(typed);
  };
  return (
    <label className="entry">
      {label}
      <input
        value={typed}
        list={listId}
        placeholder={hint}
        autoComplete="off"
        autoCapitalize="off"
        spellCheck={false}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={keep}
        onKeyDown={(event) => {
          if (event.key === "Enter") keep();
        }}
      />
    </label>
  );
}
