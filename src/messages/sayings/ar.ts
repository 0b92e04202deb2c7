import type { Sayings } from "../said.ts";
import { ALBUMS } from "./ar/albums.ts";
import { BENCH } from "./ar/bench.ts";
import { BENCH_2 } from "./ar/bench-2.ts";
import { BOARD } from "./ar/board.ts";
import { BOARDS } from "./ar/boards.ts";
import { COMPOSE } from "./ar/compose.ts";
import { COMPOSE_2 } from "./ar/compose-2.ts";
import { JOB } from "./ar/job.ts";
import { LEARNING } from "./ar/learning.ts";
import { LEARNT } from "./ar/learnt.ts";
import { MONEY } from "./ar/money.ts";
import { PARTS } from "./ar/parts.ts";
import { PARTS_2 } from "./ar/parts-2.ts";
import { PARTS_3 } from "./ar/parts-3.ts";
import { PARTS_4 } from "./ar/parts-4.ts";
import { PICTURE } from "./ar/picture.ts";
import { PLANNING } from "./ar/planning.ts";
import { PLANNING_POWER } from "./ar/planning-power.ts";
import { PROBLEMS } from "./ar/problems.ts";
import { SAFETY } from "./ar/safety.ts";
import { SCREENS } from "./ar/screens.ts";
import { SHELL } from "./ar/shell.ts";
import { SHOP } from "./ar/shop.ts";

export const AR: Sayings = {
  ...ALBUMS,
  ...BENCH_2,
  ...BENCH,
  ...BOARD,
  ...BOARDS,
  ...COMPOSE_2,
  ...COMPOSE,
  ...JOB,
  ...LEARNING,
  ...LEARNT,
  ...MONEY,
  ...PARTS_2,
  ...PARTS_3,
  ...PARTS_4,
  ...PARTS,
  ...PICTURE,
  ...PLANNING_POWER,
  ...PLANNING,
  ...PROBLEMS,
  ...SAFETY,
  ...SCREENS,
  ...SHELL,
  ...SHOP,
};
