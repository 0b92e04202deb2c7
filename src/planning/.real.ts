import { readFileSync } from "node:fs";
import { benchKey } from "/work/main/src/bench/bench-state.ts";
import { foldLog } from "/work/main/src/bench/fold.ts";
import { parseBoard } from "/work/main/src/board/parse-board.ts";
import { parseFault } from "/work/main/src/board/parse-fault.ts";
import { believe } from "/work/main/src/diagnosis/believe.ts";
import { AudibleMemory } from "/work/main/src/diagnosis/cold-evidence.ts";
import { makePredictor } from "/work/main/src/meter/predictor.ts";
import { DEFAULT_METER } from "/work/main/src/meter/settings.ts";
import { DEFAULT_TERMS } from "/work/main/src/money/terms.ts";
import { propose } from "/work/main/src/planning/propose.ts";
import { provenEmpty, smallDriveBoard } from "/work/main/src/planning/scene.fixture.ts";
import { priorTable } from "/work/main/src/priors/prior-table.ts";

let board: any = smallDriveBoard();
const file = process.env.BOARD;
if (file) {
  const p: any = parseBoard(JSON.parse(readFileSync(file, "utf8")));
  if (!p.ok) throw new Error(p.problem);
  board = p.value;
}
const cause: any = process.env.CAUSE ?? "surge";
let truth = (process.argv[2] ? process.argv[2].split(",") : []).map((n) => {
  const f: any = parseFault(n, board);
  if (!f.ok) throw new Error(f.problem);
  return f.value;
});
const preds = new Map<string, any>();
const predictorFor = (b: any) => {
  const k = benchKey(b);
  let p = preds.get(k);
  if (!p) {
    p = makePredictor(board, b, DEFAULT_METER);
    preds.set(k, p);
  }
  return p;
};
const memory = new AudibleMemory();
const priors = priorTable(board, cause, "dead");
console.log(
  board.name,
  board.parts.size,
  "parts",
  priors.faults.length,
  "priors",
  priors.knockOns.length,
  "knock-ons",
);
const log: any[] = [...provenEmpty(board)];
let minutes = 0,
  money = 0;
const V = process.env.V;
for (let i = 0; i < Number(process.env.N ?? 40); i++) {
  const tl: any = foldLog(board, [], log);
  if (!tl.ok) throw new Error(tl.problem);
  const timeline = tl.value;
  const t0 = performance.now();
  const c0 = process.cpuUsage();
  const belief = believe({ board, timeline, cause, priors, absent: [], predictorFor, memory });
  const t1 = performance.now();
  const c1 = process.cpuUsage();
  const p = propose(
    {
      board,
      bench: timeline.now,
      timeline,
      terms: { ...DEFAULT_TERMS },
      equipment: ["lamp-100"],
      cause,
      predictorFor,
    },
    belief,
    priors,
    predictorFor(timeline.now),
  );
  const t2 = performance.now();
  const c2 = process.cpuUsage(c1);
  const a: any = p.action;
  minutes += p.minutes + 0.4 * p.row.length;
  money += p.money;
  console.log(
    i,
    JSON.stringify(a),
    "row",
    p.row.length,
    "| margin",
    p.outlook.expectedMargin.toFixed(1),
    p.outlook.repairProbability.toFixed(2),
    `| ${(t1 - t0).toFixed(0)}+${(t2 - t1).toFixed(0)} ms, cpu ${((c2.user + c2.system) / 1000).toFixed(0)} |`,
    belief.explanations
      .slice(0, 3)
      .map(
        (e: any) =>
          e.faults.map((f: any) => belief.priors[f.fault].reportAs).join("+") +
          " " +
          e.probability.toFixed(2),
      )
      .join("; "),
  );
  if (V) {
    console.log("    why:", p.why);
    for (const e of p.expect.slice(0, 4)) console.log("       ", e.if, e.probability.toFixed(3), e.means);
    for (const r of p.row) console.log("     row", JSON.stringify(r));
    for (const o of p.others) console.log("      other", JSON.stringify(o.action));
  }
  if (p.atStake) console.log("    STAKE", JSON.stringify(p.atStake));
  if (p.forecast)
    console.log(
      "    FORECAST",
      p.forecast.anyBreaks.toFixed(3),
      p.forecast.breaks.slice(0, 3).map((b) => b.part + " " + b.probability.toFixed(3) + " " + b.because),
    );
  if (a.do === "close") break;
  const replay = false;
  for (const act of [a, ...(p.row as any[])]) {
    if (act.do === "measure" && act.mode === "dcv") log.push({ ...act, reading: 0.2 });
    else if (act.do === "measure") {
      const r: any = predictorFor(timeline.now).predict(act, truth);
      log.push({ ...act, reading: typeof r.shown === "number" ? Number(r.shown.toPrecision(3)) : r.shown });
      if (V) console.log("        ->", act.mode, act.red, act.black, log[log.length - 1].reading);
    } else if (act.do === "look") log.push({ ...act, finding: "clean" });
    else if (act.do === "replace") {
      truth = truth.filter((f) => f.part !== act.part);
      log.push(act);
    } else if (act.do === "clean") {
      truth = truth.filter((f) => f.of !== "nets");
      log.push(act);
    } else if (act.do === "power") log.push({ ...act, observed: truth.length === 0 ? "runs" : "quiet" });
    else log.push(act);
  }
}
console.log({ minutes, money });
