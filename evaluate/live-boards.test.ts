/** Boards that the live model was not written on: what a good one shows. */
import { describe, expect, it } from "vitest";
import { LiveBoard } from "../src/live/live-board.ts";
import { liveView } from "../src/live/live-view.ts";
import { evaluationBoards } from "./boards/evaluation-boards.ts";

const BENCH = { lifted: new Set<string>(), off: new Set<string>(), clips: [], powered: true };

describe.each(evaluationBoards().map(({ id, board }) => [id, board] as const))(
  "%s, healthy, never looked at while the model was made",
  (_, board) => {
    const { roles } = liveView(board);

    it("runs on mains with every rail within its tolerance", () => {
      const state = new LiveBoard(board, BENCH, { kind: "mains" }).state([]);
      expect(state.observed).toEqual(["runs"]);
      const bus = state.volts(roles.bus?.plus ?? "", roles.bus?.minus ?? "")?.dc ?? 0;
      expect(bus / (board.supply.volts * Math.SQRT2)).toBeGreaterThan(0.985);
      for (const rail of board.rails) {
        const volts = state.volts(rail.net, rail.against ?? board.zero)?.dc ?? 0;
        expect(Math.abs(volts / rail.volts - 1)).toBeLessThan(rail.tolerance);
      }
      expect(state.alive.size).toBe(roles.controllers.length);
    });

    it("lets a lamp of 100 W go dark", () => {
      const state = new LiveBoard(board, BENCH, { kind: "lamp", watts: 100 }).state([]);
      expect(state.observed).toEqual(["lamp-dark"]);
    });
  },
);
