/** What good boards of this number read: written down by hand, forgotten again, and learnt from jobs with a good one beside. */
import { useState } from "react";
import { saidCount } from "../../messages/said.ts";
import type { OwnBoardView } from "../../wire/composer-view.ts";
import { SearchField } from "../bench/search-field.tsx";
import type { GoodLine, GoodReadingsView } from "../engine-messages.ts";
import { say, sayWith } from "../say.ts";
import { MODE_WORDS } from "../words.ts";
import { placesOf } from "./places.ts";
import { ReviewLists } from "./review-lists.tsx";
import type { EditedBoard } from "./use-own-board.ts";

interface Props {
  readonly good: GoodReadingsView;
  readonly view: OwnBoardView;
  readonly edited: EditedBoard;
}

const MODES = ["ohms", "diode", "farads"] as const;
const EXAMPLES = { ohms: "1490, 4k7", diode: "0.47", farads: "22u" } as const;

export function GoodReadings({ good, view, edited }: Props) {
  const many = good.kept.length + good.fromJobs.length;
  return (
    <details>
      <summary>
        <span>
          {say`What good ones read`}{" "}
          <small>{many === 0 ? say`nothing yet` : say(saidCount(many, "one check", "{0} checks"))}</small>
        </span>
      </summary>
      <p className="aside">
        {say`Cold readings of boards known to be good, whole, their motor unplugged. They move what is expected at that place; they replace nothing.`}
      </p>
      {good.kept.length > 0 && (
        <ul className="good-readings" aria-label={say`In the board's file`}>
          {good.kept.map((line) => (
            <GoodRow
              key={`${line.mode} ${line.red} ${line.black}`}
              line={line}
              onForget={() =>
                void edited.change({
                  do: "good-forgotten",
                  mode: line.mode,
                  red: line.red,
                  black: line.black,
                })
              }
            />
          ))}
        </ul>
      )}
      {good.fromJobs.length > 0 && (
        <section aria-label={say`From jobs with a good one beside`}>
          <h3>{say`From jobs with a good one beside`}</h3>
          <ul className="good-readings">
            {good.fromJobs.map((line) => (
              <GoodRow key={`${line.mode} ${line.red} ${line.black}`} line={line} onForget={null} />
            ))}
          </ul>
        </section>
      )}
      {good.odd.lines.length > 0 && <ReviewLists lists={[good.odd]} />}
      <AddReading view={view} edited={edited} />
    </details>
  );
}

const modeWords = (mode: string): string => say(MODE_WORDS[mode] ?? mode);

function GoodRow({ line, onForget }: { readonly line: GoodLine; readonly onForget: (() => void) | null }) {
  const { mode, red, black, words } = line;
  return (
    <li>
      <span>
        {sayWith`${<b>{modeWords(mode)}</b>}, red on ${<bdi>{red}</bdi>}, black on ${<bdi>{black}</bdi>}`}
        <small>{say(words)}</small>
      </span>
      {onForget !== null && (
        <button
          type="button"
          aria-label={say`Forget ${modeWords(mode)}, ${red} to ${black}`}
          onClick={onForget}
        >
          {say`Forget`}
        </button>
      )}
    </li>
  );
}

function AddReading({ view, edited }: Pick<Props, "view" | "edited">) {
  const [mode, setMode] = useState<(typeof MODES)[number]>("ohms");
  const [red, setRed] = useState("");
  const [black, setBlack] = useState("");
  const [text, setText] = useState("");
  const places = placesOf(view).map(({ place, words }) => ({ value: place, words }));
  const known = (place: string) => places.some(({ value }) => value === place);
  const add = async () => {
    // the places stay: the next board is read at the same ones
    if (await edited.change({ do: "good-read", mode, red, black, text })) setText("");
  };
  return (
    <form
      className="add-good"
      onSubmit={(event) => {
        event.preventDefault();
        void add();
      }}
    >
      <h3>{say`One more reading`}</h3>
      <label className="entry">
        {say`Mode`}
        <select value={mode} onChange={(event) => setMode(event.target.value as (typeof MODES)[number])}>
          {MODES.map((one) => (
            <option key={one} value={one}>
              {modeWords(one)}
            </option>
          ))}
        </select>
      </label>
      <SearchField label={say`Red on the good one`} choices={places} value={red} onValue={setRed} />
      <SearchField label={say`Black on the good one`} choices={places} value={black} onValue={setBlack} />
      <label className="entry">
        {say`What it reads`}
        <input
          value={text}
          autoComplete="off"
          autoCapitalize="off"
          placeholder={EXAMPLES[mode]}
          onChange={(event) => setText(event.target.value)}
        />
      </label>
      <button type="submit" className="primary" disabled={!known(red) || !known(black) || text.trim() === ""}>
        {say`Write it down`}
      </button>
    </form>
  );
}
