import type { Command } from "commander";
import { foldLog } from "../../bench/fold.ts";
import { sharingPredictors } from "../../meter/predictor.ts";
import { DEFAULT_METER } from "../../meter/settings.ts";
import { reviewBoard } from "../../review/board-review.ts";
import { answerText } from "../answer-text.ts";
import { DONE, type Finish, type Io, refuse, whileTold } from "../io.ts";
import { loadBoard } from "../load-job.ts";
import { addDecks } from "./board-decks.ts";
import { addEdits } from "./board-edits.ts";
import { addNew } from "./board-new.ts";
import { addPack } from "./board-pack.ts";
import { addGoodReadings } from "./board-references.ts";
import { boardText } from "./board-text.ts";
import { reviewText } from "./review-text.ts";

export function addBoard(program: Command, io: Io, finish: Finish): void {
  const board = program.command("board").description("make, change and look at board files");
  addNew(board, io, finish);
  addEdits(board, io, finish);
  addDecks(board, io, finish);
  addPack(board, io, finish);
  addGoodReadings(board, io, finish);
  board
    .command("check")
    .description(
      "read a board file: what the program makes of it, what is odd in it, what no cold check tells apart",
    )
    .argument("<file>", "a board file")
    .option("--json", "one JSON object for a script")
    .addHelpText("after", "\nExample:\n  $ faultwright board check boards/greenhouse-fan-drive.json")
    .action((file: string, options: { json?: true }) => finish(() => check(file, options.json === true, io)));
}

function check(file: string, json: boolean, io: Io): number {
  const loaded = loadBoard(file);
  if (!loaded.ok) return refuse(io, loaded.problem);
  const board = loaded.value;
  const untouched = foldLog(board, [], []);
  if (!untouched.ok) return refuse(io, `${file}: ${untouched.problem}`);
  const bench = untouched.value.now;
  const review = whileTold(io, () => reviewBoard(board, bench, DEFAULT_METER, sharingPredictors(undefined)));
  io.out(json ? answerText(review) : `${boardText(board)}${reviewText(review, board)}`);
  return DONE;
}
