import type { Sayings } from "../said.ts";
import { ALBUMS } from "./hi/albums.ts";
import { BENCH } from "./hi/bench.ts";
import { BENCH_2 } from "./hi/bench-2.ts";
import { BOARD } from "./hi/board.ts";
import { BOARDS } from "./hi/boards.ts";
import { COMPOSE } from "./hi/compose.ts";
import { COMPOSE_2 } from "./hi/compose-2.ts";
import { JOB } from "./hi/job.ts";
import { LEARNING } from "./hi/learning.ts";
import { LEARNT } from "./hi/learnt.ts";
import { MONEY } from "./hi/money.ts";
import { PARTS } from "./hi/parts.ts";
import { PARTS_2 } from "./hi/parts-2.ts";
import { PARTS_3 } from "./hi/parts-3.ts";
import { PARTS_4 } from "./hi/parts-4.ts";
import { PICTURE } from "./hi/picture.ts";
import { PLANNING } from "./hi/planning.ts";
import { PLANNING_POWER } from "./hi/planning-power.ts";
import { PROBLEMS } from "./hi/problems.ts";
import { SAFETY } from "./hi/safety.ts";
import { SCREENS } from "./hi/screens.ts";
import { SHELL } from "./hi/shell.ts";
import { SHOP } from "./hi/shop.ts";

export const HI: Sayings = {
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
