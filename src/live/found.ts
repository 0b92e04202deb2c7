/** What the stages of a powered board were found to be: the way from the computing to the answers. */
import type { FaultedBoard } from "./faulted-board.ts";
import type { Front } from "./front.ts";
import type { LiveView } from "./live-view.ts";
import type { PowerFeed } from "./power-feed.ts";
import type { RailState } from "./rail-state.ts";
import type { RailTree } from "./rail-tree.ts";
import type { LoadedRun } from "./run-state.ts";
import type { SupplyState } from "./secondaries.ts";

export interface Found {
  readonly view: LiveView;
  readonly board: FaultedBoard;
  readonly feed: PowerFeed;
  /** null where the feed is on a rail, or off */
  readonly front: Front | null;
  /** one for each plan of the view; empty where the feed does not reach them */
  readonly supplies: readonly SupplyState[];
  readonly collapses: boolean;
  readonly limited: number;
  readonly tripped: boolean;
  readonly alive: ReadonlySet<string>;
  readonly relaysIn: ReadonlySet<string>;
  readonly tree?: RailTree;
  /** made by the supplies, or fed from a bench supply; its amps then are `amps` */
  readonly rails: readonly RailState[];
  readonly amps?: number;
  /** what it does with the load that it was told to drive; absent: it stands idle */
  readonly run?: LoadedRun;
}
