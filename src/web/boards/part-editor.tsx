/** One part of a board of one's own: its name, values and pins, whether it was seen, and off the board with it. */
import type { OwnBoardView, PartView } from "../../wire/composer-view.ts";
import { say } from "../say.ts";
import { choiceWords, fieldWords } from "./field-words.ts";
import { TypedField } from "./typed-field.tsx";
import type { EditedBoard } from "./use-own-board.ts";

interface Props {
  readonly part: PartView;
  readonly nets: OwnBoardView["nets"];
  readonly edited: EditedBoard;
  onRenamed(ref: string): void;
}

export function PartEditor({ part, nets, edited, onRenamed }: Props) {
  const { change } = edited;
  const { ref } = part;
  const listId = `nets-${ref}`;
  const rename = async (to: string) => {
    const done = await change({ do: "rename-part", from: ref, to });
    if (done) onRenamed(to.trim());
    return done;
  };
  return (
    <div className="part-editor">
      <datalist id={listId}>
        {nets.map(({ name }) => (
          <option key={name} value={name} />
        ))}
      </datalist>
      <TypedField label={say`Name on the board`} value={ref} onValue={rename} />
      {part.values.map(({ field, text, words }) =>
        words.length === 0 ? (
          <TypedField
            key={field}
            label={fieldWords(field)}
            value={text}
            hint={say`as usual`}
            onValue={(typed) => change({ do: "value", ref, field, text: typed })}
          />
        ) : (
          <label key={field} className="entry">
            {fieldWords(field)}
            <select
              value={text}
              onChange={(event) => void change({ do: "value", ref, field, text: event.target.value })}
            >
              <option value="">{say`as usual`}</option>
              {words.map((word) => (
                <option key={word} value={word}>
                  {choiceWords(word)}
                </option>
              ))}
            </select>
          </label>
        ),
      )}
      {part.pins.map(({ pin, net }) => (
        <TypedField
          key={pin}
          label={say`Pin ${pin} is on`}
          value={net}
          listId={listId}
          onValue={(typed) => change({ do: "rewire", place: `${ref}.${pin}`, net: typed })}
        />
      ))}
      <div className="keys">
        <button
          type="button"
          aria-pressed={!part.assumed}
          onClick={() => void change({ do: "seen", ref, seen: part.assumed })}
        >
          {say`Seen, as it stands here`}
        </button>
        <button type="button" onClick={() => void change({ do: "remove", ref })}>
          {say`Take it off the board`}
        </button>
      </div>
    </div>
  );
}
