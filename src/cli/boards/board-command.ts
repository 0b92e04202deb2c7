import type { Command } from "commander";
import { DONE, type Finish, type Io, refuse } from "../io.ts";
import { loadBoard } from "../load-job.ts";
import { addEdits } from "./board-edits.ts";
import { addNew } from "./board-new.ts";
import { boardText } from "./board-text.ts";

export function addBoard(program: Command, io: Io, finish: Finish): void {
  const board = program.command("board").description("make, change and look at board files");
  addNew(board, io, finish);
  addEdits(board, io, finish);
  board
    .command("check")
    .description("read a board file and say what the program makes of it")
    .argument("<file>", "a board file")
    .addHelpText("after", "\nExample:\n  $ faultwright board check boards/greenhouse-fan-drive.json")
    .action((file: string) => finish(() => check(file, io)));
}

function check(file: string, io: Io): number {
  const board = loadBoard(file);
  if (!board.ok) return refuse(io, board.problem);
  io.out(boardText(board.value));
  return DONE;
}
