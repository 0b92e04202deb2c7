import type { Sayings } from "../said.ts";
import { BENCH } from "./ar/bench.ts";
import { BENCH_2 } from "./ar/bench-2.ts";
import { BOARD } from "./ar/board.ts";
import { BOARDS } from "./ar/boards.ts";
import { COMPOSE } from "./ar/compose.ts";
import { COMPOSE_2 } from "./ar/compose-2.ts";
import { JOB } from "./ar/job.ts";
import { LEARNT } from "./ar/learnt.ts";
import { MONEY } from "./ar/money.ts";
import { PARTS } from "./ar/parts.ts";
import { PARTS_2 } from "./ar/parts-2.ts";
import { PARTS_3 } from "./ar/parts-3.ts";
import { PARTS_4 } from "./ar/parts-4.ts";
import { PLANNING } from "./ar/planning.ts";
import { PLANNING_POWER } from "./ar/planning-power.ts";
import { PROBLEMS } from "./ar/problems.ts";
import { SAFETY } from "./ar/safety.ts";
import { SCREENS } from "./ar/screens.ts";
import { SHELL } from "./ar/shell.ts";

export const AR: Sayings = {
  ...SHELL,
  ...BENCH,
  ...BENCH_2,
  ...SCREENS,
  ...BOARDS,
  ...PLANNING,
  ...PLANNING_POWER,
  ...SAFETY,
  ...JOB,
  ...BOARD,
  ...PROBLEMS,
  ...MONEY,
  ...LEARNT,
  ...PARTS,
  ...COMPOSE,
  ...PARTS_3,
  ...COMPOSE_2,
  ...PARTS_4,
  ...PARTS_2,
};
