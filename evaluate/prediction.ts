/**
 * Is the engine's stated spread right? For oracle boards, given their true faults, how often a reading without a slip lies in the
 * engine's 95 % band, by kind of check, and the Brier score of `OL` and `beep`.
 * Run: npx tsx evaluate/prediction.ts [boards] [checks a board] [first seed] [board id]
 */
import { BARE_BENCH } from "./agreement.ts";
import { judgedBoards } from "./boards/judged-boards.ts";
import { type Predicted, predictBoard } from "./oracle/predict-board.ts";
import { predictionReport } from "./oracle/prediction-report.ts";

const [boards = 20, checks = 40, firstSeed = 10_000] = process.argv.slice(2, 5).map(Number);
const only = process.argv[5];

const found: Predicted[] = [];
let unsolved = 0;
let asked = 0;
const judged = judgedBoards(only);
for (let index = 0; index < boards; index++) {
  const chosen = judged[index % judged.length];
  if (chosen === undefined) break;
  const { rows, missing } = await predictBoard(
    chosen.board,
    chosen.id,
    firstSeed + index,
    checks,
    BARE_BENCH,
  );
  found.push(...rows);
  unsolved += missing;
  asked += rows.length + missing;
}
console.log(
  `${boards} boards (seeds ${firstSeed} to ${firstSeed + boards - 1}), ${asked} checks, ${unsolved} without an answer on either side`,
);
console.log(predictionReport(found));
