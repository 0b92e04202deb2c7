/** What a board does that was told to run, and what it was told to drive. */
export interface Running {
  readonly does: "nothing" | "trips" | "weak" | "runs";
  /** mean bus volts while it runs (or tries); null where there is no bus */
  readonly busVolts: number | null;
  readonly boost: "none" | "idle" | "holds";
}

/** What a board is told to drive: its own motor or coil (as far as it is there), or a dummy load. */
export interface BoardLoad {
  readonly watts: number;
  readonly dummy: boolean;
}

/** What a board under load does, and how far the doubt about its load goes. */
export interface LoadedRun extends Running {
  readonly load: BoardLoad;
  /** deviation of the bus that the load's own doubt makes, a share */
  readonly sagDoubt: number;
}
