import { describe, expect, it } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import type { Belief, Explanation } from "../diagnosis/belief.ts";
import { scene, smallDriveBoard } from "./scene.fixture.ts";
import { checkKey, stillKnown } from "./still-known.ts";

const BOARD = smallDriveBoard();
const { belief: EMPTY, priors } = scene(BOARD, []);

function known(log: readonly JobEvent[], believed: Partial<Belief> = {}): ReadonlySet<string> {
  const { timeline } = scene(BOARD, log).input;
  return stillKnown(BOARD, timeline, timeline.now, {
    ...EMPTY,
    explanations: [],
    unexplained: [],
    ...believed,
  });
}

const RAIL = { do: "measure", mode: "diode", red: "V5", black: "NBUS", reading: 0.6 } as const;
const BUS = { do: "measure", mode: "diode", red: "PBUS", black: "NBUS", reading: "OL" } as const;
const [RAIL_KEY, BUS_KEY] = [RAIL, BUS].map(({ mode, red, black }) => checkKey({ mode, red, black }));

/** A part with a pin on the net, and none on the other. */
function partOn(net: string, notOn: string): string {
  const found = [...BOARD.parts.values()].find((part) => {
    const nets = [...part.pins.values()];
    return nets.includes(net) && !nets.includes(notOn);
  });
  if (found === undefined) throw new Error(`no part on ${net}`);
  return found.ref;
}

describe("a reading stays good", () => {
  it("while work is done elsewhere, and not once a part at its own places is new", () => {
    const there = partOn("PBUS", "V5");
    const after = known([RAIL, BUS, { do: "replace", part: there }]);
    expect(after.has(RAIL_KEY)).toBe(true);
    expect(after.has(BUS_KEY)).toBe(false);
  });

  it("while a pin elsewhere is off its pad; one at its own places makes it another reading", () => {
    const there = partOn("PBUS", "NBUS");
    const pin = [...(BOARD.parts.get(there)?.pins.keys() ?? [])][0];
    const lifted = known([RAIL, BUS, { do: "lift", place: `${there}.${pin}` }]);
    expect([lifted.has(RAIL_KEY), lifted.has(BUS_KEY)]).toEqual([true, false]);
  });

  it("through a power-up, unless that is believed to have broken a part at its places", () => {
    const log: readonly JobEvent[] = [
      RAIL,
      BUS,
      { do: "power", feed: "lamp", watts: 100 },
      { do: "unpower" },
    ];
    expect(known(log).has(BUS_KEY)).toBe(true);
    const there = partOn("PBUS", "V5");
    const fault = priors.faults.findIndex(({ part }) => part === there);
    const broke: Explanation = {
      faults: [{ fault, since: 2 }],
      presentNow: [fault],
      probability: 0.3,
      silent: new Float64Array(priors.faults.length),
      nothingBeside: 1,
      readingLogLikelihood: new Map(),
    };
    expect(known(log, { explanations: [broke] }).has(BUS_KEY)).toBe(false);
    expect(known(log, { explanations: [{ ...broke, probability: 0.002 }] }).has(BUS_KEY)).toBe(true);
  });

  it("where nothing explains it, it is open for one reading more", () => {
    expect(known([BUS], { unexplained: [0] }).has(BUS_KEY)).toBe(false);
    expect(known([BUS, BUS], { unexplained: [0, 1] }).has(BUS_KEY)).toBe(true);
  });
});
