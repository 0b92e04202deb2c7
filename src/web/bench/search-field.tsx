/** A field that finds one of many places or parts by any of their words. */
import { useId, useState } from "react";
import { say } from "../say.ts";

export interface Choice {
  readonly value: string;
  readonly words: string;
}

interface Props {
  readonly label: string;
  readonly choices: readonly Choice[];
  readonly value: string;
  onValue(value: string): void;
}

const MATCHES_SHOWN = 6;

/** Choices that hold every word typed, in the order given. */
export function matching(choices: readonly Choice[], typed: string): readonly Choice[] {
  const words = typed.toLowerCase().split(/\s+/).filter(Boolean);
  return choices.filter(({ value, words: said }) => {
    const text = `${value} ${said}`.toLowerCase();
    return words.every((word) => text.includes(word));
  });
}

export function SearchField({ label, choices, value, onValue }: Props) {
  const [active, setActive] = useState(false);
  const id = useId();
  const chosen = choices.find((choice) => choice.value === value);
  const matches = active && chosen === undefined ? matching(choices, value).slice(0, MATCHES_SHOWN) : [];
  const [best] = matches;
  return (
    <div className="search">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        autoComplete="off"
        autoCapitalize="off"
        placeholder={say`type a name or what you see`}
        value={value}
        onFocus={() => setActive(true)}
        onChange={(event) => onValue(event.target.value)}
        onKeyDown={(event) => {
          if (event.key === "Enter" && best !== undefined) onValue(best.value);
        }}
      />
      {chosen !== undefined && <p className="search-chosen">{chosen.words}</p>}
      {matches.length > 0 && (
        <ul className="matches">
          {matches.map((choice) => (
            <li key={choice.value}>
              <button type="button" onClick={() => onValue(choice.value)}>
                <span className="ref">{choice.value}</span> {choice.words}
              </button>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}
