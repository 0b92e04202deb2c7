import type { Command } from "commander";
import { boardText } from "../board-text.ts";
import { DONE, type Finish, type Io, refuse } from "../io.ts";
import { loadBoard } from "../load-job.ts";

export function addBoard(program: Command, io: Io, finish: Finish): void {
  const board = program.command("board").description("look at a board file");
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
