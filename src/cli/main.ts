/** The `faultwright` program: the process's own streams, clock and signals handed to `run`. */
import { randomUUID } from "node:crypto";
import pc from "picocolors";
import { run } from "./run.ts";

// A reader that has seen enough (`| head`) closes the pipe: that is no failure.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  process.exit(error.code === "EPIPE" ? 0 : 1);
});

process.exitCode = await run(process.argv.slice(2), {
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
  input: process.stdin,
  isTerminal: process.stdin.isTTY === true && process.stdout.isTTY === true,
  color: process.stdout.isTTY === true && pc.isColorSupported,
  now: () => new Date().toISOString(),
  newId: randomUUID,
  untilStopped: () =>
    new Promise((resolve) => {
      for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"] as const) process.once(signal, () => resolve());
    }),
});
