import type { Sayings } from "../said.ts";
import { ALBUMS } from "./es/albums.ts";
import { BENCH } from "./es/bench.ts";
import { BOARD } from "./es/board.ts";
import { BOARDS } from "./es/boards.ts";
import { COMPOSE } from "./es/compose.ts";
import { JOB } from "./es/job.ts";
import { LEARNING } from "./es/learning.ts";
import { PARTS } from "./es/parts.ts";
import { PLANNING } from "./es/planning.ts";
import { SCREENS } from "./es/screens.ts";
import { SHELL } from "./es/shell.ts";

export const ES: Sayings = {
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
