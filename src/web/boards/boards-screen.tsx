/** The boards of one's own: open, copy, delete and bring back. */
import { useCallback, useEffect, useState } from "react";
import { saidCount } from "../../messages/said.ts";
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
import { named, say, sayWith } from "../say.ts";
import { when } from "../when.ts";
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
      const name = named(say`${title}, copy`);
      const id = newBoardId();
      // a board of its own from here on: its pictures are not those of the first
      return keepOwnBoard({
        id,
        title: name,
        board: { ...(board as object), name, identity: id },
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
          {say`Jobs`}
        </button>
        <h1>{say`Own boards`}</h1>
      </header>
      <main>
        {kept !== null && kept.waiting > 0 && (
          <p className="sync" role="status">
            {say(
              saidCount(
                kept.waiting,
                "The bench computer has not taken {0} change yet; it is safe in this browser.",
                "The bench computer has not taken {0} changes yet; they are safe in this browser.",
              ),
            )}
          </p>
        )}
        {deleted !== null && (
          <p className="sync undo-bar" role="status">
            <span>{sayWith`${<bdi>{deleted.title}</bdi>} is off the list.`}</span>
            <button type="button" onClick={() => void undo(deleted)}>
              {say`Bring it back`}
            </button>
          </p>
        )}
        <BoardLines kept={kept} onRemove={(id) => void remove(id)} onCopy={(id) => void copy(id)} />
        <BringBoard boards={kept?.boards ?? []} onKept={() => void refresh()} />
        <button type="button" className="primary tall" onClick={() => go("#/new/board")}>
          {say`Describe a board`}
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
  if (kept === null) return <p role="status">{say`Looking…`}</p>;
  if (kept.boards.length === 0)
    return (
      <p className="aside">{say`None yet: describe one from a few questions, or bring a file of one.`}</p>
    );
  return (
    <ul className="own-boards" aria-label={say`Own boards`}>
      {kept.boards.map((board) => (
        <BoardLine key={board.id} board={board} onRemove={onRemove} onCopy={onCopy} />
      ))}
    </ul>
  );
}

function BoardLine({ board, onRemove, onCopy }: { readonly board: OwnBoardLine } & Omit<LinesProps, "kept">) {
  const { id, title, parts, assumed, versions, changedAt } = board;
  const partsOf = saidCount(parts, "{0} part, {1} not seen", "{0} parts, {1} not seen", assumed);
  const versionsOf = saidCount(versions, "1 version", "{0} versions");
  return (
    <li>
      <a className="job" href={`#/boards/${id}`}>
        <bdi className="job-title">{title}</bdi>
        <span className="figure job-when">
          {changedAt === ""
            ? say`${partsOf}; ${versionsOf}`
            : say`${partsOf}; ${versionsOf}, ${when(changedAt, { day: "2-digit", month: "2-digit", year: "numeric" })}`}
        </span>
      </a>
      <button type="button" aria-label={say`Copy ${title}`} onClick={() => onCopy(id)}>
        {say`Copy`}
      </button>
      <button type="button" aria-label={say`Delete ${title}`} onClick={() => onRemove(id)}>
        {say`Delete`}
      </button>
    </li>
  );
}
