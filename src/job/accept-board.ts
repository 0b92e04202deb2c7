import { parseBoard } from "../board/parse-board.ts";
import type { AcceptBoard } from "./board-store.ts";

/** A board of one's own is kept where it reads as a board. */
export const acceptBoard: AcceptBoard = (content) => {
  const board = parseBoard(content);
  return board.ok ? null : board.problem;
};
