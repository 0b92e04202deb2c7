/** What the keyboard does on the bench. */
import type { RefObject } from "react";
import { said } from "../../messages/said.ts";
import { say, sayWith } from "../say.ts";

const KEYS: readonly (readonly [string, string])[] = [
  ["1 2 3 4", said`the four large keys of a check, or the answers of a look`],
  [said`. or -`, said`put the cursor in the field; 0 and 5 to 9 do too`],
  ["F", said`put the cursor in the field, for a reading that begins with 1 to 4`],
  ["Enter", said`record what the field holds`],
  ["T", said`take what the meter on the wire shows`],
  ["D", said`done, for a step of the hand`],
  ["P", said`let the practice board answer`],
  ["S", said`something else instead of the proposal`],
  ["C", said`the cautions at this step were read`],
  ["U", said`undo the last entry`],
  ["R", said`say the step aloud`],
  ["?", said`this list`],
];

export function KeyHelp({ dialog }: { readonly dialog: RefObject<HTMLDialogElement | null> }) {
  return (
    <dialog ref={dialog} aria-labelledby="key-help-title">
      <h2 id="key-help-title">{say`By keyboard`}</h2>
      <dl className="key-list">
        {KEYS.map(([key, does]) => (
          <div key={key}>
            <dt>
              <kbd>{say(key)}</kbd>
            </dt>
            <dd>{say(does)}</dd>
          </div>
        ))}
      </dl>
      <p className="aside">
        {sayWith`A foot pedal, a clicker or keys of your own: set them under ${<a href="#/bench">{say`This bench`}</a>}.`}
      </p>
      <form method="dialog">
        <button type="submit" className="primary">
          {say`Close`}
        </button>
      </form>
    </dialog>
  );
}
