/**
 * The marks that keep the seams of a sentence are for whoever tells it in another language: nothing that is printed, written to a file or
 * sent as a paper has one.
 */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { run } from "../src/cli/run.ts";
import { capturedIo, type Folder, freshFolder } from "../src/cli/small-job.fixture.ts";
import { GIVEN, OPEN } from "../src/messages/said.ts";
import { CLOSED_JOB } from "../src/papers/closed-job.fixture.ts";

const MARKS = /[\u2061-\u2064]/;
const LANGUAGES = ["en", "es", "hi", "ar"];

let folder: Folder;
let job: string;
let open: string;
let board: string;

beforeAll(() => {
  folder = freshFolder();
  board = folder.file("board.json", CLOSED_JOB.board);
  job = folder.file("closed.json", CLOSED_JOB);
  open = folder.file("open.json", {
    ...CLOSED_JOB,
    log: [
      ...CLOSED_JOB.log.slice(0, 16),
      { do: "power", feed: "lamp", watts: 100, observed: "quiet", signs: { LED1: false } },
    ],
  });
});
afterAll(() => folder.remove());

const at = (name: string) => join(folder.path, name);

async function printed(argv: readonly string[], typed: readonly string[] = []): Promise<string> {
  const io = capturedIo(typed);
  const code = await run(argv, io);
  expect(code, `${argv.join(" ")}: ${io.said.err}`).toBe(0);
  return io.said.out + io.said.err;
}

it("the marks looked for are those that sentences are made with", () => {
  expect(OPEN).toMatch(MARKS);
  expect(GIVEN).toMatch(MARKS);
});

describe("no mark of a seam", () => {
  it.each([["next"], ["next", "--json"], ["suspects"], ["suspects", "--json"], ["sum"], ["sum", "--json"]])(
    "is printed by %s %s",
    async (...argv) => {
      for (const file of [open, job])
        expect(await printed([argv[0], file, ...argv.slice(1)])).not.toMatch(MARKS);
    },
  );

  it.each(["quote", "bill", "sheet", "report", "slip", "message"])(
    "is in a %s, as text, JSON or CSV, in any language",
    async (paper) => {
      for (const language of LANGUAGES)
        for (const form of [[], ["--json"], ["--csv"]]) {
          const text = await printed([paper, job, "--language", language, ...form]);
          // a message has no table
          if (paper !== "message" || form[0] !== "--csv") expect(text.length).toBeGreaterThan(100);
          expect(text).not.toMatch(MARKS);
        }
    },
  );

  it("is in a file that a command writes", async () => {
    await printed(["bench", open], ["note the customer rang", "unpower", "quit"]);
    await printed(["teach", job, at("case.json")]);
    await printed(["board", "pack", board, at("given.json")]);
    await printed(["board", "new", at("new.json"), "--name", "pump drive"]);
    const written = readdirSync(folder.path).filter((name) => name.endsWith(".json"));
    expect(written.length).toBeGreaterThanOrEqual(6);
    for (const name of written) expect(readFileSync(at(name), "utf8"), name).not.toMatch(MARKS);
  });

  it("is in what board check says", async () => {
    expect(await printed(["board", "check", board, "--json"])).not.toMatch(MARKS);
  });
});
