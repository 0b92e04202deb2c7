/** What the page reads of a job: the shapes alone, so that `web/` knows the engine by its answers. */
export type { Overruled } from "../bench/event.ts";
export type { ActionView } from "../job/action-view.ts";
export type {
  BecauseView,
  BenchView,
  CardView,
  GoodHere,
  GridCellView,
  GridView,
  SuspectView,
} from "../job/bench-view-shape.ts";
export type { CoursePoint, RailBandView } from "../job/course-shape.ts";
export type { MoneyView, OfferView, ToGoView } from "../job/money-view-shape.ts";
export type { StripRow, StripView } from "../job/reading-strip-shape.ts";
export type { StoreView } from "../job/safety-view-shape.ts";
export type { StageState, StageView } from "../job/stage-view-shape.ts";
