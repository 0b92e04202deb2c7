/** Nets by the names that the silkscreen has. */
import { useState } from "react";
import { saidCount } from "../../messages/said.ts";
import type { OwnBoardView } from "../../wire/composer-view.ts";
import { SearchField } from "../bench/search-field.tsx";
import { say } from "../say.ts";
import { TypedField } from "./typed-field.tsx";
import type { EditedBoard } from "./use-own-board.ts";

interface Props {
  readonly nets: OwnBoardView["nets"];
  readonly edited: EditedBoard;
}

export function NetNames({ nets, edited }: Props) {
  const [chosen, setChosen] = useState("");
  const net = nets.find(({ name }) => name === chosen);
  const rename = async (to: string) => {
    const done = await edited.change({ do: "rename-net", from: chosen, to });
    if (done) setChosen(to.trim());
    return done;
  };
  return (
    <details>
      <summary>{say`Rename a net`}</summary>
      <SearchField
        label={say`Net`}
        choices={nets.map(({ name, pins }) => ({
          value: name,
          words: say(saidCount(pins, "{0} pin", "{0} pins")),
        }))}
        value={chosen}
        onValue={setChosen}
      />
      {net !== undefined && (
        <TypedField label={say`Its name on the board`} value={net.name} onValue={rename} />
      )}
    </details>
  );
}
