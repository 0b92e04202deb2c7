/** The parts drawer on a phone, a tablet and a laptop: found, added, corrected, taken in from a list, told of a wrong count. */
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { inspect } from "./bench-page.ts";
import { servePage } from "./served-page.ts";

const DRAWER = `name,kind,volts,hotAmps,count,place,price,supplier,used,donor
K40T60,igbt,600V,20A,6,drawer 4,2.60,a wholesaler,,
K40T60,,,,2,shelf,,,yes,heat pump board 12
1N4007,,,,50,strip 2,0.05,,,
P20 module,module,600V,,1,,,,,heat pump board 12
`;

let served: Awaited<ReturnType<typeof servePage>>;

beforeAll(async () => {
  served = await servePage();
}, 120_000);

afterAll(async () => {
  await served?.close();
});

async function choose(page: Page, text: string): Promise<void> {
  await page
    .getByLabel("The file")
    .setInputFiles({ name: "list.csv", mimeType: "text/csv", buffer: Buffer.from(text) });
}

async function openDrawer(width: number, height: number): Promise<Page> {
  const page = await served.sized(width, height);
  await page.goto(served.url);
  await page.getByRole("button", { name: "Parts drawer" }).click();
  await page.getByRole("heading", { name: "Parts drawer" }).waitFor();
  return page;
}

describe("the parts drawer", () => {
  it("is filled from a list: first what becomes of each row, then all of them", async () => {
    const page = await openDrawer(390, 844);
    await page.getByText("Nothing is counted yet").waitFor();
    await inspect(page, "drawer-empty-390");
    await page.getByRole("button", { name: "Take in a list" }).click();
    await choose(page, DRAWER.replace("50,strip", "fifty,strip"));
    await page.getByText('count: "fifty": expected a whole number of 0 or more').waitFor();
    expect(await page.getByRole("button", { name: /Take in 3 rows/ }).isDisabled()).toBe(true);
    await inspect(page, "drawer-refused-390");
    await choose(page, DRAWER);
    await page.getByRole("button", { name: "Take in 4 rows" }).click();
    await page.getByText("Taken in: 4 new, 0 changed, 0 as they were.").waitFor();
    await page.getByRole("button", { name: "Done" }).click();
    expect((await served.store.readStock()).lines()).toHaveLength(4);
    await page.getByRole("button", { name: "Take in a list" }).click();
    await choose(page, "name,volts,count,place\nK40T60,650V,6,drawer 4\n");
    await page.getByRole("button", { name: "1 changed" }).click();
    await page.getByText("voltage: 600 V becomes 650 V, in its other line as well").waitFor();
    await inspect(page, "drawer-corrected-390");
    await page.context().close();
  }, 120_000);

  it.each([
    [390, 844],
    [820, 1180],
    [1366, 768],
  ])(
    "is found by any of its words, corrected and added to, %d px wide",
    async (width, height) => {
      const page = await openDrawer(width, height);
      await page.getByText("4 lines").waitFor();
      await inspect(page, `drawer-${width}`);
      await page.getByLabel("Find").fill("heat pump");
      await page.getByText("2 of 4 lines").waitFor();
      await page.getByText("2 parts still on it").isHidden();
      await page.getByText("1 part still on it").click();
      await page.getByLabel("Find").fill("4007");
      await page.getByRole("button", { name: /1N4007/ }).click();
      const form = page.getByRole("form", { name: "Correct 1N4007" });
      await form.getByLabel("How many").fill("minus one");
      await form.getByRole("button", { name: "Write it down" }).click();
      await form.getByText(/count: "minus one": expected a whole number/).waitFor();
      await inspect(page, `drawer-form-${width}`);
      await form.getByLabel("How many").fill(String(width));
      await form.getByRole("button", { name: "Write it down" }).click();
      await page.getByText(`${width} pc`).waitFor();
      await page.getByRole("button", { name: "Add a part" }).click();
      const adding = page.getByRole("form", { name: "A part to add" });
      await adding.getByLabel("Type, as it is marked").fill(`C ${width}`);
      await adding.getByLabel("Kind of part").selectOption("capacitor");
      await adding.getByLabel("One more rating").selectOption("farads");
      await adding.getByLabel("capacitance, F").fill("470u");
      await adding.getByLabel("How many").fill("1");
      await adding.getByRole("button", { name: "Add it" }).click();
      await page.getByLabel("Find").fill(`C ${width}`);
      await page.getByText("1 of 5 lines").waitFor();
      // and off the list again, so that the next width finds what this one found
      await page.getByRole("button", { name: new RegExp(`C ${width}`) }).click();
      await page.getByRole("button", { name: "Take it off the list" }).click();
      await page.getByText("4 lines").waitFor({ state: "attached" });
      await page.context().close();
    },
    120_000,
  );

  it("says which line to count again where more were fitted than it had", async () => {
    await served.store.createJob({
      id: "j1",
      title: "fan drive",
      practice: null,
      header: { format: "faultwright-job/1", board: { name: "fan drive" }, cause: "surge" },
      events: [],
    });
    const fitted = (id: string) =>
      ({
        do: "replace",
        id,
        part: "IPM1",
        with: "P20 module",
        used: true,
        from: { donor: "heat pump board 12" },
      }) as const;
    await served.store.appendEvents("j1", [fitted("e1"), fitted("e2")], () => null);
    const page = await openDrawer(390, 844);
    await page.getByRole("button", { name: "Count again", exact: true }).click();
    await page.getByText("1 more was fitted than counted here: count again.").waitFor();
    await inspect(page, "drawer-short-390");
    await page.context().close();
  }, 120_000);

  it("tells each of 500 bad rows among 20 000 with its line and reason", async () => {
    const rows = Array.from({ length: 20_000 }, (_, at) =>
      at % 40 === 7 ? `part ${at},igbt,600A,1,bin ${at % 90}` : `part ${at},igbt,600V,1,bin ${at % 90}`,
    );
    const page = await openDrawer(1366, 768);
    await page.getByRole("button", { name: "Take in a list" }).click();
    const seen = page.evaluate(
      () =>
        new Promise<number>((resolve) => {
          let most = 0;
          new MutationObserver(() => {
            const bar = document.querySelector("progress");
            if (bar !== null) most = Math.max(most, bar.max);
            if (document.querySelectorAll(".import-rows > li").length > 0) resolve(most);
          }).observe(document.body, { subtree: true, childList: true, attributes: true });
        }),
    );
    await choose(page, ["name,kind,volts,count,place", ...rows, ""].join("\n"));
    expect(await seen).toBe(20_000);
    const bad = page.locator('.import-rows > li[data-fate="refused"]');
    expect(await bad.count()).toBe(500);
    expect(await bad.first().textContent()).toBe('line 9 part 7volts: "600A": expected voltage in V');
    expect(await bad.last().textContent()).toContain("line 19969");
    await page.getByRole("button", { name: "19500 new" }).click();
    expect(await page.locator(".import-rows > li").count()).toBe(100);
    await inspect(page, "drawer-import-1366");
    await page.context().close();
  }, 120_000);
});
