/** Any meter that `sigrok-cli` reads: the program runs beside ours, and what it writes is read line by line. */

import { type ChildProcess, execFile, spawn } from "node:child_process";
import { createInterface } from "node:readline";
import { parseSigrokDrivers, type SigrokDriver } from "../instrument/sigrok/sigrok-drivers.ts";
import { parseSigrokLine } from "../instrument/sigrok/sigrok-line.ts";
import { said } from "../messages/said.ts";
import type { Parsed } from "../units/outcome.ts";
import type { MeterSource, Told } from "./meter-source.ts";
import { type Pace, USUAL_PACE } from "./pace.ts";

const PROGRAM = "sigrok-cli";
const MISSING = said`${PROGRAM} is not installed: on Debian, apt-get install sigrok-cli`;
/** A driver that samples faster than a hand moves is thinned: one figure in so many milliseconds is told. */
const EVERY_MS = 100;

interface Driver {
  readonly driver: string;
  /** null: the first that the driver names */
  readonly channel: string | null;
}

export class SigrokProcess implements MeterSource {
  readonly #driver: Driver;
  readonly #told: Told;
  readonly #pace: Pace;
  #child: ChildProcess | null = null;
  #again: NodeJS.Timeout | null = null;
  #stopped = false;

  constructor(driver: Driver, told: Told, pace: Pace = USUAL_PACE) {
    this.#driver = driver;
    this.#told = told;
    this.#pace = pace;
    this.#start();
  }

  /** A hand-held meter is turned by hand. */
  want(): void {}

  stop(): void {
    this.#stopped = true;
    if (this.#again !== null) clearTimeout(this.#again);
    this.#child?.kill("SIGTERM");
  }

  #start(): void {
    const { driver, channel } = this.#driver;
    const only = channel === null ? [] : ["--channels", channel];
    const how = ["--driver", driver, ...only, ...rateOf(driver), "--output-format", "analog", "--continuous"];
    // Its input stays open: without one the program takes that for the key which ends it.
    const child = spawn(PROGRAM, how, { stdio: ["pipe", "pipe", "pipe"] });
    this.#child = child;
    let last = "";
    let shown = channel;
    let toldAt = 0;
    createInterface({ input: child.stdout }).on("line", (line) => {
      const parsed = parseSigrokLine(line);
      if (parsed === null) {
        if (line.trim() !== "" && !line.startsWith("FRAME-")) last = line.trim();
        return;
      }
      shown ??= parsed.channel;
      const now = Date.now();
      if (parsed.channel !== shown || now - toldAt < EVERY_MS) return;
      toldAt = now;
      this.#told.named(`sigrok ${driver.split(":")[0]}`);
      this.#told.trouble(null);
      this.#told.reading(parsed.reading);
    });
    createInterface({ input: child.stderr }).on("line", (line) => {
      if (line.trim() !== "" && !line.includes("assertion")) last = line.trim();
    });
    child.on("error", (error: NodeJS.ErrnoException) => {
      this.#ended(error.code === "ENOENT" ? MISSING : error.message);
    });
    child.on("close", (code) =>
      this.#ended(last === "" ? said`${PROGRAM} ended (${String(code)})` : last.slice(0, 200)),
    );
  }

  #ended(why: string): void {
    if (this.#stopped || this.#again !== null) return;
    this.#told.trouble(said`${why}. Is the meter on, its wire plugged in, and its sending switched on?`);
    this.#again = setTimeout(() => {
      this.#again = null;
      this.#start();
    }, this.#pace.againMs);
  }
}

/** The demo driver runs at whatever rate it is told, here that of a hand-held meter; a real one keeps its own. */
function rateOf(driver: string): readonly string[] {
  return driver.split(":")[0] === "demo" ? ["--config", "samplerate=2"] : [];
}

/** The drivers that this machine's `sigrok-cli` has. */
export function sigrokDrivers(): Promise<Parsed<readonly SigrokDriver[]>> {
  return new Promise((resolve) => {
    execFile(PROGRAM, ["--list-supported"], { timeout: 10_000, maxBuffer: 4_000_000 }, (error, stdout) => {
      const drivers = parseSigrokDrivers(stdout);
      if (drivers.length > 0) resolve({ ok: true, value: drivers });
      else
        resolve({
          ok: false,
          problem: error?.code === "ENOENT" ? MISSING : said`${PROGRAM} lists no drivers`,
        });
    });
  });
}
