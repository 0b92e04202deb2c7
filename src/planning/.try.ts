import { parseFault } from "/work/main/src/board/parse-fault.ts";
import { propose } from "/work/main/src/planning/propose.ts";
import { provenEmpty, ruleMeter, scene, smallDriveBoard } from "/work/main/src/planning/scene.fixture.ts";

const board = smallDriveBoard();
const truthNames = process.argv[2] ? process.argv[2].split(",") : [];
let truth = truthNames.map((n) => {
  const f: any = parseFault(n, board);
  if (!f.ok) throw new Error(f.problem);
  return f.value;
});
const log: any[] = [...provenEmpty(board)];
let minutes = 0,
  money = 0;
for (let i = 0; i < 40; i++) {
  const t0 = performance.now();
  const s = scene(board, log);
  const t1 = performance.now();
  const p = propose(s.input, s.belief, s.priors, s.predictor);
  const t2 = performance.now();
  const a: any = p.action;
  minutes += p.minutes;
  money += p.money;
  console.log(
    i,
    JSON.stringify(a),
    "row",
    p.row.length,
    "| margin",
    p.outlook.expectedMargin.toFixed(1),
    p.outlook.repairProbability.toFixed(2),
    `| ${(t1 - t0).toFixed(0)}+${(t2 - t1).toFixed(0)} ms |`,
    s.belief.explanations
      .slice(0, 3)
      .map(
        (e) =>
          e.faults.map((f) => s.belief.priors[f.fault].reportAs).join("+") + " " + e.probability.toFixed(2),
      )
      .join("; "),
  );
  if (process.env.V) console.log("    why:", p.why);
  if (process.env.V)
    for (const e of p.expect.slice(0, 4)) console.log("       ", e.if, e.probability.toFixed(3), e.means);
  if (p.atStake) console.log("    STAKE", JSON.stringify(p.atStake));
  if (p.forecast)
    console.log(
      "    FORECAST",
      p.forecast.anyBreaks.toFixed(3),
      p.forecast.breaks.slice(0, 3).map((b) => b.part + " " + b.probability.toFixed(3) + " " + b.because),
    );
  if (a.do === "close") break;
  for (const act of [a, ...(p.row as any[])]) {
    if (act.do === "measure" && act.mode === "dcv") log.push({ ...act, reading: 0.2 });
    else if (act.do === "measure") {
      const r: any = ruleMeter(board, s.input.bench).predict(act, truth);
      log.push({ ...act, reading: typeof r.shown === "number" ? Number(r.shown.toPrecision(3)) : r.shown });
    } else if (act.do === "look") log.push({ ...act, finding: "clean" });
    else if (act.do === "replace") {
      truth = truth.filter((f) => f.part !== act.part);
      log.push(act);
    } else if (act.do === "power") log.push({ ...act, observed: truth.length === 0 ? "runs" : "quiet" });
    else log.push(act);
  }
}
console.log({ minutes, money });
