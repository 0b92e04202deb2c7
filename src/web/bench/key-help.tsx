/** What the keyboard does on the bench. */
import type { RefObject } from "react";

const KEYS: readonly (readonly [string, string])[] = [
  ["1 2 3 4", "the four large keys of a check, or the answers of a look"],
  [". or -", "put the cursor in the field; 0 and 5 to 9 do too"],
  ["F", "put the cursor in the field, for a reading that begins with 1 to 4"],
  ["Enter", "record what the field holds"],
  ["T", "take what the meter on the wire shows"],
  ["D", "done, for a step of the hand"],
  ["P", "let the practice board answer"],
  ["S", "something else instead of the proposal"],
  ["C", "the cautions at this step were read"],
  ["U", "undo the last entry"],
  ["R", "say the step aloud"],
  ["?", "this list"],
];

export function KeyHelp({ dialog }: { readonly dialog: RefObject<HTMLDialogElement | null> }) {
  return (
    <dialog ref={dialog} aria-labelledby="key-help-title">
      <h2 id="key-help-title">By keyboard</h2>
      <dl className="key-list">
        {KEYS.map(([key, does]) => (
          <div key={key}>
            <dt>{key}</dt>
            <dd>{does}</dd>
          </div>
        ))}
      </dl>
      <p className="aside">
        A foot pedal, a clicker or keys of your own: set them under <a href="#/bench">This bench</a>.
      </p>
      <form method="dialog">
        <button type="submit" className="primary">
          Close
        </button>
      </form>
    </dialog>
  );
}
