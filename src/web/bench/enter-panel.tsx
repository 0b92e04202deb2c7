/** Any entry of one's own: a check between two places, a look, or a step of the hand. It goes onto the card. */
import { useState } from "react";
import { said } from "../../messages/said.ts";
import type { ActionView } from "../../wire/bench-view.ts";
import { partFacts } from "../board-facts.ts";
import { happened } from "../job-event.ts";
import { say } from "../say.ts";
import { MODE_WORDS } from "../words.ts";
import type { PanelProps } from "./bench-props.ts";
import { EnterPower } from "./enter-power.tsx";
import { type Choice, SearchField } from "./search-field.tsx";

const OF_A_PART = [
  { do: "look", words: said`Look at` },
  { do: "remove", words: said`Take off` },
  { do: "restore", words: said`Put back` },
  { do: "replace", words: said`Replace` },
  { do: "clean", words: said`Clean` },
  { do: "resolder", words: said`Resolder` },
] as const;

export function EnterPanel({ open, view, hands }: PanelProps) {
  const board = open.job === null || open.job === "loading" ? null : open.job.header.board;
  const parts = partFacts(board).map((part) => ({ value: part.ref, words: `${part.kind}, ${part.stage}` }));
  const places = view.places.map(({ place, words }) => ({ value: place, words: say(words) }));
  const pins = places.filter(({ value }) => value.includes("."));
  return (
    <div className="enter">
      <EnterCheck places={places} onChoose={hands.choose} />
      <section aria-label={say`A part`}>
        <h3>{say`A part`}</h3>
        <OfAPart
          parts={parts}
          onChoose={hands.choose}
          onMark={(part, as) => hands.add([happened({ do: "mark", part, as })])}
        />
      </section>
      <section aria-label={say`One pin`}>
        <h3>{say`One pin`}</h3>
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
    <section aria-label={say`A measurement`}>
      <h3>{say`A measurement`}</h3>
      <label className="entry">
        {say`Mode`}
        <select value={mode} onChange={(event) => setMode(event.target.value)}>
          {Object.entries(MODE_WORDS)
            .filter(([name]) => name !== "temperature")
            .map(([name, words]) => (
              <option key={name} value={name}>
                {say(words)}
              </option>
            ))}
        </select>
      </label>
      <SearchField label={say`Red on`} choices={places} value={red} onValue={setRed} />
      <SearchField label={say`Black on`} choices={places} value={black} onValue={setBlack} />
      <button
        type="button"
        className="primary"
        disabled={!ready}
        onClick={() => onChoose({ do: "measure", mode, red, black })}
      >
        {say`Put it on the card`}
      </button>
    </section>
  );
}

/** Where this very board is not as the board file has it. */
const MARKS = [
  { as: "absent", words: said`Not there` },
  { as: "different", words: said`Another part` },
  { as: "unsure", words: said`Not sure of it` },
  { as: "as-drawn", words: said`As drawn after all` },
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
      <SearchField label={say`Part`} choices={parts} value={part} onValue={setPart} />
      <div className="keys">
        {OF_A_PART.map((entry) => (
          <button
            type="button"
            key={entry.do}
            disabled={!known}
            onClick={() => onChoose({ do: entry.do, part })}
          >
            {say(entry.words)}
          </button>
        ))}
        <button
          type="button"
          disabled={!known}
          onClick={() => onChoose({ do: "measure", mode: "temperature", part })}
        >
          {say`Temperature`}
        </button>
      </div>
      <p className="aside">{say`On this board it is`}</p>
      <div className="keys">
        {MARKS.map(({ as, words }) => (
          <button type="button" key={as} disabled={!known} onClick={() => onMark(part, as)}>
            {say(words)}
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
      <SearchField label={say`Pin`} choices={pins} value={place} onValue={setPlace} />
      <div className="keys">
        <button type="button" disabled={!known} onClick={() => onChoose({ do: "lift", place })}>
          {say`Lift`}
        </button>
        <button type="button" disabled={!known} onClick={() => onChoose({ do: "refit", place })}>
          {say`Solder back`}
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
      <label htmlFor="note">{say`A note`}</label>
      <input id="note" maxLength={500} value={text} onChange={(event) => setText(event.target.value)} />
      <button type="submit" disabled={text.trim() === ""}>
        {say`Note it`}
      </button>
    </form>
  );
}
