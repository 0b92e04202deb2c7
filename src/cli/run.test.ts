import { readFileSync } from "node:fs";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { ran, refusal } from "./ran.fixture.ts";
import { run } from "./run.ts";
import { capturedIo, type Folder, freshFolder, SMALL_BOARD, SMALL_JOB } from "./small-job.fixture.ts";

let folder: Folder;
let job: string;
beforeEach(() => {
  folder = freshFolder();
  job = folder.file("job.json", SMALL_JOB);
});
afterEach(() => folder.remove());

const BUS = { do: "measure", mode: "diode", red: "NBUS", black: "PBUS" };

describe("suspects", () => {
  it("gives every part of the board a probability, and explanations that sum to one with the remainder", async () => {
    const { code, out, err } = await ran("suspects", job, "--json");
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const answer = JSON.parse(out);
    expect(Object.keys(answer).slice(0, 5)).toEqual([
      "suspects",
      "healthyProbability",
      "explanations",
      "remainder",
      "unexplained",
    ]);
    expect(answer.suspects.map((suspect: { part: string }) => suspect.part).sort()).toEqual(
      Object.keys(SMALL_BOARD.parts).sort(),
    );
    const sum = answer.explanations.reduce(
      (total: number, one: { probability: number }) => total + one.probability,
      0,
    );
    expect(sum + answer.remainder).toBeCloseTo(1, 9);
  });

  it("accuses what a reading points at, in words too", async () => {
    const log = [{ do: "measure", mode: "ohms", red: "F1.1", black: "F1.2", reading: "OL" }];
    const open = folder.file("open.json", { ...SMALL_JOB, log });
    const answer = JSON.parse((await ran("suspects", open, "--json")).out);
    expect(answer.suspects[0].part).toBe("F1");
    expect(answer.suspects[0].probability).toBeGreaterThan(0.9);
    expect((await ran("suspects", open)).out).toMatch(/F1 +open \d/);
  });
});

describe("next", () => {
  it("proposes an event with its minutes, money and reason", async () => {
    const { code, out } = await ran("next", job, "--json");
    expect(code).toBe(0);
    const answer = JSON.parse(out);
    expect(answer).toMatchObject({
      action: { do: expect.any(String) },
      row: expect.any(Array),
      minutes: expect.any(Number),
      money: expect.any(Number),
      why: expect.any(String),
      expect: expect.any(Array),
      others: expect.any(Array),
    });
    expect(answer.action).not.toHaveProperty("reading");
  });

  it("proves the board discharged before anything else, and says so in words", async () => {
    const answer = JSON.parse((await ran("next", job, "--json")).out);
    expect(answer.action).toMatchObject({ do: "measure", mode: "dcv" });
    expect((await ran("next", job)).out).toMatch(/DC volts/);
  });
});

describe("predict", () => {
  it("shows what a meter would, in order, with and without faults", async () => {
    const checks = folder.file("checks.json", [
      BUS,
      { do: "measure", mode: "continuity", red: "L", black: "LF" },
      { do: "measure", mode: "ohms", red: "R1.1", black: "R1.2" },
    ]);
    const healthy = await ran("predict", job, "--checks", checks, "--json");
    expect(healthy.code).toBe(0);
    const { readings } = JSON.parse(healthy.out);
    expect(readings).toHaveLength(3);
    // two junctions of the bridge in series, from minus to plus
    expect(readings[0]).toBeGreaterThan(0.8);
    expect(readings[0]).toBeLessThan(1.2);
    expect(readings[1]).toBe("beep");
    const faulty = await ran("predict", job, "--checks", checks, "--faults", "C1:short,F1:open", "--json");
    const [bus, fuse] = JSON.parse(faulty.out).readings;
    expect(bus).toBeLessThan(0.01);
    expect(fuse).toBe("silent");
  });

  it("follows the clips and the lifted pins of the log", async () => {
    const log = [
      { do: "clip", at: ["PBUS", "NBUS"], ohms: 1000 },
      { do: "lift", place: "R1.1" },
    ];
    const clipped = folder.file("clipped.json", { ...SMALL_JOB, log });
    const checks = folder.file("checks.json", [
      { do: "measure", mode: "ohms", red: "PBUS", black: "NBUS" },
      { do: "measure", mode: "ohms", red: "R1.1", black: "R1.2" },
    ]);
    const [bus, resistor] = JSON.parse(
      (await ran("predict", clipped, "--checks", checks, "--json")).out,
    ).readings;
    expect(bus).toBeCloseTo(1000, -1);
    expect(resistor).toBeCloseTo(220_000, -3);
  });
});

describe("predict on a powered board", () => {
  const power = { do: "power", feed: "lamp", watts: 60, observed: "lamp-dark" };
  const LIVE = [
    { do: "measure", mode: "dcv", red: "PBUS", black: "NBUS" },
    { do: "measure", mode: "acv", red: "L", black: "N" },
    { do: "measure", mode: "temperature", part: "R1", ambient: 20, by: "camera", afterPower: 120 },
  ];

  it("answers volts and warmth from the log's feed, and says what would be seen", async () => {
    const live = folder.file("live.json", { ...SMALL_JOB, log: [power] });
    const checks = folder.file("checks.json", LIVE);
    const { code, out, err } = await ran("predict", live, "--checks", checks, "--json");
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const { readings, power: seen } = JSON.parse(out);
    expect(readings[0]).toBeGreaterThan(315);
    expect(readings[0]).toBeLessThan(325);
    expect(readings[1]).toBeCloseTo(230, -1);
    // 324 V across 220 kohm: half a watt
    expect(readings[2]).toBeGreaterThan(40);
    expect(seen).toMatchObject({ observed: ["lamp-dark"], opened: [], supply: "none" });
    const shorted = await ran("predict", live, "--checks", checks, "--faults", "C1:short");
    expect(shorted.out).toMatch(/seen: lamp-bright/);
    expect(shorted.out).toMatch(/temperature of R1, camera/);
  });

  it("blows a fuse on mains, and knows one that was seen to blow", async () => {
    const checks = folder.file("checks.json", LIVE.slice(0, 1));
    const mains = folder.file("mains.json", { ...SMALL_JOB, log: [{ do: "power", feed: "mains" }] });
    const shorted = JSON.parse(
      (await ran("predict", mains, "--checks", checks, "--faults", "C1:short", "--json")).out,
    );
    expect(shorted.power).toMatchObject({ observed: ["fuse-blew"], opened: ["F1"] });
    const seen = folder.file("seen.json", {
      ...SMALL_JOB,
      log: [{ do: "power", feed: "mains", observed: "fuse-blew" }],
    });
    const [bus] = JSON.parse((await ran("predict", seen, "--checks", checks, "--json")).out).readings;
    expect(Math.abs(bus)).toBeLessThan(1);
  });

  it("goes on answering cold checks as without power, and says so; what nobody can tell is null", async () => {
    const live = folder.file("live.json", { ...SMALL_JOB, log: [power] });
    const cold = await ran("predict", live, "--checks", folder.file("cold.json", [BUS]), "--json");
    expect(Object.keys(JSON.parse(cold.out))).toEqual(["readings"]);
    expect(cold.err).toMatch(/unpowered/);
    const amps = { do: "measure", mode: "amps", red: "PBUS", black: "NBUS" };
    const checks = folder.file("amps.json", [{ ...amps, red: "L", black: "N" }, amps]);
    const { code, out, err } = await ran("predict", live, "--checks", checks, "--json");
    expect(code).toBe(3);
    expect(JSON.parse(out).readings).toEqual([expect.any(Number), null]);
    expect(err).toMatch(/checks\[1\]: no answer/);
  });

  it("refuses live checks without power, and a cold one's moment in a live one", async () => {
    const checks = folder.file("checks.json", LIVE);
    expect(await refusal("predict", job, "--checks", checks)).toMatch(/checks\[0\]\.mode: .*needs power/);
    const live = folder.file("live.json", { ...SMALL_JOB, log: [power] });
    const moment = folder.file("moment.json", [{ ...LIVE[0], seconds: 2 }]);
    expect(await refusal("predict", live, "--checks", moment)).toMatch(/checks\[0\]\.seconds: /);
    const gone = folder.file("gone.json", [{ ...LIVE[2], part: "R7" }]);
    expect(await refusal("predict", live, "--checks", gone)).toMatch(/checks\[0\]\.part: /);
  });
});

describe("deck", () => {
  it("prints a deck that carries the circuit, the meter and the measured line", async () => {
    const { code, out } = await ran("deck", job, "--check", JSON.stringify(BUS), "--faults", "C1:short");
    expect(code).toBe(0);
    expect(out).toMatch(/reading/);
    expect(out).toMatch(/gmin/i);
    expect(out.trimEnd()).toMatch(/\.end$/i);
  });
});

describe("bad input", () => {
  it("is told in one line that names the file and the field", async () => {
    const bad = folder.file("bad.json", { ...SMALL_JOB, symptom: "asleep" });
    expect(await refusal("suspects", bad, "--json")).toMatch(/bad\.json: symptom: /);
    expect(await refusal("next", bad, "--json")).toMatch(/bad\.json: symptom: /);
    expect(await refusal("bench", bad)).toMatch(/bad\.json: symptom: /);
    const checks = folder.file("checks.json", [{ ...BUS, red: "X" }]);
    expect(await refusal("predict", job, "--checks", checks, "--json")).toMatch(
      /checks\.json: checks\[0\]\.red: /,
    );
    expect(await refusal("predict", job, "--checks", `${checks}.gone`)).toMatch(
      /gone: there is no such file/,
    );
    expect(await refusal("predict", job, "--checks", checks, "--faults", "C1:melted")).toMatch(
      /--faults: .*melted/,
    );
    expect(await refusal("deck", job, "--check", "{")).toMatch(/--check: .*not JSON/);
    expect(await refusal("board", "check", job)).toMatch(/job\.json: /);
  });

  it("cannot smuggle line breaks or terminal codes into the message", async () => {
    const odd = folder.file("odd.json", { ...SMALL_JOB, "a\nb\u001b[31m": 1 });
    expect(await refusal("suspects", odd)).not.toContain("\u001b");
  });

  it("on the command line itself is told the same way", async () => {
    expect(await refusal("suspect")).toMatch(/unknown command .*suspects/);
    expect(await refusal("suspects")).toMatch(/missing required argument/);
    expect(await refusal("suspects", job, "--jsno")).toMatch(/unknown option/);
    expect(await refusal("predict", job)).toMatch(/--checks/);
    expect(await refusal("priors", job, "--cause", "ghosts")).toMatch(/--cause/);
    expect(await refusal("serve", "--port", "99999")).toMatch(/port/);
  });
});

describe("help", () => {
  it("teaches with examples and documents the exit codes", async () => {
    const { code, out } = await ran("--help");
    expect(code).toBe(0);
    expect(out).toMatch(/Exit codes:/);
    expect(out).toMatch(/\$ faultwright bench/);
    for (const command of [
      "suspects",
      "next",
      "predict",
      "deck",
      "bench",
      "serve",
      "priors",
      "fit",
      "catalogue",
      "cool",
      "sum",
    ]) {
      const help = await ran(command, "--help");
      expect(help.code, command).toBe(0);
      expect(help.out, command).toMatch(/Example/);
    }
  });

  it("uses no colour where nobody looks", async () => {
    // biome-ignore lint/suspicious/noControlCharactersInRegex: the escape is what is looked for
    expect((await ran("--help")).out).not.toMatch(/\u001b/);
  });
});

describe("board and priors", () => {
  it("say what was made of a board", async () => {
    const board = folder.file("board.json", SMALL_BOARD);
    const { code, out } = await ran("board", "check", board);
    expect(code).toBe(0);
    expect(out).toMatch(/small rectifier \(rectifier\): 4 parts, 5 nets/);
    expect(out).toMatch(/bus: PBUS to NBUS/);
    const priors = await ran("priors", board, "--cause", "surge");
    expect(priors.code).toBe(0);
    expect(priors.out).toMatch(/BR1\.ac1plus:short/);
  });
});

describe("the bench at the prompt", () => {
  it("takes the job from the first card to a verdict, and keeps every line in the file", async () => {
    const io = capturedIo([
      "measure dcv PBUS NBUS 0.2",
      "measure ohms F1.1 F1.2 OL",
      "measure diode NBUS PBUS 0.93",
      "suspects",
      "why F1",
      "undo",
      "log",
      "overrule it is only the fuse",
      "replace F1 0.5",
      "close repaired",
      "quit",
    ]);
    expect(await run(["bench", job], io)).toBe(0);
    expect(io.said.err).toBe("");
    expect(io.said.out).toMatch(/Faulty now:/);
    expect(io.said.out).toMatch(/F1, .*: faulty with/);
    expect(io.said.out).toMatch(/undone/);
    expect(io.said.out).toMatch(/The job is closed: repaired/);
    const { log } = JSON.parse(readFileSync(job, "utf8"));
    expect(log.map((event: { do: string }) => event.do)).toEqual([
      "measure",
      "measure",
      "measure",
      "undo",
      "overrule",
      "replace",
      "close",
    ]);
    expect(log[3].of).toBe(log[2].id);
    expect(log[0].at).toBe("2026-03-01T09:30:00.000Z");
  });

  it("shows each store of charge, refuses power with the resistor on, and takes one line to go on all the same", async () => {
    const io = capturedIo([
      "stores",
      "measure dcv C1.plus C1.minus 160",
      "clip C1.plus C1.minus 2200",
      "power mains quiet",
      "stores",
      "overrule resistor it stays for this run",
      "power mains quiet",
      "unpower",
      "overrule proof bled it by hand",
      "stores",
      "quit",
    ]);
    expect(await run(["bench", job], io)).toBe(2);
    expect(io.said.err).toBe(
      "log[2].do: 2200 ohm is still clipped on between C1.plus and C1.minus: take it off before power (unclip), or overrule with a reason; left on it burns, and is reached for live\n",
    );
    expect(io.said.out).toMatch(/Charge: 0 of 1 proven empty: no hand, no cold check\. \(C1 \?\)/);
    expect(io.said.out).toMatch(/C1 +bus capacitor +charged, 160 V \(log line 0\)/);
    expect(io.said.out).toMatch(/kept: Power with the resistor on: it stays for this run/);
    expect(io.said.out).toMatch(/Charge: Proof overruled \(bled it by hand\); 0 of 1 proven empty/);
    const { log } = JSON.parse(readFileSync(job, "utf8"));
    expect(log.map((event: { do: string }) => event.do)).toEqual([
      "measure",
      "clip",
      "overrule",
      "power",
      "unpower",
      "overrule",
    ]);
  });

  it("answers the card itself with a bare reading", async () => {
    const io = capturedIo(["0.1", "quit"]);
    expect(await run(["bench", job], io)).toBe(0);
    const { log } = JSON.parse(readFileSync(job, "utf8"));
    expect(log).toMatchObject([{ do: "measure", mode: "dcv", reading: 0.1 }]);
  });

  it("practises on a board whose faults a seed hides, the same ones every time", async () => {
    const lines = ["ask", "ask", "ask", "reveal", "quit"];
    const said: string[] = [];
    for (const name of ["one.json", "two.json"]) {
      const io = capturedIo(lines);
      expect(await run(["bench", "--practice", "7", folder.file(name, SMALL_JOB)], io)).toBe(0);
      expect(io.said.out).toMatch(/kept: .* read /);
      expect(io.said.out).toMatch(/The board came in with: \w/);
      said.push(io.said.out);
    }
    expect(said[1]).toBe(said[0]);
    const real = capturedIo(["ask"]);
    expect(await run(["bench", job], real)).toBe(2);
    expect(real.said.err).toMatch(/this is a real board/);
  });

  it("tells a script by its exit code that a line was refused, and goes on", async () => {
    const io = capturedIo(["measure diode PBUS NOWHERE 0.4", "note still here"]);
    expect(await run(["bench", job], io)).toBe(2);
    expect(io.said.err).toMatch(/^[^\n]*NOWHERE[^\n]*\n$/);
    expect(JSON.parse(readFileSync(job, "utf8")).log).toMatchObject([{ do: "note", text: "still here" }]);
  });
});
