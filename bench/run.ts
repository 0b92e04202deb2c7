/** `npm run bench`: speed, as ratios against a peer in the same run. Never a test. */
import { loadavg } from "node:os";
import { SHIPPED } from "../src/shipped/shipped.ts";
import { measureWaits } from "./reading-to-proposal.ts";
import { measureSolves } from "./solve.ts";

console.log(
  `machine load ${loadavg()
    .map((load) => load.toFixed(1))
    .join(" ")}`,
);
for (const { id } of SHIPPED) {
  const { ours, peer } = measureSolves(id);
  console.log(
    `${id}: one solve with its spread ${ours.toFixed(0)} us, ngspice op ${peer.toFixed(0)} us: ratio ${(peer / ours).toFixed(1)}`,
  );
  const waits = await measureWaits(id, [1, 2, 3]);
  console.log(
    `${id}: reading to proposal over ${waits.proposals} proposals: median ${waits.medianMs.toFixed(0)} ms, ` +
      `95 % ${waits.ninetyFifthMs.toFixed(0)} ms, slowest ${waits.slowestMs.toFixed(0)} ms (median = ${((1000 * waits.medianMs) / peer).toFixed(0)} ngspice ops)`,
  );
}
