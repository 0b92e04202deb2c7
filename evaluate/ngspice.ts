/** Runs many decks in one ngspice process: starting it costs more than a solve. */
import { execFile } from "node:child_process";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** One process gets this many decks at most, and this long. */
const DECKS_PER_RUN = 40;
const MOST_MILLISECONDS = 120_000;

interface Output {
  readonly stdout: string;
  readonly stderr: string;
  /** how the run ended, where it was not by itself */
  readonly ended: string | null;
}

/** One run of a program, whatever its exit code; empty texts where it is not there. */
function runOf(program: string, args: readonly string[], folder: string): Promise<Output> {
  return new Promise((resolve) => {
    execFile(
      program,
      [...args],
      { cwd: folder, timeout: MOST_MILLISECONDS, maxBuffer: 64 << 20 },
      (error, stdout, stderr) => {
        const ended = error === null ? null : error.killed ? "stopped: it took too long" : error.message;
        resolve({ stdout, stderr, ended });
      },
    );
  });
}

async function outputOf(program: string, args: readonly string[], folder: string): Promise<string> {
  return (await runOf(program, args, folder)).stdout;
}

/** The number a run printed as its reading; null where it printed none, or none that is a number. */
function readingIn(output: string | undefined): number | null {
  const found = /^reading = (\S+)/m.exec(output ?? "");
  const reading = found === null ? Number.NaN : Number(found[1]);
  return Number.isFinite(reading) ? reading : null;
}

/** Is ngspice on the PATH? */
export async function hasNgspice(): Promise<boolean> {
  return /ngspice/i.test(await outputOf("ngspice", ["--version"], tmpdir()));
}

/** A deck that does not end the process it runs in. */
function withoutQuit(deck: string): string {
  return deck.replace(/^quit$/m, "");
}

async function runSome(decks: readonly string[]): Promise<(number | null)[]> {
  const folder = await mkdtemp(join(tmpdir(), "faultwright-decks-"));
  try {
    const commands: string[] = [];
    for (const [index, deck] of decks.entries()) {
      await writeFile(join(folder, `d${index}.cir`), withoutQuit(deck));
      commands.push(`echo begin ${index}`, `source d${index}.cir`, "destroy all", "remcirc");
    }
    const script = ["batch", ".control", ...commands, "quit", ".endc", ".end", ""].join("\n");
    await writeFile(join(folder, "batch.cir"), script);
    const output = await outputOf("ngspice", ["-b", "batch.cir"], folder);
    const pieces = output.split(/^begin (\d+)$/m);
    const readings: (number | null)[] = decks.map(() => null);
    for (let i = 1; i + 1 < pieces.length; i += 2) readings[Number(pieces[i])] = readingIn(pieces[i + 1]);
    return readings;
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** What each deck prints as its reading, in order; null where ngspice gave none. */
export async function runDecks(decks: readonly string[]): Promise<(number | null)[]> {
  const readings: (number | null)[] = [];
  for (let start = 0; start < decks.length; start += DECKS_PER_RUN)
    readings.push(...(await runSome(decks.slice(start, start + DECKS_PER_RUN))));
  return readings;
}

/**
 * All that one deck with its own commands prints. Throws where ngspice is not there, with what to do about it.
 * @param program - the simulator's name on the PATH
 */
export async function runControl(deck: string, program = "ngspice"): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), "faultwright-oracle-"));
  try {
    await writeFile(join(folder, "deck.cir"), deck.replace(/^\.endc$/m, "quit\n.endc"));
    const output = await outputOf(program, ["-b", "deck.cir"], folder);
    if (output === "")
      throw new Error(
        `${program} printed nothing: the oracle needs it on the PATH (for example: apt install ngspice)`,
      );
    return output;
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** What ngspice says when it gives up. */
const GIVES_UP = /error|singular|converge|abort|failed|too small|limit/i;

/** One deck in a process of its own: its reading, or what ngspice said of why there is none. */
export async function runAlone(deck: string): Promise<{ reading: number | null; said: string }> {
  const folder = await mkdtemp(join(tmpdir(), "faultwright-deck-"));
  try {
    await writeFile(join(folder, "alone.cir"), deck);
    const { stdout, stderr, ended } = await runOf("ngspice", ["-b", "alone.cir"], folder);
    const lines = `${stderr}\n${stdout}`.split("\n").map((line) => line.trim());
    const said = lines.filter((line) => GIVES_UP.test(line));
    return {
      reading: readingIn(stdout),
      said:
        [...new Set([...said, ...(ended === null ? [] : [ended])])].slice(0, 4).join("; ") || "no reading",
    };
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
