/** What the bench gives its views: what to show, and the hands that act on it. */
import type { ActionView, BenchView, CardView } from "../../wire/bench-view.ts";
import type { KeptEvent, Outcome } from "../job-event.ts";
import type { BoardPicture } from "../picture/use-board-picture.ts";
import type { OpenJob } from "../use-job.ts";
import type { Agenda } from "./agenda.ts";
import type { FittedHere } from "./shelve.tsx";
import type { PartFit } from "./use-part-fit.ts";

/** What a panel or the card may do to the job. */
export interface Hands {
  /** records what was done, after what came `before` it; where it is not what was proposed, the log first says so, with `why` */
  done(action: ActionView, outcome?: Outcome, before?: readonly KeptEvent[]): void;
  add(events: readonly KeptEvent[]): void;
  /** puts an action on the card instead of the proposal */
  choose(action: ActionView): void;
  undo(of: string): void;
  /** says that the board is on, before what that shows is recorded */
  throwSwitch(on: boolean): void;
}

/** The board's picture, and what is looked for on it. */
export interface BoardDesk {
  readonly picture: BoardPicture;
  /** the step on the card */
  readonly card: CardView | null;
  /** the place to be pinned; null: none in particular */
  readonly wanted: string | null;
  /** brings the picture up, to pin `place` where one is given */
  look(place: string | null): void;
}

export interface PanelProps {
  readonly open: OpenJob;
  readonly view: BenchView;
  readonly hands: Hands;
  readonly desk: BoardDesk;
}

export interface CardProps {
  readonly open: OpenJob;
  readonly view: BenchView;
  readonly card: CardView;
  readonly agenda: Agenda;
  readonly hands: Hands;
  readonly desk: BoardDesk;
  /** the engine has not yet answered for the last entry */
  readonly waiting: boolean;
  /** power is on and not yet recorded */
  readonly switchedOn: boolean;
}

export interface AnswerProps {
  readonly card: CardView;
  readonly view: BenchView;
  readonly hands: Hands;
  readonly disabled: boolean;
  /** of the place that gets a new part */
  readonly fit: PartFit;
  /** what was fitted in this job, for one that is given up */
  readonly fitted: readonly FittedHere[];
}
