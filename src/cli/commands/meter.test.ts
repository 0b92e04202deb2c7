import { readFileSync } from "node:fs";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { LoopbackInstrument } from "../../hookup/loopback-instrument.fixture.ts";
import { ran, refusal } from "../ran.fixture.ts";
import { run } from "../run.ts";
import { capturedIo, type Folder, freshFolder, SMALL_JOB } from "../small-job.fixture.ts";

let folder: Folder;
let instrument: LoopbackInstrument;
beforeEach(async () => {
  folder = freshFolder();
  instrument = await LoopbackInstrument.start({ figures: ["+3.00000000E-03"] });
});
afterEach(async () => {
  folder.remove();
  await instrument.stop();
});

const word = () => `scpi:127.0.0.1:${instrument.address.port}`;

describe("a meter on the wire, in the terminal", () => {
  it("is taken by `read` at the prompt, once its figure is at rest, and logged under its own name", async () => {
    const job = folder.file("job.json", SMALL_JOB);
    const io = capturedIo(["read", "undo", "read"]);
    expect(await run(["bench", job, "--meter", word()], io)).toBe(0);
    const { log } = JSON.parse(readFileSync(job, "utf8"));
    expect(log[0]).toMatchObject({
      do: "measure",
      mode: "dcv",
      reading: 0.003,
      instrument: "LOOPBACK INSTRUMENTS DM-1",
    });
    expect(log.map((event: { do: string }) => event.do)).toEqual(["measure", "undo", "measure"]);
    expect(instrument.heard).toContain("CONF:VOLT:DC");
    expect(io.said.out).toContain("off the wire (LOOPBACK INSTRUMENTS DM-1)");
  });

  it("is tried for some seconds; what is no meter is refused in one line", async () => {
    const io = { ...capturedIo(), untilStopped: () => new Promise<void>(() => undefined) };
    expect(await run(["meter", "try", word(), "--mode", "diode", "--seconds", "1.5"], io)).toBe(0);
    const { out } = io.said;
    expect(out).toMatch(/^LOOPBACK INSTRUMENTS DM-1\n/);
    expect(out).toMatch(/3\.00 mV {2}diode mode, at rest\n/);
    expect(await refusal("meter", "try", "multimeter")).toMatch(/write scpi:HOST:PORT or sigrok:DRIVER/);
    expect(await refusal("bench", folder.file("job.json", SMALL_JOB), "--meter", "x")).toMatch(/^--meter: /);
  });

  it("is listed by the drivers that sigrok-cli has", async () => {
    const { code, out } = await ran("meter", "list");
    expect(code).toBe(0);
    expect(out).toMatch(/^ {2}demo +Demo driver/m);
    expect(out).toMatch(/^ {2}scpi-dmm +SCPI DMM/m);
  });
});
