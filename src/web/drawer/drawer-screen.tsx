/** The parts drawer: what lies in the shop and on its donor boards, found, added, corrected, taken in from a list and out again. */
import { useEffect, useState } from "react";
import { said } from "../../messages/said.ts";
import type { KeptLine } from "../../wire/stock-api.ts";
import { drawer } from "../keeper.ts";
import { go } from "../route.ts";
import { say } from "../say.ts";
import { DonorBoards } from "./donor-boards.tsx";
import { ImportPanel } from "./import-panel.tsx";
import { LineForm } from "./line-form.tsx";
import { StockList } from "./stock-list.tsx";

type Doing = "list" | "add" | "import";

interface Held {
  readonly lines: readonly KeptLine[] | null;
  readonly problem: string | null;
}

async function held(): Promise<Held> {
  try {
    const answer = await drawer();
    if (answer !== null) return { lines: answer.lines, problem: null };
    return {
      lines: null,
      problem: said`The bench computer does not answer, and this browser has not seen the drawer yet.`,
    };
  } catch (error) {
    return { lines: null, problem: error instanceof Error ? error.message : String(error) };
  }
}

export function DrawerScreen() {
  const [{ lines, problem }, setHeld] = useState<Held>({ lines: null, problem: null });
  const [doing, setDoing] = useState<Doing>("list");
  useEffect(() => void held().then(setHeld), []);
  const changed = (now: readonly KeptLine[]) => {
    setHeld({ lines: now, problem: null });
    setDoing("list");
  };
  const again = () => void held().then(setHeld);
  return (
    <div className="drawer">
      <header className="bench-bar">
        <button type="button" className="quiet" onClick={() => go("#/")}>
          {say`Jobs`}
        </button>
        <h1>{say`Parts drawer`}</h1>
      </header>
      <main>
        {problem !== null && <p role="alert">{say(problem)}</p>}
        {lines === null && problem === null && <p role="status">{say`Looking…`}</p>}
        {lines !== null && (
          <>
            <DrawerKeys doing={doing} onDoing={setDoing} />
            {doing === "add" && (
              <LineForm line={null} onDone={changed} onAway={() => setDoing("list")} onAgain={again} />
            )}
            {doing === "import" && (
              <ImportPanel lines={lines} onDone={again} onAway={() => setDoing("list")} />
            )}
            <StockList lines={lines} onChanged={changed} onAgain={again} />
            <DonorBoards lines={lines} />
          </>
        )}
      </main>
    </div>
  );
}

interface DrawerKeysProps {
  readonly doing: Doing;
  onDoing(doing: Doing): void;
}

function DrawerKeys({ doing, onDoing }: DrawerKeysProps) {
  const key = (to: Doing, words: string) => (
    <button type="button" aria-pressed={doing === to} onClick={() => onDoing(doing === to ? "list" : to)}>
      {words}
    </button>
  );
  return (
    <div className="drawer-keys">
      {key("add", say`Add a part`)}
      {key("import", say`Take in a list`)}
      <a className="key-link" href="/api/stock/file" download="parts-drawer.csv">
        {say`Save as a list`}
      </a>
    </div>
  );
}
