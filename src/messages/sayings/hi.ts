import type { Sayings } from "../said.ts";
import { BENCH } from "./hi/bench.ts";
import { BOARD } from "./hi/board.ts";
import { BOARDS } from "./hi/boards.ts";
import { COMPOSE } from "./hi/compose.ts";
import { JOB } from "./hi/job.ts";
import { PARTS } from "./hi/parts.ts";
import { PICTURE } from "./hi/picture.ts";
import { PLANNING } from "./hi/planning.ts";
import { SCREENS } from "./hi/screens.ts";
import { SHELL } from "./hi/shell.ts";
import { SHOP } from "./hi/shop.ts";

export const HI: Sayings = {
  ...SHELL,
  ...BENCH,
  ...SCREENS,
  ...SHOP,
  ...BOARDS,
  ...PICTURE,
  ...PLANNING,
  ...JOB,
  ...BOARD,
  ...PARTS,
  ...COMPOSE,
};
