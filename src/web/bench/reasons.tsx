/** Reasons to go on against what is proposed or asked: one tap each. */
import type { Overruled } from "../../wire/bench-view.ts";
import { OVERRULE_REASONS } from "../../wire/overrule-reasons.ts";
import { say } from "../say.ts";

interface Props {
  readonly of: Overruled;
  onReason(why: string): void;
}

export function Reasons({ of, onReason }: Props) {
  return (
    <div className="keys reasons">
      {OVERRULE_REASONS[of].map((why) => (
        <button type="button" key={why} onClick={() => onReason(why)}>
          {say(why)}
        </button>
      ))}
    </div>
  );
}
