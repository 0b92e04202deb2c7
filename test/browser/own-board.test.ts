/** A board that nobody has described comes in: answered on a phone, worked on at once, and there to be chosen again. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { parseBoard } from "../../src/board/parse-board.ts";
import { cardReady, inspect } from "./bench-page.ts";
import { servePage } from "./served-page.ts";

const MOST_TAPS = 24;

let served: Awaited<ReturnType<typeof servePage>>;

beforeAll(async () => {
  served = await servePage();
});

afterAll(async () => {
  await served?.close();
});

describe("a board of one's own on a phone", () => {
  it("is described in four answers, worked on in under 25 taps from nothing, and can be chosen again", async () => {
    const page = await served.phone();
    let taps = 0;
    const tap = async (role: "button" | "radio", name: string | RegExp) => {
      taps++;
      const target = page.getByRole(role, { name, exact: true });
      await (role === "radio" ? target.check() : target.click());
    };
    await page.goto(served.url);
    await tap("button", "New job");
    await tap("button", "None is like it: describe the board");
    await tap("radio", "230 V, one phase");
    await tap("radio", "None");
    await tap("button", /^Use this board/);
    await page.getByText("Still to be answered: What drives the motor, Rails.").waitFor();
    await inspect(page, "own-board-lacking");
    await tap("radio", /^Single switches/);
    await tap("radio", "15 V, 5 V");
    await page.getByText(/parts, \d+ of them not seen/).waitFor();
    await page.getByText("What else is known").click();
    taps++;
    await tap("radio", /^Without a choke/);
    await inspect(page, "own-board-answered");
    await tap("button", /^Use this board/);
    await page.getByRole("radio", { name: /^own board, 230 V, one phase/, checked: true }).waitFor();
    await tap("radio", /^Surge/);
    await inspect(page, "own-board-intake");
    await tap("button", "Start the job");
    expect((await cardReady(page)).action).toBe("measure");
    expect(taps).toBeLessThanOrEqual(MOST_TAPS);
    await inspect(page, "own-board-bench");

    const id = new URL(page.url()).hash.replace("#/job/", "");
    const board = parseBoard((await served.store.readJob(id))?.header.board);
    if (!board.ok) throw new Error(board.problem);
    const parts = [...board.value.parts.values()];
    expect(parts.filter(({ kind, assumed }) => kind === "igbt" && !assumed)).toHaveLength(6);
    expect(parts.find(({ ref }) => ref === "F1")?.assumed).toBe(false);
    expect(parts.some(({ kind }) => kind === "choke")).toBe(false);
    expect(parts.filter(({ stage }) => stage === "drive").every(({ assumed }) => assumed)).toBe(true);

    await page.goto(`${served.url}#/new`);
    await page.getByRole("radio", { name: /^own board, 230 V, one phase/ }).check();
    await page.getByRole("group", { name: "What came with it" }).waitFor();
    await page.context().close();
  });

  it("keeps what was answered over a way back, and drops what no longer fits", async () => {
    const page = await served.phone();
    await page.goto(`${served.url}#/new/board`);
    await page.getByRole("radio", { name: "One switch" }).check();
    await page.getByRole("button", { name: "Back" }).click();
    await page.getByRole("button", { name: "None is like it: describe the board" }).click();
    expect(await page.getByRole("radio", { name: "One switch" }).isChecked()).toBe(true);
    await page.getByRole("radio", { name: "400 V, three phases" }).check();
    await page.getByRole("radio", { name: "One switch" }).waitFor({ state: "detached" });
    await page.getByText("What else is known").click();
    await page.getByLabel("Mains fuse, A").fill("0");
    await page.getByText(/fuseAmps: expected a number of A from 0.1 to 200/).waitFor();
    await page.context().close();
  });
});
