/** A part more: its kind, its name, and the net of each pin. */
import { useState } from "react";
import type { OwnBoardView } from "../../wire/composer-view.ts";
import { kindWords } from "../kind-words.ts";
import { say } from "../say.ts";
import type { EditedBoard } from "./use-own-board.ts";

interface Props {
  readonly kinds: OwnBoardView["kinds"];
  readonly nets: OwnBoardView["nets"];
  readonly edited: EditedBoard;
}

export function AddPart({ kinds, nets, edited }: Props) {
  const [kind, setKind] = useState("resistor");
  const [ref, setRef] = useState("");
  const [pins, setPins] = useState<Readonly<Record<string, string>>>({});
  const wanted = kinds.find((one) => one.kind === kind)?.pins ?? [];
  const add = async () => {
    const own = Object.fromEntries(wanted.map((pin) => [pin, (pins[pin] ?? "").trim()]));
    if (!(await edited.change({ do: "add", ref, kind, pins: own }))) return;
    setRef("");
    setPins({});
  };
  return (
    <details>
      <summary>{say`Add a part`}</summary>
      <datalist id="all-nets">
        {nets.map(({ name }) => (
          <option key={name} value={name} />
        ))}
      </datalist>
      <label className="entry">
        {say`What it is`}
        <select value={kind} onChange={(event) => setKind(event.target.value)}>
          {kinds.map((one) => (
            <option key={one.kind} value={one.kind}>
              {kindWords(one.kind)}
            </option>
          ))}
        </select>
      </label>
      <label className="entry">
        {say`Its name on the board`}
        <input
          value={ref}
          autoComplete="off"
          placeholder="R90"
          onChange={(event) => setRef(event.target.value)}
        />
      </label>
      {wanted.map((pin) => (
        <label key={pin} className="entry">
          {say`New pin ${pin} goes to`}
          <input
            value={pins[pin] ?? ""}
            list="all-nets"
            autoComplete="off"
            autoCapitalize="off"
            placeholder={say`a net; a new name makes a new one`}
            onChange={(event) => setPins({ ...pins, [pin]: event.target.value })}
          />
        </label>
      ))}
      <button type="button" className="primary" onClick={() => void add()}>
        {say`Add the part`}
      </button>
    </details>
  );
}
