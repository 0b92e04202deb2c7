/** A probability as a figure and a bar; the figure carries the meaning, the bar only the eye. */
import { percent } from "../words.ts";

export function Likelihood({ value, tone }: { readonly value: number; readonly tone?: "bad" | "good" }) {
  return (
    <span className="likelihood">
      <span className="likelihood-bar" aria-hidden="true">
        <span className={tone} style={{ inlineSize: `${Math.max(1.5, value * 100)}%` }} />
      </span>
      <span className="figure">{percent(value)}</span>
    </span>
  );
}
