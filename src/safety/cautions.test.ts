import { expect, test } from "vitest";
import { cautionsFor } from "./cautions.ts";

test("every step under mains danger defers to local codes and licensed practice", () => {
  for (const action of [
    { do: "power", feed: "mains" },
    { do: "unpower" },
    { do: "clip" },
    { do: "measure", mode: "dcv" },
  ] as const)
    expect(cautionsFor(action).join(" ")).toContain("Local codes");
});

test("the lamp's caution says what the lamp does not do", () => {
  expect(cautionsFor({ do: "power", feed: "lamp" }).join(" ")).toContain("not the energy stored in the bus");
  expect(cautionsFor({ do: "power", feed: "mains" }).join(" ")).not.toContain("lamp limits");
});

test("an insulation tester is warned of where ohms are measured on a populated board", () => {
  expect(cautionsFor({ do: "measure", mode: "ohms" }).join(" ")).toContain("No insulation tester");
});

test("a part is replaced with the warning about pads and insulation; a look needs none", () => {
  expect(cautionsFor({ do: "replace" })).toHaveLength(4);
  expect(cautionsFor({ do: "look" })).toEqual([]);
});
