import type { Sayings } from "../said.ts";
import { BENCH } from "./ar/bench.ts";
import { BOARD } from "./ar/board.ts";
import { BOARDS } from "./ar/boards.ts";
import { COMPOSE } from "./ar/compose.ts";
import { JOB } from "./ar/job.ts";
import { PARTS } from "./ar/parts.ts";
import { PICTURE } from "./ar/picture.ts";
import { PLANNING } from "./ar/planning.ts";
import { SCREENS } from "./ar/screens.ts";
import { SHELL } from "./ar/shell.ts";
import { SHOP } from "./ar/shop.ts";

export const AR: Sayings = {
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
