/**
 * `node scripts/bundled.mjs evaluate/suspects.ts [boards] [first seed] [board id] [--name NAME]`: are the probabilities of parts right?
 * On oracle boards the engine's cold proposals are followed, and where it proposes power, a cure or the end, what tells most for its minutes, up to
 * eighty readings; the belief is held against the truth on the way. One line a board goes to `reports/suspects/NAME.jsonl`; what is there is not played again.
 * With `--report` the arguments are such files, which are joined.
 */
import { appendFileSync, existsSync, mkdirSync, readFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { judgedBoards } from "./boards/judged-boards.ts";
import { type ColdSession, coldSession, MARKS } from "./cold-session.ts";
import { suspectsText } from "./suspects-text.ts";

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { report: { type: "boolean", default: false }, name: { type: "string" } },
});

function readSessions(path: string): readonly ColdSession[] {
  if (!existsSync(path)) return [];
  const lines = readFileSync(path, "utf8").split("\n");
  return lines.filter((line) => line !== "").map((line) => JSON.parse(line) as ColdSession);
}

async function play(): Promise<readonly ColdSession[]> {
  const [count = 12, first = 1] = positionals.slice(0, 2).map(Number);
  const only = positionals[2];
  const boards = judgedBoards(only);
  const path = `reports/suspects/${values.name ?? [first, count, ...(only === undefined ? [] : [only])].join("-")}.jsonl`;
  mkdirSync("reports/suspects", { recursive: true });
  const done = new Set(readSessions(path).map(({ board, seed }) => `${board} ${seed}`));
  for (let seed = first; seed < first + count; seed++) {
    const chosen = boards[seed % boards.length];
    if (chosen === undefined || done.has(`${chosen.id} ${seed}`)) continue;
    const session = await coldSession(chosen.id, chosen.board, seed);
    appendFileSync(path, `${JSON.stringify(session)}\n`);
    const last = session.snapshots.at(-1);
    const rank = session.dead.map(
      (name) => `${name} ${1 + (last?.probabilities.findIndex(([one]) => one === name) ?? -1)}`,
    );
    console.log(
      `${chosen.id} ${seed} ${session.cause}: ${session.faults.join(" ")} | can be told: ${session.tellable.join(" ") || "none"} | ranks after ${last?.readings} readings: ${rank.join(" ")} | first not followed: ${session.ended}`,
    );
  }
  return readSessions(path);
}

const sessions = values.report ? positionals.flatMap(readSessions) : await play();
if (sessions.length === 0) throw new Error("there is no session to report");
console.log(suspectsText(sessions, [...MARKS, "end"]));
