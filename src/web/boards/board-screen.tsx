/** One board of one's own: its parts, changed one by one, and what the program makes of it beside them. */
import { useState } from "react";
import type { PartView } from "../../wire/composer-view.ts";
import { matching } from "../bench/search-field.tsx";
import { kindWords, stageWords } from "../kind-words.ts";
import { go } from "../route.ts";
import { say } from "../say.ts";
import { AddPart } from "./add-part.tsx";
import { BoardPhotos } from "./board-photos.tsx";
import { BoardVersions } from "./board-versions.tsx";
import { GiveBoard } from "./give-board.tsx";
import { GoodReadings } from "./good-readings.tsx";
import { NetNames } from "./net-names.tsx";
import { PartEditor } from "./part-editor.tsx";
import { ReviewLists } from "./review-lists.tsx";
import { TypedField } from "./typed-field.tsx";
import { type EditedBoard, useAlike, useOwnBoard } from "./use-own-board.ts";

export function BoardScreen({ id }: { readonly id: string }) {
  const edited = useOwnBoard(id);
  const alike = useAlike(edited.board);
  const { board, problem, busy, canUndo } = edited;
  return (
    <div className="intake board-screen">
      <header className="bench-bar">
        <button type="button" className="quiet" onClick={() => go("#/boards")}>
          {say`Boards`}
        </button>
        <h1>{board === null ? say`Board` : board.view.name}</h1>
        <button type="button" disabled={!canUndo || busy} onClick={() => void edited.undo()}>
          {say`Undo`}
        </button>
      </header>
      <main>
        {problem !== null && (
          <p role="alert" className="problem">
            {say(problem)}
          </p>
        )}
        {board === null && problem === null && <p role="status">{say`Looking…`}</p>}
        {board !== null && (
          <div className="board-columns">
            <PartList id={id} edited={edited} />
            <section aria-label={say`What the program makes of it`} className="board-review">
              <h2>{say`What the program makes of it`}</h2>
              <ReviewLists lists={board.odd} />
              {alike === null ? (
                <p className="aside" role="status">
                  {say`Working out what no cold check tells apart…`}
                </p>
              ) : (
                <ReviewLists lists={alike} />
              )}
            </section>
          </div>
        )}
      </main>
    </div>
  );
}

const SHOWN = 24;

/** All by which a part is found: as the file has it, and as the page says it. */
function wordsOf({ kind, stage, pins, assumed }: PartView): string {
  const nets = pins.map(({ net }) => net);
  return [kind, kindWords(kind), stage, stageWords(stage), ...nets, assumed ? say`not seen` : ""].join(" ");
}

function PartList({ id, edited }: { readonly id: string; readonly edited: EditedBoard }) {
  const [typed, setTyped] = useState("");
  const [open, setOpen] = useState<string | null>(null);
  const { board, change } = edited;
  if (board === null) return null;
  const { parts, nets, kinds, name } = board.view;
  const found = matching(
    parts.map((part) => ({
      value: part.ref,
      words: wordsOf(part),
    })),
    typed,
  );
  const refs = new Set(found.map(({ value }) => value));
  const shown = parts.filter(({ ref }) => refs.has(ref)).slice(0, SHOWN);
  return (
    <section aria-label={say`Parts`} className="board-parts">
      <h2>{say`Parts`}</h2>
      <label className="entry">
        {say`Find a part`}
        <input
          value={typed}
          autoComplete="off"
          autoCapitalize="off"
          placeholder={say`R12, fuse, PBUS, not seen`}
          onChange={(event) => setTyped(event.target.value)}
        />
      </label>
      <ul className="own-parts">
        {shown.map((part) => (
          <li key={part.ref} data-open={open === part.ref}>
            <button
              type="button"
              className="part-line"
              aria-expanded={open === part.ref}
              onClick={() => setOpen(open === part.ref ? null : part.ref)}
            >
              <span className="ref">{part.ref}</span>{" "}
              {part.stage === ""
                ? kindWords(part.kind)
                : say`${kindWords(part.kind)}, ${stageWords(part.stage)}`}
              {part.assumed && <span className="part-unseen">{say`not seen`}</span>}
            </button>
            {open === part.ref && (
              <PartEditor part={part} nets={nets} edited={edited} onRenamed={(ref) => setOpen(ref)} />
            )}
          </li>
        ))}
      </ul>
      {found.length > SHOWN && <p className="aside">{say`${found.length - SHOWN} more: type to narrow.`}</p>}
      <div className="folded">
        <AddPart kinds={kinds} nets={nets} edited={edited} />
        <NetNames nets={nets} edited={edited} />
        <BoardPhotos board={board} />
        <GoodReadings good={board.good} view={board.view} edited={edited} />
        <BoardVersions id={id} title={name} onBack={edited.back} />
        <GiveBoard id={id} content={board.content} />
        <details>
          <summary>{say`The board’s name`}</summary>
          <TypedField
            label={say`What to call the board`}
            value={name}
            onValue={(text) => change({ do: "name", name: text })}
          />
        </details>
      </div>
    </section>
  );
}
