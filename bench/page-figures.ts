/**
 * `npm run bench:page [seconds a reading]`: what the page weighs at its first load, how long an interaction takes to the next paint with the
 * processor slowed to a quarter, and twelve readings by the stopwatch. A report, never a test.
 */
import { loadavg } from "node:os";
import { servePage } from "../test/browser/served-page.ts";
import { firstLoad } from "./page/first-load.ts";
import { interactions, SLOWED } from "./page/interactions.ts";
import { PAPER_SECONDS, READINGS, stopwatch } from "./page/stopwatch.ts";

/** Moving both probes and reading the display: from memory, an unhurried hand. */
const HAND_SECONDS = 6;

const handSeconds = Number(process.argv[2] ?? HAND_SECONDS);
const served = await servePage();
try {
  const kilobytes = (bytes: number) => `${(bytes / 1000).toFixed(0)} kB`.padStart(8);
  console.log(
    `machine load ${loadavg()
      .map((one) => one.toFixed(1))
      .join(" ")}`,
  );
  console.log("\nFirst load: bytes as sent, and compressed (gzip 9)");
  for (const { what, bytes, gzip } of await firstLoad(served))
    console.log(`  ${what.padEnd(24)} ${kilobytes(bytes)} ${kilobytes(gzip)}`);

  const { slowest, count, median, ninetyEighth } = await interactions(served);
  console.log(
    `\nInteraction to next paint, processor slowed ${SLOWED} times, Chromium's own EventTiming trace`,
  );
  console.log(
    `  ${count} interactions: median ${median.toFixed(0)} ms, 98th in a hundred ${ninetyEighth.toFixed(0)} ms`,
  );
  for (const { label, ms } of slowest) console.log(`  ${ms.toFixed(0).padStart(5)} ms  ${label}`);

  const { seconds, waits, taps, between } = await stopwatch(served, handSeconds);
  const paper = READINGS * (handSeconds + PAPER_SECONDS.write + PAPER_SECONDS.lookUp);
  console.log(`\n${READINGS} readings, ${handSeconds} s for the hands at each (from memory)`);
  console.log(
    `  here      ${seconds.toFixed(0)} s: ${taps} taps, ${between} other screens between two readings`,
  );
  console.log(
    `  from tap to the next check: median ${waits.median.toFixed(2)} s, slowest ${waits.slowest.toFixed(2)} s`,
  );
  console.log(
    `  on paper  ${paper.toFixed(0)} s: ${PAPER_SECONDS.write} s to put the probes down and write, ${PAPER_SECONDS.lookUp} s to find the next pair and its value (from memory)`,
  );
} finally {
  await served.close();
}
