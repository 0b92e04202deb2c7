import type { Sayings } from "../said.ts";
import { BENCH } from "./hi/bench.ts";
import { BENCH_2 } from "./hi/bench-2.ts";
import { BOARD } from "./hi/board.ts";
import { BOARDS } from "./hi/boards.ts";
import { COMPOSE } from "./hi/compose.ts";
import { JOB } from "./hi/job.ts";
import { PARTS } from "./hi/parts.ts";
import { PLANNING } from "./hi/planning.ts";
import { SCREENS } from "./hi/screens.ts";
import { SHELL } from "./hi/shell.ts";

export const HI: Sayings = {
  ...SHELL,
  ...BENCH,
  ...BENCH_2,
  ...SCREENS,
  ...BOARDS,
  ...PLANNING,
  ...JOB,
  ...BOARD,
  ...PARTS,
  ...COMPOSE,
};
