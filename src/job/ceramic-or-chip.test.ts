/** A ceramic or the chip: two explanations of one shorted rail, and what tells them apart. */
import { describe, expect, it } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import type { Action } from "../planning/proposal.ts";
import { type Played, playRail, type RawParts } from "./rail-bench.fixture.ts";

const CERAMICS = ["C24", "C25", "C26", "C27", "C91", "C92", "C93", "C94"];
const CHIP = "U7";

const DRIVE = {
  board: "greenhouse-fan-drive",
  rail: "V5",
  spoil: (parts: RawParts) => {
    for (const ref of ["C91", "C92", "C93", "C94"])
      parts[ref] = { ...parts.C24, pins: { plus: "V5", minus: "NBUS" } };
  },
};

const beeps: readonly Action[] = CERAMICS.map((ref) => ({
  do: "measure",
  mode: "continuity",
  red: `${ref}.plus`,
  black: `${ref}.minus`,
}));
const warmths: readonly Action[] = [...CERAMICS, "U6", CHIP].map((part) => ({
  do: "measure",
  mode: "temperature",
  part,
  by: "camera",
  afterPower: 60,
}));
const chance = ({ last }: Played, part: string): number =>
  last.belief.suspects.find((one) => one.part === part)?.probability ?? 0;

const warmth = ({ log }: Played, part: string): number => {
  const read = log.find((event: JobEvent) => event.do === "measure" && event.part === part);
  return read?.do === "measure" && typeof read.reading === "number" ? read.reading : Number.NaN;
};

/** Parts lifted, taken off or replaced, first to last, the one proposed last with them. */
const handled = ({ log, proposals }: Played): readonly string[] =>
  [...log, ...proposals.slice(-1).map(({ action }) => action)].flatMap((event) => {
    if (event.do === "lift") return [event.place.slice(0, event.place.indexOf("."))];
    return event.do === "remove" || event.do === "replace" ? [event.part] : [];
  });

describe("all ceramics of the rail beep and one of them is some 20 K hotter than the controller", () => {
  const feeds: readonly (readonly [string, string, Action])[] = [
    ["the board's own supply, at the mains", "C92:short@9", { do: "power", feed: "mains" }],
    ["the board's own supply, behind a lamp", "C92:short@9", { do: "power", feed: "lamp", watts: 100 }],
    [
      "a bench supply of 1 V, limit 1 A",
      "C92:short@3.5",
      { do: "power", feed: "bench", volts: 1, limitAmps: 1, at: ["V5", "NBUS"] },
    ],
  ];
  it.each(feeds)(
    "fed by %s: the ceramic is the short, and it is lifted before the controller",
    (_, hidden, power) => {
      const first = [...beeps, power, ...warmths, { do: "unpower" } as const];
      const played = playRail({ ...DRIVE, hidden, equipment: ["thermal-camera"], first }, 22);
      for (const { do: what, ...event } of played.log)
        if (what === "measure" && "mode" in event && event.mode === "continuity")
          expect(event).toMatchObject({ reading: "beep" });
      expect(warmth(played, "C92") - warmth(played, CHIP)).toBeGreaterThan(10);
      expect(chance(played, "C92")).toBeGreaterThan(0.9);
      expect(chance(played, CHIP)).toBeLessThan(0.05);
      const acrossRail = handled(played).filter((ref) => [...CERAMICS, CHIP].includes(ref));
      expect(acrossRail[0]).toBe("C92");
    },
  );
});

describe("what speaks for a ceramic or for the chip before anything is fed", () => {
  const rail = (hidden: string, cause: string) => playRail({ ...DRIVE, hidden, cause, equipment: [] }, 0);
  const odds = (played: Played) =>
    CERAMICS.reduce((sum, ref) => sum + chance(played, ref), 0) / chance(played, CHIP);

  it("the ohms: at one ohm the ceramics are ahead, at a dozen the chip by far", () => {
    expect(odds(rail("C92:short@1", "unknown"))).toBeGreaterThan(2);
    expect(odds(rail("U7.supply:short@12", "unknown"))).toBeLessThan(0.1);
  });

  it("the history: the same ohms speak more for a ceramic where the board was dropped, less after a surge", () => {
    const [dropped, unknown, surge] = ["impact", "unknown", "surge"].map((cause) =>
      odds(rail("C92:short@4", cause)),
    );
    expect(dropped).toBeGreaterThan(3 * unknown);
    expect(surge).toBeLessThan(unknown);
  });
});
