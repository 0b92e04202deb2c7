/** What the page reads of a job: the shapes alone, so that `web/` knows the engine by its answers. */
export type {
  ActionView,
  BecauseView,
  BenchView,
  CardView,
  GridCellView,
  GridView,
  SuspectView,
} from "../job/bench-view-shape.ts";
