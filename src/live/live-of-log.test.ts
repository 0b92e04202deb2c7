import { expect, it } from "vitest";
import type { Observed } from "../bench/event.ts";
import { liveKey } from "./live-of-log.ts";
import { BARE, shippedBoard } from "./on-power.fixture.ts";

it("what was seen at power-up is another board only where it opened something: all other sights share the states worked out before it", () => {
  const board = shippedBoard("greenhouse-fan-drive");
  const key = (...observed: readonly Observed[]) =>
    liveKey(board, BARE, { do: "power", feed: "mains", ...(observed.length > 0 ? { observed } : {}) });
  for (const seen of ["quiet", "runs", "smoke", "lamp-dark"] as const) expect(key(seen)).toBe(key());
  expect(key("fuse-blew")).not.toBe(key());
  expect(key("trip", "smoke")).toBe(key("trip"));
  expect(key("trip")).not.toBe(key());
});
