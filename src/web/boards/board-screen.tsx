/** One board of one's own: its parts, changed one by one, and what the program makes of it beside them. */
import { useState } from "react";
import { matching } from "../bench/search-field.tsx";
import { go } from "../route.ts";
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
          Boards
        </button>
        <h1>{board === null ? "Board" : board.view.name}</h1>
        <button type="button" disabled={!canUndo || busy} onClick={() => void edited.undo()}>
          Undo
        </button>
      </header>
      <main>
        {problem !== null && (
          <p role="alert" className="problem">
            {problem}
          </p>
        )}
        {board === null && problem === null && <p role="status">Looking…</p>}
        {board !== null && (
          <div className="board-columns">
            <PartList id={id} edited={edited} />
            <section aria-label="What the program makes of it" className="board-review">
              <h2>What the program makes of it</h2>
              <ReviewLists lists={board.odd} />
              {alike === null ? (
                <p className="aside" role="status">
                  Working out what no cold check tells apart…
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

function PartList({ id, edited }: { readonly id: string; readonly edited: EditedBoard }) {
  const [typed, setTyped] = useState("");
  const [open, setOpen] = useState<string | null>(null);
  const { board, change } = edited;
  if (board === null) return null;
  const { parts, nets, kinds, name } = board.view;
  const found = matching(
    parts.map((part) => ({
      value: part.ref,
      words: `${part.kind} ${part.stage} ${part.pins.map(({ net }) => net).join(" ")} ${part.assumed ? "not seen" : ""}`,
    })),
    typed,
  );
  const refs = new Set(found.map(({ value }) => value));
  const shown = parts.filter(({ ref }) => refs.has(ref)).slice(0, SHOWN);
  return (
    <section aria-label="Parts" className="board-parts">
      <h2>Parts</h2>
      <label className="entry">
        Find a part
        <input
          value={typed}
          autoComplete="off"
          autoCapitalize="off"
          placeholder="R12, fuse, PBUS, not seen"
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
              <span className="ref">{part.ref}</span> {part.kind}
              {part.stage !== "" && `, ${part.stage}`}
              {part.assumed && <span className="part-unseen">not seen</span>}
            </button>
            {open === part.ref && (
              <PartEditor part={part} nets={nets} edited={edited} onRenamed={(ref) => setOpen(ref)} />
            )}
          </li>
        ))}
      </ul>
      {found.length > SHOWN && <p className="aside">{found.length - SHOWN} more: type to narrow.</p>}
      <div className="folded">
        <AddPart kinds={kinds} nets={nets} edited={edited} />
        <NetNames nets={nets} edited={edited} />
        <BoardPhotos board={board} />
        <GoodReadings good={board.good} view={board.view} edited={edited} />
        <BoardVersions id={id} title={name} onBack={edited.back} />
        <GiveBoard id={id} title={name} content={board.content} />
        <details>
          <summary>The board’s name</summary>
          <TypedField
            label="What to call the board"
            value={name}
            onValue={(text) => change({ do: "name", name: text })}
          />
        </details>
      </div>
    </section>
  );
}
