/** One line of stock, typed: what it is, where it lies, and the ratings that its place on a board will ask for. */
import { useId, useState } from "react";
import { plain, said } from "../../messages/said.ts";
import type { KeptLine } from "../../wire/stock-api.ts";
import { cellsOf, KINDS, RATING_COLUMNS, type RatingColumn } from "../../wire/stock-columns.ts";
import { Away, api, Refused } from "../api.ts";
import { kindWords } from "../kind-words.ts";
import { say } from "../say.ts";

interface LineFormProps {
  /** null: a new one */
  readonly line: KeptLine | null;
  onDone(lines: readonly KeptLine[]): void;
  onAway(): void;
  /** the drawer is not as it was seen: look again */
  onAgain(): void;
}

type Cells = Readonly<Record<string, string>>;

const PLACES = [
  { column: "count", words: said`How many`, digits: true },
  { column: "place", words: said`Place`, digits: false },
  { column: "price", words: said`Price of one`, digits: true },
  { column: "supplier", words: said`Supplier`, digits: false },
  { column: "donor", words: said`Donor board`, digits: false },
] as const;

/** Asked of nearly every part; the others are added where they are known. */
const USUAL = ["volts", "amps"];

export function LineForm({ line, onDone, onAway, onAgain }: LineFormProps) {
  const [cells, setCells] = useState<Cells>(line === null ? {} : cellsOf(line));
  const [problem, setProblem] = useState<string | null>(null);
  const [sending, setSending] = useState(false);
  const type = (column: string, text: string) => setCells({ ...cells, [column]: text });
  const was =
    line === null ? null : { name: line.type.name, place: line.place, used: line.used, donor: line.donor };
  const send = (call: Promise<{ readonly lines: readonly KeptLine[] }>) => {
    setSending(true);
    setProblem(null);
    call.then(
      (answer) => onDone(answer.lines),
      (error: Error) => {
        setSending(false);
        setProblem(
          error instanceof Away
            ? said`The bench computer does not answer: nothing was written down.`
            : error.message,
        );
        if (error instanceof Refused && /look at the drawer again/.test(plain(error.message))) onAgain();
      },
    );
  };
  const countWas = line?.count ?? null;
  return (
    <form
      className="line-form"
      aria-label={line === null ? say`A part to add` : say`Correct ${line.type.name}`}
      onSubmit={(event) => {
        event.preventDefault();
        send(api.stockLine({ cells, was, countWas }));
      }}
    >
      <WhatItIs cells={cells} onType={type} />
      <WhereItLies cells={cells} onType={type} />
      <Ratings cells={cells} onType={type} />
      {problem !== null && (
        <p role="alert" className="problem">
          {say(problem)}
        </p>
      )}
      <LineKeys
        isNew={line === null}
        sending={sending}
        onAway={onAway}
        onGone={() => was !== null && send(api.stockGone({ was, countWas }))}
      />
    </form>
  );
}

interface LineKeysProps {
  readonly isNew: boolean;
  readonly sending: boolean;
  onAway(): void;
  onGone(): void;
}

function LineKeys({ isNew, sending, onAway, onGone }: LineKeysProps) {
  return (
    <div className="line-keys">
      <button type="submit" className="primary" disabled={sending}>
        {isNew ? say`Add it` : say`Write it down`}
      </button>
      <button type="button" onClick={onAway}>
        {say`Leave it`}
      </button>
      {!isNew && (
        <button type="button" className="quiet small" disabled={sending} onClick={onGone}>
          {say`Take it off the list`}
        </button>
      )}
    </div>
  );
}

interface CellsProps {
  readonly cells: Cells;
  onType(column: string, text: string): void;
}

function WhatItIs({ cells, onType }: CellsProps) {
  return (
    <div className="line-fields">
      <label className="entry">
        {say`Type, as it is marked`}
        <input
          autoComplete="off"
          autoCapitalize="off"
          value={cells.name ?? ""}
          onChange={(event) => onType("name", event.target.value)}
        />
      </label>
      <label className="entry">
        {say`Kind of part`}
        <select value={cells.kind ?? ""} onChange={(event) => onType("kind", event.target.value)}>
          <option value="">{say`as the program knows it`}</option>
          {KINDS.map((kind) => (
            <option key={kind} value={kind}>
              {kindWords(kind)}
            </option>
          ))}
        </select>
      </label>
    </div>
  );
}

function WhereItLies({ cells, onType }: CellsProps) {
  return (
    <div className="line-fields">
      {PLACES.map(({ column, words, digits }) => (
        <label className="entry" key={column}>
          {say(words)}
          <input
            autoComplete="off"
            inputMode={digits ? "decimal" : "text"}
            value={cells[column] ?? ""}
            onChange={(event) => onType(column, event.target.value)}
          />
        </label>
      ))}
      <label className="tick">
        <input
          type="checkbox"
          checked={cells.used === "yes"}
          onChange={(event) => onType("used", event.target.checked ? "yes" : "")}
        />
        {say`Pulled off another board`}
      </label>
    </div>
  );
}

/** Those that are known, the usual two, and a choice of the rest. */
function Ratings({ cells, onType }: CellsProps) {
  const [added, setAdded] = useState<readonly string[]>([]);
  const isShown = (name: string) =>
    USUAL.includes(name) || added.includes(name) || (cells[name] ?? "") !== "";
  return (
    <fieldset className="line-ratings">
      <legend>{say`From its data sheet`}</legend>
      <div className="line-fields">
        {RATING_COLUMNS.filter(({ name }) => isShown(name)).map((column) => (
          <RatingField
            key={column.name}
            column={column}
            text={cells[column.name] ?? ""}
            onType={(text) => onType(column.name, text)}
          />
        ))}
        <label className="entry">
          {say`One more rating`}
          <select value="" onChange={(event) => setAdded([...added, event.target.value])}>
            <option value="">{say`choose`}</option>
            {RATING_COLUMNS.filter(({ name }) => !isShown(name)).map(({ name, words }) => (
              <option key={name} value={name}>
                {say(words)}
              </option>
            ))}
          </select>
        </label>
      </div>
    </fieldset>
  );
}

interface RatingFieldProps {
  readonly column: RatingColumn;
  readonly text: string;
  onType(text: string): void;
}

function RatingField({ column: { words, unit, choices }, text, onType }: RatingFieldProps) {
  const id = useId();
  return (
    <div className="entry">
      <label htmlFor={id}>{unit === null ? say(words) : say`${words}, ${unit}`}</label>
      {choices.length > 0 ? (
        <select id={id} value={text} onChange={(event) => onType(event.target.value)}>
          <option value="">{say`not known`}</option>
          {choices.map((choice) => (
            <option key={choice} value={plain(choice)}>
              {say(choice)}
            </option>
          ))}
        </select>
      ) : (
        <input id={id} autoComplete="off" value={text} onChange={(event) => onType(event.target.value)} />
      )}
    </div>
  );
}
