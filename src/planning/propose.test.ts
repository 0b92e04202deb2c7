import { describe, expect, test } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import { plain } from "../messages/said.ts";
import type { Proposal } from "./proposal.ts";
import { propose } from "./propose.ts";
import { provenEmpty, scene, smallDriveBoard } from "./scene.fixture.ts";

/** One leg of the small drive and no motor: the same questions, quickly answered. */
const BOARD = smallDriveBoard((raw) => {
  for (const ref of ["M1", ...["2", "3", "5", "6"].flatMap((n) => [`Q${n}`, `RG${n}`, `RP${n}`, `DZ${n}`])])
    delete raw.parts[ref];
});
const SAFE = provenEmpty(BOARD);

function next(log: readonly JobEvent[], options: Parameters<typeof scene>[2] = {}): Proposal {
  const { input, belief, priors, predictor } = scene(BOARD, log, options);
  return propose(input, belief, priors, predictor);
}

const read = (
  mode: "diode" | "ohms" | "farads",
  red: string,
  black: string,
  reading: number | "OL",
): JobEvent => ({
  do: "measure",
  mode,
  red,
  black,
  reading,
});
/** U1, the bridge, the bus capacitors and the gates read good. */
const CLEARED: readonly JobEvent[] = [
  read("diode", "NBUS", "DRAIN", "OL"),
  read("diode", "VCC", "NBUS", "OL"),
  read("diode", "L_B", "PBUS", "OL"),
  read("diode", "N_IN", "PBUS", "OL"),
  read("diode", "NBUS", "L_B", "OL"),
  read("diode", "NBUS", "N_IN", "OL"),
  read("diode", "PBUS", "MID", "OL"),
  read("diode", "MID", "NBUS", "OL"),
];
const Q1_SHORT: readonly JobEvent[] = [read("diode", "PBUS", "U", 0.0002), read("diode", "U", "NSH", "OL")];

describe("safety comes before every sum", () => {
  test("with an empty log the first proposal is volts across every store of charge, at its own pins", () => {
    const proposal = next([]);
    expect([proposal.action, ...proposal.row]).toEqual(
      SAFE.map((event) => ({
        do: "measure",
        mode: "dcv",
        red: "red" in event && event.red,
        black: "black" in event && event.black,
      })),
    );
    expect(plain(proposal.cautions.join(" "))).toContain("Local codes");
    expect(proposal.minutes).toBe(0.4);
  });

  test("a charged bus gets a resistor at its own pins, then the reading again, then the resistor comes off", () => {
    const charged: JobEvent = { do: "measure", mode: "dcv", red: "C1.plus", black: "C1.minus", reading: 160 };
    const log: JobEvent[] = [
      ...SAFE.filter((event) => !("red" in event) || event.red !== "C1.plus"),
      charged,
    ];
    const clip = next(log);
    expect(clip.action).toEqual({ do: "clip", at: ["C1.plus", "C1.minus"], ohms: 2200 });
    expect(plain(clip.why)).toContain("5 s"); // 2.2 kohm * 680 uF * ln 16 = 4.1 s, rounded up
    const clipped: JobEvent[] = [...log, { do: "clip", at: ["C1.plus", "C1.minus"], ohms: 2200 }];
    expect(next(clipped).action).toMatchObject({ do: "measure", mode: "dcv", red: "C1.plus" });
    expect(next([...clipped, { ...charged, reading: 2 }]).action).toMatchObject({ do: "unclip" });
  });

  test("on a live board the only proposal is to switch off, and afterwards everything is proven again", () => {
    const live: JobEvent[] = [...SAFE, { do: "power", feed: "lamp", watts: 100, observed: "quiet" }];
    expect(next(live).action).toEqual({ do: "unpower" });
    expect(next([...live, { do: "unpower" }]).action).toMatchObject({ do: "measure", mode: "dcv" });
  });

  test("whoever overrules the proof and measures cold is not asked for it again, unless a store reads charged", () => {
    const went: JobEvent[] = [
      { do: "overrule", why: "bled through my own resistor" },
      read("diode", "PBUS", "NBUS", "OL"),
    ];
    expect(next(went).action).not.toMatchObject({ mode: "dcv" });
    expect(next([went[1]]).action).toMatchObject({ mode: "dcv" });
    const charged: JobEvent = { do: "measure", mode: "dcv", red: "C1.plus", black: "C1.minus", reading: 160 };
    expect(next([...went, charged]).action).toMatchObject({ do: "clip" });
    const powered: JobEvent[] = [...went, { do: "power", feed: "lamp", watts: 100 }, { do: "unpower" }];
    expect(next(powered).action).toMatchObject({ mode: "dcv" });
  });

  test("nothing ever asks for an insulation tester", () => {
    expect(JSON.stringify(next(SAFE, { equipment: ["insulation-tester"] }).action)).not.toContain(
      "insulation",
    );
  });
});

describe("early, cheap and decisive before money", () => {
  test("with a shorted switch found the rails of the controller are measured before the switch is bought", () => {
    const log = [...SAFE, ...CLEARED, ...Q1_SHORT];
    const seen: string[] = [];
    let events: JobEvent[] = log;
    for (let i = 0; i < 25; i++) {
      const { action, row } = next(events);
      if (action.do === "replace" || action.do === "close") break;
      for (const each of [action, ...row]) {
        if (each.do === "measure") {
          seen.push([each.red, each.black].sort().join(" "));
          events = [...events, { ...each, reading: "OL" }];
        } else if (each.do === "look") events = [...events, { ...each, finding: "clean" }];
        else events = [...events, each];
      }
      if (seen.includes("NBUS V5")) break;
    }
    expect(seen).toContain("NBUS V5");
  });

  test("a controller rail at eight ohms with a controller nobody sells: one lift tells, and if it is the controller the job stops", () => {
    const low = [...SAFE, ...CLEARED, read("ohms", "V5", "NBUS", 8), read("diode", "V5", "NBUS", 0.01)];
    const fed = [...low, read("diode", "V15", "NBUS", "OL")];
    // at two ohms a capacitor across the rail may still be it: that is a reading, the lift three minutes
    const lower = [
      ...SAFE,
      ...CLEARED,
      read("ohms", "V5", "NBUS", 2),
      read("diode", "V5", "NBUS", 0.002),
      read("diode", "V15", "NBUS", "OL"),
    ];
    expect(next(lower).action).toMatchObject({ do: "measure", red: "V5", black: "NBUS" });
    expect(next(fed).action).toEqual({ do: "lift", place: "U3.vdd" });
    const shorted = [...fed, read("farads", "V5", "NBUS", "OL")];
    const lift = next(shorted);
    expect(lift.action).toEqual({ do: "lift", place: "U3.vdd" });
    expect(lift.money).toBe(0);
    const dead = next([
      ...shorted,
      { do: "lift", place: "U3.vdd" },
      read("diode", "NBUS", "U3.vdd", 0.01),
      read("ohms", "V5", "NBUS", "OL"),
    ]);
    expect(dead.action).toEqual({ do: "close", verdict: "not-repairable" });
    expect(plain(dead.why)).toContain("U3");
    expect(dead.outlook.repairProbability).toBeLessThan(0.1);
  });
});

describe("after the repair", () => {
  const REPAIRED: readonly JobEvent[] = [
    ...SAFE,
    ...CLEARED,
    ...Q1_SHORT,
    { do: "lift", place: "Q1.c" },
    read("diode", "Q1.e", "Q1.c", 0),
    { do: "refit", place: "Q1.c" },
    { do: "replace", part: "Q1", price: 3 },
  ];

  const RUNS: readonly JobEvent[] = [{ do: "power", feed: "mains", observed: "runs" }, { do: "unpower" }];

  /** A shop whose boards come back dear: for less than this the cheap looks alone leave too little doubt to be worth a run under load. */
  const DEAR = { terms: { comebackCost: 60 } };

  /** What is proposed one after another while everything reads as on a good board, up to the close. */
  function lookedAt(before: readonly JobEvent[]): readonly Proposal[] {
    const log = [...before];
    const asked: Proposal[] = [];
    while (asked.length < 40) {
      const { input, belief, priors, predictor } = scene(BOARD, log, DEAR);
      const proposal = propose(input, belief, priors, predictor);
      asked.push(proposal);
      const { action } = proposal;
      if (action.do === "close") return asked;
      if (action.do === "look") log.push({ ...action, finding: "clean" });
      else if (action.do === "power" && action.load !== undefined) log.push({ ...action, observed: "runs" });
      else if (action.do === "unpower") log.push({ ...action, observed: "runs" });
      else if (action.do !== "measure") throw new Error(`${action.do} on a board that runs`);
      else if (action.mode === "dcv") log.push(...SAFE);
      else {
        const { mode, red = "", black = "" } = action;
        if (mode !== "diode" && mode !== "ohms" && mode !== "farads") throw new Error(mode);
        const good = predictor.predict({ mode, red, black }, []);
        log.push({ ...action, reading: good.solved ? good.shown : "OL" });
      }
    }
    throw new Error("forty steps without an end");
  }

  test("the board that ran is looked at once more where that is worth it, and closed as repaired, or as no fault where nothing was cured", () => {
    const asked = lookedAt([...REPAIRED, ...RUNS]);
    expect(asked.at(-1)?.action).toEqual({ do: "close", verdict: "repaired" });
    expect(plain(asked.at(-1)?.why ?? "")).toContain("left unproven");
    expect(asked.filter(({ action }) => action.do === "power" && action.load !== undefined)).toHaveLength(1);
    expect(asked.filter(({ why }) => plain(why).startsWith("It runs.")).length).toBeGreaterThan(0);
    expect(lookedAt([...SAFE, ...RUNS]).at(-1)?.action).toEqual({ do: "close", verdict: "no-fault" });
  });

  test("a board worked on since it ran is not closed on the strength of that run", () => {
    const log: JobEvent[] = [
      ...REPAIRED,
      { do: "power", feed: "mains", observed: "runs" },
      { do: "unpower" },
      { do: "replace", part: "C1" },
    ];
    expect(next(log).action.do).not.toBe("close");
  });
});

test("the same job gives the same proposal", () => {
  const log = [...SAFE, ...CLEARED.slice(0, 3)];
  expect(JSON.stringify(next(log))).toBe(JSON.stringify(next(log)));
});

test("every proposal names what may come out, with chances that sum to one", () => {
  const proposal = next([...SAFE, ...CLEARED.slice(0, 2)]);
  const sum = proposal.expect.reduce((total, { probability }) => total + probability, 0);
  expect(sum).toBeGreaterThan(0.99);
  expect(sum).toBeLessThan(1.001);
  expect(proposal.expect.every(({ if: words, means }) => words.length > 0 && means.length > 0)).toBe(true);
});
