/** Which board: a shipped one that this one is like. What comes off by a plug is taken as not having come with it. */
import { useEffect, useState } from "react";
import { said } from "../../messages/said.ts";
import type { BoardList } from "../../wire/job-api.ts";
import { boardFile, boardList } from "../board-keeper.ts";
import { go } from "../route.ts";
import { say } from "../say.ts";
import { Choices } from "./choices.tsx";
import { chosenBoard, type IntakeProps } from "./intake.ts";

export function BoardChoice({ intake, change }: IntakeProps) {
  const [boards, setBoards] = useState<BoardList["boards"] | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  useEffect(() => {
    boardList().then(
      (list) => setBoards(list.boards),
      (error: Error) => setProblem(error.message),
    );
  }, []);
  const choose = async (boardId: string) => {
    change({ boardId, board: null, marks: new Map() });
    const file = await boardFile(boardId);
    if (file === null)
      return setProblem(said`That board is not in this browser, and the bench computer is away.`);
    change(chosenBoard(boardId, file.board));
  };
  return (
    <>
      {problem !== null && (
        <p role="alert" className="problem">
          {say(problem)}
        </p>
      )}
      {boards !== null && boards.length === 0 && (
        <p role="alert" className="problem">
          {say`No boards are known here yet: open this page once while the bench computer answers.`}
        </p>
      )}
      <Choices
        title={say`The board: one like this`}
        choices={(boards ?? []).map(({ id, title }) => ({ value: id, words: say(title) }))}
        value={intake.boardId}
        onValue={(id) => void choose(id)}
      />
      <button type="button" onClick={() => go("#/new/board")}>
        {say`None is like it: describe the board`}
      </button>
    </>
  );
}
