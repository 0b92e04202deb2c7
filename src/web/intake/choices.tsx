/** One of a few large choices. */
import { useId } from "react";

interface Props {
  readonly title: string;
  readonly choices: readonly { readonly value: string; readonly words: string; readonly hint?: string }[];
  readonly value: string;
  onValue(value: string): void;
}

/** Long words take wider boxes, so that none is cut or broken. */
function lengthOf(choices: Props["choices"]): "short" | "middling" | "long" {
  const longest = Math.max(0, ...choices.map(({ words }) => words.length));
  return longest > 24 ? "long" : longest > 13 ? "middling" : "short";
}

export function Choices({ title, choices, value, onValue }: Props) {
  const name = useId();
  return (
    <fieldset>
      <legend>{title}</legend>
      <div className="choices" data-length={lengthOf(choices)}>
        {choices.map((choice) => (
          <label className="choice" key={choice.value}>
            <input
              type="radio"
              name={name}
              value={choice.value}
              checked={choice.value === value}
              onChange={() => onValue(choice.value)}
            />
            <span className="key-words">{choice.words}</span>
            {choice.hint !== undefined && <span className="key-hint">{choice.hint}</span>}
          </label>
        ))}
      </div>
    </fieldset>
  );
}
