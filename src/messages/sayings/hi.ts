import type { Sayings } from "../said.ts";
import { ALBUMS } from "./hi/albums.ts";
import { BENCH } from "./hi/bench.ts";
import { BOARD } from "./hi/board.ts";
import { BOARDS } from "./hi/boards.ts";
import { COMPOSE } from "./hi/compose.ts";
import { JOB } from "./hi/job.ts";
import { LEARNING } from "./hi/learning.ts";
import { PARTS } from "./hi/parts.ts";
import { PLANNING } from "./hi/planning.ts";
import { SCREENS } from "./hi/screens.ts";
import { SHELL } from "./hi/shell.ts";

export const HI: Sayings = {
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
