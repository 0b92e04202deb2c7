/** A part out of the drawer, fitted in a job: offered for its place, chosen by a tap, one less in the drawer, back again with undo. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { parseBoard } from "../../src/board/parse-board.ts";
import { storesOfCharge } from "../../src/board/stores-of-charge.ts";
import { readCatalogueText } from "../../src/parts/catalogue-text.ts";
import { SHIPPED } from "../../src/shipped/shipped.ts";
import { cardReady, inspect } from "./bench-page.ts";
import { servePage } from "./served-page.ts";

const DRAWER = `name,kind,volts,amps,hotAmps,copack,tab,count,place,price,used,donor
K40T60,igbt,650V,40A,30A,yes,live,3,drawer 4,2.60,,
K40T60,igbt,,,,,,2,,,,heat pump board 12
K20N40,igbt,400V,20A,15A,yes,live,9,drawer 5,1.10,,
1N4007,diode,,,,,,50,strip 2,0.05,,
`;

let served: Awaited<ReturnType<typeof servePage>>;

beforeAll(async () => {
  served = await servePage();
  const read = readCatalogueText(DRAWER);
  if (!read.ok) throw new Error(read.problem);
  const lines = read.value.lines.map(({ stock }) => stock);
  await served.store.countStock(() => ({ ok: true, value: { do: "count", lines, gone: [] } }));
  const shipped = SHIPPED.find(({ id }) => id === "greenhouse-fan-drive");
  const board = parseBoard(shipped?.board);
  if (!board.ok) throw new Error(board.problem);
  await served.store.createJob({
    id: "j1",
    title: "fan drive",
    practice: null,
    header: { format: "faultwright-job/1", board: shipped?.board, cause: "surge", symptom: "dead" },
    // nothing is replaced on a board that is not proven dead
    events: storesOfCharge(board.value).map(({ part, pins: [red, black] }) => ({
      do: "measure",
      id: `empty-${part}`,
      mode: "dcv",
      red: `${part}.${red}`,
      black: `${part}.${black}`,
      reading: 0.3,
    })),
  });
}, 120_000);

afterAll(async () => {
  await served?.close();
});

const counts = async () => (await served.store.readStock()).lines().map(({ count }) => count);

describe("a part out of the drawer", () => {
  it.each([
    [390, 844],
    [820, 1180],
    [1366, 768],
  ])(
    "is offered for its place, best first, and one tap and Done take it out, %d px wide",
    async (width, height) => {
      const page = await served.sized(width, height);
      await page.goto(`${served.url}#/job/j1`);
      await cardReady(page);
      const enter = page.getByRole("tab", { name: "Enter" });
      await enter.click();
      const part = page.getByRole("region", { name: "A part" });
      await part.getByLabel("Part").fill("Q3");
      await part.getByRole("button", { name: "Replace", exact: true }).click();
      const lying = page.getByRole("region", { name: "In the drawer" });
      await lying.waitFor();
      // the one of 400 V is no part for this place; the new one of a known price stands before the pulled one
      expect(await lying.getByRole("button").allTextContents()).toEqual([
        expect.stringMatching(/^K40T60.*2.60.*3 in all, drawer 4$/),
        expect.stringMatching(/^K40T60.*2 in all, still on heat pump board 12$/),
      ]);
      await inspect(page, `out-of-the-drawer-${width}`);
      await lying.getByRole("button").first().click();
      expect(await page.getByLabel("What is fitted, as it is marked").inputValue()).toBe("K40T60");
      expect(await page.getByLabel(/Paid for it/).inputValue()).toBe("2.6");
      await page.getByText("Done takes one K40T60 out of the drawer").waitFor();
      await inspect(page, `out-of-the-drawer-chosen-${width}`);
      expect(await counts()).toEqual([3, 2, 9, 50]);
      await page.getByRole("button", { name: "Done", exact: true }).click();
      await expect.poll(counts, { timeout: 20_000 }).toEqual([2, 2, 9, 50]);
      const kept = (await served.store.readJob("j1"))?.events ?? [];
      expect(kept.findLast((event) => event.do === "replace")).toMatchObject({
        part: "Q3",
        with: "K40T60",
        price: 2.6,
        from: { place: "drawer 4" },
      });
      await cardReady(page);
      await page.keyboard.press("u");
      await expect.poll(counts, { timeout: 20_000 }).toEqual([3, 2, 9, 50]);
      await page.context().close();
    },
    180_000,
  );

  it("goes back as pulled when the job is given up and its tick is set, and out again when the close is undone", async () => {
    const page = await served.phone();
    await page.goto(`${served.url}#/job/j1`);
    await cardReady(page);
    await page.getByRole("tab", { name: "Enter" }).click();
    const part = page.getByRole("region", { name: "A part" });
    await part.getByLabel("Part").fill("Q3");
    await part.getByRole("button", { name: "Replace", exact: true }).click();
    await page.getByRole("region", { name: "In the drawer" }).getByRole("button").first().click();
    await page.getByRole("button", { name: "Done", exact: true }).click();
    await expect.poll(counts, { timeout: 20_000 }).toEqual([2, 2, 9, 50]);
    await cardReady(page);
    await page.getByRole("tab", { name: "Close" }).click();
    await page.getByRole("button", { name: "Not worth repairing" }).click();
    await page.getByRole("checkbox", { name: "Q3 K40T60" }).check();
    await inspect(page, "given-up-390");
    await page.getByRole("button", { name: /^Close the job/ }).click();
    await expect.poll(counts, { timeout: 20_000 }).toEqual([2, 2, 9, 50, 1]);
    const [pulled] = (await served.store.readStock()).lines().slice(-1);
    expect(pulled).toMatchObject({ type: { name: "K40T60" }, used: true, place: "drawer 4", donor: null });
    await page.getByRole("button", { name: "Open it again" }).click();
    await expect.poll(counts, { timeout: 20_000 }).toEqual([2, 2, 9, 50, 0]);
    await page.context().close();
  }, 180_000);
});
