import { readFileSync } from "node:fs";
import { isColdMode } from "../src/bench/words.ts";
import { AssessmentSession, beliefOf } from "../src/job/assess.ts";
import { asMarked } from "../src/job/marked.ts";
import { judgedBoards } from "./boards/judged-boards.ts";
import { markFigures } from "./suspect-figures.ts";
import { suspectsText } from "./suspects-text.ts";
import { trialJob } from "./trial.ts";

const marks = [5, 10, 20, 40, "end"] as const;
const boards = judgedBoards(undefined as any);
const out: any[] = [];
const only =
  process.argv[3] && process.argv[3] !== "all" ? process.argv[3].split(",").map(Number) : undefined;
let t = 0;
for (const line of readFileSync(process.argv[2]!, "utf8")
  .trim()
  .split("\n")
  .map((l) => JSON.parse(l))) {
  if (only && !only.includes(line.seed)) continue;
  const c = boards.find((b) => b.id === line.board)!;
  const job0 = trialJob(c.board, line.seed, line.symptom);
  const session = new AssessmentSession();
  const snapshots: any[] = [];
  let n = 0;
  const cuts: [number, number][] = [[0, 0]];
  line.log.forEach((e: any, i: number) => {
    if (e.do === "measure" && isColdMode(e.mode)) {
      n++;
      if (n === 5 || n === 10 || n === 20 || n === 40) cuts.push([n, i + 1]);
    }
  });
  cuts.push([n, line.log.length]);
  for (const [k, at] of cuts) {
    const log = line.log.slice(0, at);
    const job = { ...job0, ...asMarked(job0.board, job0.absent, log), log };
    const u0 = process.cpuUsage().user;
    const b = beliefOf(job, session);
    if (!b.ok) throw new Error(b.problem);
    t += process.cpuUsage().user - u0;
    snapshots.push({
      readings: k,
      probabilities: b.value.belief.suspects.map((s) => [s.part, s.probability]),
    });
  }
  out.push({ ...line, snapshots });
  if (process.argv[4]) {
    const last = snapshots.at(-1);
    const rank = (x: string) => 1 + last.probabilities.findIndex(([o]: any) => o === x);
    console.log(
      line.seed,
      line.board,
      line.differences.length ? "UNLIKE" : "",
      "n",
      last.readings,
      "dead",
      line.dead
        .map(
          (d: string) =>
            `${d}${line.tellable.includes(d) ? "*" : ""} ${rank(d)} ${(last.probabilities.find(([o]: any) => o === d)?.[1] ?? 0).toPrecision(2)}`,
        )
        .join(" | "),
      " top:",
      last.probabilities
        .slice(0, line.dead.length + 1)
        .map(([o, p]: any) => `${o} ${p.toFixed(2)}`)
        .join(" "),
      line.faults.join(" "),
    );
  }
}
console.log(suspectsText(out, marks as any));
console.log("cpu s", t / 1e6);
const told = out.flatMap((s) =>
  s.tellable.map((d: string) =>
    s.snapshots
      .at(-1)
      .probabilities.slice(0, s.dead.length + 1)
      .some(([o]: any) => o === d),
  ),
);
console.log("tellable faults in top", told.filter(Boolean).length, "of", told.length);
