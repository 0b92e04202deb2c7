/** What good boards beside those of closed jobs read, put among the references of a board that is given away. */
import type { Board } from "../board/board.ts";
import { closedAs } from "../job/closed-as.ts";
import { readBeside } from "../job/good-beside.ts";
import type { Job } from "../job/job.ts";
import { pooledWith } from "../job/pooled-board.ts";
import type { Pack } from "./pack.ts";

export function withGoodRead(content: Pack["board"], board: Board, jobs: readonly Job[]): Pack["board"] {
  const readings = jobs
    .filter(({ log }) => closedAs(log) !== null)
    .flatMap((job) => readBeside(job.asBrought.board, job.log))
    .filter(({ red, black }) => board.nets.has(red) && board.nets.has(black));
  return readings.length === 0 ? content : { ...content, references: pooledWith(board, [], readings) };
}
