/** The plots come after the page itself: none of them is needed to take the first reading. */
import { lazy, Suspense } from "react";
import type { CardView } from "../../wire/bench-view.ts";
import { say } from "../say.ts";
import type { OpenJob } from "../use-job.ts";

const Card = lazy(() => import("./card-plots.tsx"));
const Course = lazy(() => import("./course-plots.tsx"));

export function CardPlots(props: {
  readonly open: OpenJob;
  readonly card: CardView;
  readonly powered: boolean;
}) {
  return (
    <Suspense fallback={null}>
      <Card {...props} />
    </Suspense>
  );
}

export function CoursePlots(props: { readonly open: OpenJob; readonly currency: string }) {
  return (
    <Suspense fallback={<p role="status">{say`Loading the plots…`}</p>}>
      <Course {...props} />
    </Suspense>
  );
}
