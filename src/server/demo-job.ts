import type { NewJob } from "../job/job-store.ts";
import type { BoardAnswer } from "../wire/job-api.ts";

/** The family of the demo's board among the shipped ones. */
const DEMO_FAMILY = "fan-drive";
/** Which hidden faults the newcomer meets: any seed would do. */
const DEMO_SEED = 20260807;

/** The job that a newcomer finds in an empty shop; null where no board of that family is shipped. */
export function demoJob(boards: readonly BoardAnswer[]): NewJob | null {
  const shipped = boards.find(({ board }) => (board as { readonly family?: unknown }).family === DEMO_FAMILY);
  if (shipped === undefined) return null;
  return {
    id: "demo",
    title: "Practice: greenhouse fan drive after a thunderstorm",
    practice: { seed: DEMO_SEED },
    header: {
      format: "faultwright-job/1",
      board: shipped.board,
      cause: "surge",
      symptom: "dead",
      equipment: ["lamp-100"],
    },
    events: [],
  };
}
