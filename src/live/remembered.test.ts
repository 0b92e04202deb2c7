/** What a stage came to for one set of faults serves every set that looks the same to it, and no other. */
import { describe, expect, it } from "vitest";
import type { Board } from "../board/board.ts";
import { type Fault, faultName } from "../board/fault.ts";
import { LiveBoard } from "./live-board.ts";
import type { LiveState } from "./live-state.ts";
import { BARE, shippedBoard } from "./on-power.fixture.ts";

/** All that is compared of a state: words, rails, what opened, and each net's volts. */
function told(state: LiveState, nets: readonly string[], zero: string): string {
  const volts = nets.map((net) => state.volts(net, zero));
  return JSON.stringify([state.observed, state.rails, state.opened, [...state.alive], state.feedAmps, volts]);
}

/** Opens and shorts of all parts of one junction, and dirt from the zero net to every net. */
function manyFaults(board: Board, nets: readonly string[]): readonly Fault[] {
  const onParts = [...board.parts.values()]
    .filter(({ pins }) => pins.size === 2)
    .flatMap(({ ref }) =>
      (["open", "short"] as const).map(
        (mode) => ({ of: "part", part: ref, junction: null, mode, value: null }) as const,
      ),
    );
  const dirt = nets.map(
    (net) => ({ of: "nets", nets: [board.zero, net], mode: "leaky", value: null }) as const,
  );
  return [...onParts, ...dirt.filter(({ nets: [one, far] }) => one !== far)];
}

describe.each(["outdoor-unit-inverter", "small-frequency-drive-3ph"])("%s", (id) => {
  const board = shippedBoard(id);
  const nets = [...new Set([...board.parts.values()].flatMap(({ pins }) => [...pins.values()]))];
  const rows = manyFaults(board, nets);
  // A stride that meets all of them before any comes twice.
  let at = 0;
  const drawn = () => {
    at += 101;
    return rows[at % rows.length] ?? rows[0];
  };

  it("says of two and three faults what a board that was asked nothing before says", () => {
    const asked = new LiveBoard(board, BARE, { kind: "mains" });
    for (let i = 0; i < 150; i++) asked.state([drawn()]);
    for (let i = 0; i < 30; i++) {
      const faults = i % 2 === 0 ? [drawn(), drawn()] : [drawn(), drawn(), drawn()];
      const alone = new LiveBoard(board, BARE, { kind: "mains" });
      const names = faults.map(faultName).join(" ");
      expect(`${names} ${told(asked.state(faults), nets, board.zero)}`).toBe(
        `${names} ${told(alone.state(faults), nets, board.zero)}`,
      );
    }
  });
});
