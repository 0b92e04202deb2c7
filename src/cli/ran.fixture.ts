/** For tests of the commands: one of them run, and what it said. */
import { expect } from "vitest";
import { run } from "./run.ts";
import { capturedIo } from "./small-job.fixture.ts";

export async function ran(...argv: string[]): Promise<{ code: number; out: string; err: string }> {
  const io = capturedIo();
  const code = await run(argv, io);
  return { code, ...io.said };
}

/** Bad input: exit 2, one line on standard error, nothing on standard output. */
export async function refusal(...argv: string[]): Promise<string> {
  const { code, out, err } = await ran(...argv);
  expect({ code, out }).toEqual({ code: 2, out: "" });
  expect(err).toMatch(/^[^\n]+\n$/);
  return err;
}
