/** Any entry of one's own: a check between two places, a look, or a step of the hand. It goes onto the card. */
import { useState } from "react";
import type { ActionView } from "../../wire/bench-view.ts";
import { partFacts } from "../board-facts.ts";
import { happened } from "../job-event.ts";
import { MODE_WORDS } from "../words.ts";
import type { PanelProps } from "./bench-props.ts";
import { EnterPower } from "./enter-power.tsx";
import { type Choice, SearchField } from "./search-field.tsx";

const OF_A_PART = [
  { do: "look", words: "Look at" },
  { do: "remove", words: "Take off" },
  { do: "restore", words: "Put back" },
  { do: "replace", words: "Replace" },
  { do: "clean", words: "Clean" },
  { do: "resolder", words: "Resolder" },
] as const;

export function EnterPanel({ open, view, hands }: PanelProps) {
  const board = open.job === null || open.job === "loading" ? null : open.job.header.board;
  const parts = partFacts(board).map((part) => ({ value: part.ref, words: `${part.kind}, ${part.stage}` }));
  const places = view.places.map(({ place, words }) => ({ value: place, words }));
  const pins = places.filter(({ value }) => value.includes("."));
  return (
    <div className="enter">
      <EnterCheck places={places} onChoose={hands.choose} />
      <section aria-label="A part">
        <h3>A part</h3>
        <OfAPart
          parts={parts}
          onChoose={hands.choose}
          onMark={(part, as) => hands.add([happened({ do: "mark", part, as })])}
        />
      </section>
      <section aria-label="One pin">
        <h3>One pin</h3>
        <OfAPin pins={pins} onChoose={hands.choose} />
      </section>
      <EnterPower view={view} places={places} hands={hands} />
      <EnterNote onNote={(text) => hands.add([happened({ do: "note", text })])} />
    </div>
  );
}

interface CheckProps {
  readonly places: readonly Choice[];
  onChoose(action: ActionView): void;
}

function EnterCheck({ places, onChoose }: CheckProps) {
  const [mode, setMode] = useState("diode");
  const [red, setRed] = useState("");
  const [black, setBlack] = useState("");
  const known = (place: string) => places.some(({ value }) => value === place);
  const ready = known(red) && known(black) && red !== black;
  return (
    <section aria-label="A measurement">
      <h3>A measurement</h3>
      <label className="entry">
        Mode
        <select value={mode} onChange={(event) => setMode(event.target.value)}>
          {Object.entries(MODE_WORDS)
            .filter(([name]) => name !== "temperature")
            .map(([name, words]) => (
              <option key={name} value={name}>
                {words}
              </option>
            ))}
        </select>
      </label>
      <SearchField label="Red on" choices={places} value={red} onValue={setRed} />
      <SearchField label="Black on" choices={places} value={black} onValue={setBlack} />
      <button
        type="button"
        className="primary"
        disabled={!ready}
        onClick={() => onChoose({ do: "measure", mode, red, black })}
      >
        Put it on the card
      </button>
    </section>
  );
}

/** Where this very board is not as the board file has it. */
const MARKS = [
  { as: "absent", words: "Not there" },
  { as: "different", words: "Another part" },
  { as: "unsure", words: "Not sure of it" },
  { as: "as-drawn", words: "As drawn after all" },
] as const;

interface OfAPartProps {
  readonly parts: readonly Choice[];
  onChoose(action: ActionView): void;
  onMark(part: string, as: string): void;
}

function OfAPart({ parts, onChoose, onMark }: OfAPartProps) {
  const [part, setPart] = useState("");
  const known = parts.some(({ value }) => value === part);
  return (
    <>
      <SearchField label="Part" choices={parts} value={part} onValue={setPart} />
      <div className="keys">
        {OF_A_PART.map((entry) => (
          <button
            type="button"
            key={entry.do}
            disabled={!known}
            onClick={() => onChoose({ do: entry.do, part })}
          >
            {entry.words}
          </button>
        ))}
        <button
          type="button"
          disabled={!known}
          onClick={() => onChoose({ do: "measure", mode: "temperature", part })}
        >
          Temperature
        </button>
      </div>
      <p className="aside">On this board it is</p>
      <div className="keys">
        {MARKS.map(({ as, words }) => (
          <button type="button" key={as} disabled={!known} onClick={() => onMark(part, as)}>
            {words}
          </button>
        ))}
      </div>
    </>
  );
}

function OfAPin({
  pins,
  onChoose,
}: {
  readonly pins: readonly Choice[];
  onChoose(action: ActionView): void;
}) {
  const [place, setPlace] = useState("");
  const known = pins.some(({ value }) => value === place);
  return (
    <>
      <SearchField label="Pin" choices={pins} value={place} onValue={setPlace} />
      <div className="keys">
        <button type="button" disabled={!known} onClick={() => onChoose({ do: "lift", place })}>
          Lift
        </button>
        <button type="button" disabled={!known} onClick={() => onChoose({ do: "refit", place })}>
          Solder back
        </button>
      </div>
    </>
  );
}

function EnterNote({ onNote }: { onNote(text: string): void }) {
  const [text, setText] = useState("");
  return (
    <form
      className="entry"
      onSubmit={(event) => {
        event.preventDefault();
        if (text.trim() === "") return;
        onNote(text.trim());
        setText("");
      }}
    >
      <label htmlFor="note">A note</label>
      <input id="note" maxLength={500} value={text} onChange={(event) => setText(event.target.value)} />
      <button type="submit" disabled={text.trim() === ""}>
        Note it
      </button>
    </form>
  );
}
