import type { Sayings } from "../said.ts";
import { BENCH } from "./ar/bench.ts";
import { BOARD } from "./ar/board.ts";
import { BOARDS } from "./ar/boards.ts";
import { COMPOSE } from "./ar/compose.ts";
import { JOB } from "./ar/job.ts";
import { LEARNT } from "./ar/learnt.ts";
import { MONEY } from "./ar/money.ts";
import { PARTS } from "./ar/parts.ts";
import { PLANNING } from "./ar/planning.ts";
import { PROBLEMS } from "./ar/problems.ts";
import { SCREENS } from "./ar/screens.ts";
import { SHELL } from "./ar/shell.ts";

export const AR: Sayings = {
  ...SHELL,
  ...BENCH,
  ...SCREENS,
  ...BOARDS,
  ...PLANNING,
  ...JOB,
  ...BOARD,
  ...PROBLEMS,
  ...MONEY,
  ...LEARNT,
  ...PARTS,
  ...COMPOSE,
};
