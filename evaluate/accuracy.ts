/**
 * `npm run accuracy`: our solver against ngspice on every shipped board, healthy and with every single fault, on seeded pairs of
 * places. Exits 1 where any sample lies outside the bounds or is missing. An argument gives the checks per fault (default 2).
 */

import type { Board } from "../src/board/board.ts";
import { parseBoard } from "../src/board/parse-board.ts";
import { SHIPPED } from "../src/shipped/shipped.ts";
import { type Compared, compare, drawSamples, inWords, type Sample, singleFaults } from "./agreement.ts";
import { hasNgspice } from "./ngspice.ts";

const SEED = 20261125;
/** Healthy and this many faulted boards are also compared while their capacitors charge. */
const CLIMBING_SETS = 12;
const CLIMBING_SECONDS = [0.5, 2] as const;

function climbingSamples(board: Board): Sample[] {
  const sets = singleFaults(board);
  const every = Math.max(1, Math.floor(sets.length / CLIMBING_SETS));
  const chosen = sets.filter((_, index) => index % every === 0);
  return drawSamples(board, chosen, 1, SEED + 1)
    .filter(({ check }) => check.mode !== "farads")
    .map(({ check, faults }, index) => ({
      faults,
      check: { ...check, seconds: CLIMBING_SECONDS[index % 2] },
    }));
}

function row(title: string, compared: readonly Compared[]): string {
  const missing = compared.filter((one) => !Number.isFinite(one.miss)).length;
  const outside = compared.filter((one) => one.miss > 1).length;
  const read = compared.filter((one) => !one.open).length;
  const worst = Math.max(0, ...compared.filter((one) => Number.isFinite(one.miss)).map((one) => one.miss));
  const cells = [
    compared.length,
    `${((100 * read) / Math.max(1, compared.length)).toFixed(0)} %`,
    worst.toFixed(4),
    outside,
    missing,
  ];
  return [title.padEnd(28), ...cells.map((cell) => String(cell).padStart(12))].join("");
}

async function main(): Promise<number> {
  if (!(await hasNgspice())) {
    console.error("ngspice is not on the PATH; install it (for example: apt install ngspice) and run again");
    return 2;
  }
  const perSet = Number(process.argv[2] ?? 2);
  let failures = 0;
  for (const shipped of SHIPPED) {
    const board = parseBoard(shipped.board);
    if (!board.ok) throw new Error(`${shipped.id}: ${board.problem}`);
    console.log(
      `\n${shipped.title}: ${board.value.parts.size} parts, ${singleFaults(board.value).length - 1} single faults, seed ${SEED}`,
    );
    console.log(
      `${"".padEnd(28)}${["samples", "not OL", "worst/bound", "outside", "missing"].map((head) => head.padStart(12)).join("")}`,
    );
    const settled = await compare(
      board.value,
      drawSamples(board.value, singleFaults(board.value), perSet, SEED),
    );
    const climbing = await compare(board.value, climbingSamples(board.value));
    for (const mode of ["diode", "continuity", "ohms", "farads"] as const)
      console.log(
        row(
          mode,
          settled.filter((one) => one.check.mode === mode),
        ),
      );
    console.log(row("climbing", climbing));
    const bad = [...settled, ...climbing].filter((one) => one.miss > 1);
    for (const one of bad) console.log(`  exception: ${inWords(one)}`);
    failures += bad.length;
  }
  console.log(
    `\n${failures} samples outside the bounds (0.1 mV; 0.1 % of ohms and farads; 1 % while climbing) or missing`,
  );
  return failures === 0 ? 0 : 1;
}

process.exitCode = await main();
