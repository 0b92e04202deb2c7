/** A field that is kept once it is left, or Enter is pressed; what could not be kept stays as typed. */
import { useEffect, useRef, useState } from "react";

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
  // Enter and leaving the field both keep it: what is on its way already is not sent again.
  const sent = useRef<string | null>(null);
  useEffect(() => setTyped(value), [value]);
  const keep = async () => {
    if (typed === value || typed === sent.current) return;
    sent.current = typed;
    await onValue(typed);
    sent.current = null;
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
        onBlur={() => void keep()}
        onKeyDown={(event) => {
          if (event.key === "Enter") void keep();
        }}
      />
    </label>
  );
}
