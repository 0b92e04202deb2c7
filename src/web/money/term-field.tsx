import { say } from "../say.ts";
import type { SHOP_TERMS, TermsTyped } from "./terms-typed.ts";

interface Props {
  readonly term: (typeof SHOP_TERMS)[number];
  readonly terms: TermsTyped;
  /** in the place of the term's own words */
  readonly words?: string;
  readonly disabled?: boolean;
  onType(change: Partial<TermsTyped>): void;
}

/** One of the terms, typed or ticked. */
export function TermField({
  term: { name, words: usual, typed, hint },
  terms,
  words = usual,
  disabled = false,
  onType,
}: Props) {
  const label = (
    <span>
      {say(words)} {hint !== "" && <small className="aside">{say(hint)}</small>}
    </span>
  );
  if (typed === "tick")
    return (
      <label className="tick">
        <input
          type="checkbox"
          checked={terms[name] === "yes"}
          onChange={(event) => onType({ [name]: event.target.checked ? "yes" : "no" })}
        />
        {label}
      </label>
    );
  return (
    <label className="entry">
      {label}
      <input
        inputMode={typed === "word" ? "text" : "decimal"}
        autoComplete="off"
        value={terms[name]}
        disabled={disabled}
        onChange={(event) => onType({ [name]: event.target.value })}
      />
    </label>
  );
}
