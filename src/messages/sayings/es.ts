import type { Sayings } from "../said.ts";
import { BENCH } from "./es/bench.ts";
import { BOARD } from "./es/board.ts";
import { BOARDS } from "./es/boards.ts";
import { COMPOSE } from "./es/compose.ts";
import { JOB } from "./es/job.ts";
import { PARTS } from "./es/parts.ts";
import { PICTURE } from "./es/picture.ts";
import { PLANNING } from "./es/planning.ts";
import { SCREENS } from "./es/screens.ts";
import { SHELL } from "./es/shell.ts";
import { SHOP } from "./es/shop.ts";

export const ES: Sayings = {
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
