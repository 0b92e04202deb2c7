import type { Sayings } from "../said.ts";
import { ALBUMS } from "./es/albums.ts";
import { BENCH } from "./es/bench.ts";
import { BENCH_2 } from "./es/bench-2.ts";
import { BOARD } from "./es/board.ts";
import { BOARDS } from "./es/boards.ts";
import { COMPOSE } from "./es/compose.ts";
import { COMPOSE_2 } from "./es/compose-2.ts";
import { JOB } from "./es/job.ts";
import { LEARNING } from "./es/learning.ts";
import { LEARNT } from "./es/learnt.ts";
import { MONEY } from "./es/money.ts";
import { PARTS } from "./es/parts.ts";
import { PARTS_2 } from "./es/parts-2.ts";
import { PARTS_3 } from "./es/parts-3.ts";
import { PARTS_4 } from "./es/parts-4.ts";
import { PICTURE } from "./es/picture.ts";
import { PLANNING } from "./es/planning.ts";
import { PLANNING_POWER } from "./es/planning-power.ts";
import { PROBLEMS } from "./es/problems.ts";
import { SAFETY } from "./es/safety.ts";
import { SCREENS } from "./es/screens.ts";
import { SHELL } from "./es/shell.ts";
import { SHOP } from "./es/shop.ts";

export const ES: Sayings = {
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
