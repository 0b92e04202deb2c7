import type { Sayings } from "../said.ts";
import { ALBUMS } from "./ar/albums.ts";
import { BENCH } from "./ar/bench.ts";
import { BOARD } from "./ar/board.ts";
import { BOARDS } from "./ar/boards.ts";
import { COMPOSE } from "./ar/compose.ts";
import { JOB } from "./ar/job.ts";
import { LEARNING } from "./ar/learning.ts";
import { PARTS } from "./ar/parts.ts";
import { PLANNING } from "./ar/planning.ts";
import { SCREENS } from "./ar/screens.ts";
import { SHELL } from "./ar/shell.ts";

export const AR: Sayings = {
  ...SHELL,
  ...ALBUMS,
  ...BENCH,
  ...SCREENS,
  ...BOARDS,
  ...PLANNING,
  ...JOB,
  ...BOARD,
  ...PARTS,
  ...LEARNING,
  ...COMPOSE,
};
