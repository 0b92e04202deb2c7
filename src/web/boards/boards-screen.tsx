/** The boards of one's own: open, copy, delete and bring back. */
import { useCallback, useEffect, useState } from "react";
import {
  deleteOwnBoard,
  keepOwnBoard,
  newBoardId,
  type OwnBoardKept,
  type OwnBoardLine,
  type OwnBoards,
  openOwnBoard,
  ownBoards,
} from "../board-keeper.ts";
import { go } from "../route.ts";
import { BringBoard } from "./bring-board.tsx";

export function BoardsScreen() {
  const [kept, setKept] = useState<OwnBoards | null>(null);
  const [deleted, setDeleted] = useState<OwnBoardKept | null>(null);
  const refresh = useCallback(async () => setKept(await ownBoards()), []);
  useEffect(() => void refresh(), [refresh]);
  const withBoard = async (id: string, act: (board: OwnBoardKept) => Promise<void>) => {
    const board = await openOwnBoard(id);
    if (board !== null) await act(board);
    await refresh();
  };
  const remove = (id: string) =>
    withBoard(id, async (board) => {
      await deleteOwnBoard(board);
      setDeleted(board);
    });
  const copy = (id: string) =>
    withBoard(id, ({ title, board, outcomes }) => {
      const name = `${title}, copy`;
      return keepOwnBoard({
        id: newBoardId(),
        title: name,
        board: { ...(board as object), name },
        outcomes,
      });
    });
  const undo = async (board: OwnBoardKept) => {
    await keepOwnBoard(board);
    setDeleted(null);
    await refresh();
  };
  return (
    <div className="intake">
      <header className="bench-bar">
        <button type="button" className="quiet" onClick={() => go("#/")}>
          Jobs
        </button>
        <h1>Own boards</h1>
      </header>
      <main>
        {kept !== null && kept.waiting > 0 && (
          <p className="sync" role="status">
            The bench computer has not taken {kept.waiting} changes yet; they are safe in this browser.
          </p>
        )}
        {deleted !== null && (
          <p className="sync undo-bar" role="status">
            <span>{deleted.title} is off the list.</span>
            <button type="button" onClick={() => void undo(deleted)}>
              Bring it back
            </button>
          </p>
        )}
        <BoardLines kept={kept} onRemove={(id) => void remove(id)} onCopy={(id) => void copy(id)} />
        <BringBoard boards={kept?.boards ?? []} onKept={() => void refresh()} />
        <button type="button" className="primary tall" onClick={() => go("#/new/board")}>
          Describe a board
        </button>
      </main>
    </div>
  );
}

interface LinesProps {
  readonly kept: OwnBoards | null;
  onRemove(id: string): void;
  onCopy(id: string): void;
}

function BoardLines({ kept, onRemove, onCopy }: LinesProps) {
  if (kept === null) return <p role="status">Looking…</p>;
  if (kept.boards.length === 0)
    return <p className="aside">None yet: describe one from a few questions, or bring a file of one.</p>;
  return (
    <ul className="own-boards" aria-label="Own boards">
      {kept.boards.map((board) => (
        <BoardLine key={board.id} board={board} onRemove={onRemove} onCopy={onCopy} />
      ))}
    </ul>
  );
}

function BoardLine({ board, onRemove, onCopy }: { readonly board: OwnBoardLine } & Omit<LinesProps, "kept">) {
  const { id, title, parts, assumed, versions, changedAt } = board;
  const day = changedAt === "" ? "" : `, ${new Date(changedAt).toLocaleDateString("en-GB")}`;
  return (
    <li>
      <a className="job" href={`#/boards/${id}`}>
        <span className="job-title">{title}</span>
        <span className="figure job-when">
          {parts} parts, {assumed} not seen; {versions === 1 ? "1 version" : `${versions} versions`}
          {day}
        </span>
      </a>
      <button type="button" aria-label={`Copy ${title}`} onClick={() => onCopy(id)}>
        Copy
      </button>
      <button type="button" aria-label={`Delete ${title}`} onClick={() => onRemove(id)}>
        Delete
      </button>
    </li>
  );
}
