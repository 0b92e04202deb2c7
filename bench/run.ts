/**
 * `npm run bench [most parts]`: speed against the number of parts, and as ratios against a peer in the same run; writes
 * `reports/speed.svg`. Milliseconds are of this machine with whatever else runs on it; the ratios hold wherever. Never a test.
 */
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { loadavg } from "node:os";
import { sizeSeries } from "../evaluate/boards/evaluation-boards.ts";
import { sizedBoard } from "../evaluate/boards/size-series.ts";
import { shippedBoards } from "../evaluate/oracle/shipped-boards.ts";
import { measureMemory } from "./memory.ts";
import { bundledPrograms, measureNext } from "./next-from-nothing.ts";
import { measureWaits, type Waits } from "./reading-to-proposal.ts";
import { measureSolves, type Solves } from "./solve.ts";
import { type Bar, type Line, speedPlot } from "./speed-plot.ts";

const SEEDS = [1, 2, 3];
/** What is asked for: a warm proposal (95 %) and a script's `next` with twelve readings. */
const BARS: readonly Bar[] = [
  { name: "warm proposal, 95 %", parts: 100, ms: 80 },
  { name: "warm proposal, 95 %", parts: 600, ms: 250 },
  { name: "next from nothing", parts: 100, ms: 300 },
  { name: "next from nothing", parts: 600, ms: 1000 },
];

const mostParts = Number(process.argv[2] ?? 1200);
const load = loadavg().map((one) => one.toFixed(1));
console.log(
  `machine load ${load.join(" ")}; next is timed from the start of Node to its end, median of ${SEEDS.length} jobs`,
);
const programs = bundledPrograms();
const series = sizeSeries().filter(({ size }) => size <= mostParts);
const rows: { parts: number; solves: Solves; waits: Waits; next: number }[] = [];
for (const { id, size, board } of series) {
  const solves = measureSolves(board);
  const waits = await measureWaits(board, SEEDS);
  const memory = await measureMemory(board, [1, 2, 3, 4, 5]);
  const next = await measureNext(programs, board, sizedBoard(size), SEEDS);
  const parts = board.parts.size;
  rows.push({ parts, solves, waits, next });
  const us = (value: number): string => `${value.toPrecision(3)} us`;
  const times = (peer: number, own: number): string => `${(peer / own).toFixed(1)} times`;
  console.log(
    `${id} (${parts} parts): one solve ${us(solves.solve)}, with its spread ${us(solves.withSpread)}; ngspice op with destroy all ${us(solves.peerOp)} (${times(solves.peerOp, solves.solve)}, ${times(solves.peerOp, solves.withSpread)}); ` +
      `one point of a sweep ${us(solves.sweepPoint)}; ngspice .dc point ${us(solves.peerPoint)} (${times(solves.peerPoint, solves.sweepPoint)})`,
  );
  console.log(
    `${id}: reading to proposal over ${waits.proposals}: median ${waits.medianMs.toFixed(0)} ms, 95 % ${waits.ninetyFifthMs.toFixed(0)} ms, slowest ${waits.slowestMs.toFixed(0)} ms; ` +
      `fresh job: first proposal ${waits.firstMs.toFixed(0)} ms, first that is weighed ${waits.firstWeighedMs.toFixed(0)} ms; next from nothing ${next.toFixed(0)} ms; ` +
      `worked ahead while hands are busy: median ${waits.aheadMedianMs.toFixed(0)} ms, 95 % ${waits.aheadNinetyFifthMs.toFixed(0)} ms, for ${waits.spentAheadMs.toFixed(0)} ms spent`,
  );
  console.log(
    `${id}: engine memory over five jobs: most ${memory.most.toFixed(0)} MB, at the end ${memory.atEnd.toFixed(0)} MB`,
  );
}
rmSync(programs, { recursive: true });
const line = (name: string, colour: string, ms: (row: (typeof rows)[number]) => number): Line => ({
  name,
  colour,
  points: rows.map((row) => [row.parts, ms(row)] as const),
});
mkdirSync("reports", { recursive: true });
writeFileSync(
  "reports/speed.svg",
  speedPlot(
    [
      line("one point of a sweep", "#56b4e9", ({ solves }) => solves.sweepPoint / 1000),
      line("one solve", "#0072b2", ({ solves }) => solves.solve / 1000),
      line("one solve with its spread", "#f0e442", ({ solves }) => solves.withSpread / 1000),
      line("ngspice, one .dc point", "#999999", ({ solves }) => solves.peerPoint / 1000),
      line("ngspice, op and destroy all", "#000000", ({ solves }) => solves.peerOp / 1000),
      line("warm proposal, median", "#009e73", ({ waits }) => waits.medianMs),
      line("warm proposal, 95 %", "#d55e00", ({ waits }) => waits.ninetyFifthMs),
      line("warm, worked ahead, 95 %", "#999933", ({ waits }) => waits.aheadNinetyFifthMs),
      line("first weighed proposal, fresh job", "#cc79a7", ({ waits }) => waits.firstWeighedMs),
      line("next from nothing, 12 readings", "#e69f00", ({ next }) => next),
    ],
    BARS,
  ),
);
console.log("reports/speed.svg written");
if (mostParts >= 1200)
  for (const { id, board } of shippedBoards()) {
    const waits = await measureWaits(board, SEEDS);
    console.log(
      `${id} (${board.parts.size} parts): reading to proposal over ${waits.proposals}: median ${waits.medianMs.toFixed(0)} ms, 95 % ${waits.ninetyFifthMs.toFixed(0)} ms, slowest ${waits.slowestMs.toFixed(0)} ms`,
    );
  }
